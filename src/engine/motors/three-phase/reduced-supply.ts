import { checkedNumber } from '../../ac/checked-number.ts';

/**
 * Starting current and torque at another voltage or frequency, from those at the nameplate's.
 *
 * @param given.currentA         starting current at the first supply [A], 0 or more
 * @param given.torqueNm         torque there [N·m], 0 or more; any unit of torque, the result has the same
 * @param given.voltageRatio     new by first voltage [1], 0 or more
 * @param given.frequencyRatio   new by first frequency [1], above 0; default 1
 * @returns currentA [A] and torqueNm at the new supply
 * @throws   {RangeError} a value outside its limits
 * Formula:  I ∝ V/f;  T ∝ (V/f)²
 * Valid for: voltage: exactly, at one slip, without saturation. Frequency: for small changes, where reactance outweighs resistance
 *            and the speed of the field is taken into the torque; use machineState for large ones.
 * Source:   hubert, ex. 5.8; kosow, ex. 9.4
 * Example:  startAtSupply({ currentA: 560, torqueNm: 230, voltageRatio: 150 / 230 }).torqueNm → 97.8
 */
export function startAtSupply(given: {
  currentA: number;
  torqueNm: number;
  voltageRatio: number;
  frequencyRatio?: number;
}): { currentA: number; torqueNm: number } {
  const voltageRatio = checkedNumber('voltageRatio', given.voltageRatio, { min: 0 });
  const ratio = voltageRatio / checkedNumber('frequencyRatio', given.frequencyRatio ?? 1, { above: 0 });
  return {
    currentA: checkedNumber('currentA', given.currentA, { min: 0 }) * ratio,
    torqueNm: checkedNumber('torqueNm', given.torqueNm, { min: 0 }) * ratio * ratio,
  };
}
