import { checkedNumber } from '../../ac/checked-number.ts';
import { bracketedRoot } from '../../inverter/bracketed-root.ts';
import { breakdown } from './breakdown.ts';
import type { MachineSupply } from './equivalent-circuit.ts';
import { machineState } from './machine-state.ts';

const SCAN_POINTS = 32;

/**
 * Slip at which a machine carries a load, on the stable side: between synchronous speed and pull-out.
 *
 * @param given.circuit       the machine, see EquivalentCircuit
 * @param given.lineVoltageV  voltage line to line [V], above 0
 * @param given.frequencyHz   supply frequency [Hz], above 0
 * @param given.torqueNm      torque at the shaft [N·m], 0 or more
 * @returns slip [1]
 * @throws   {RangeError} a value outside its limits, or more torque than the machine can give at that supply
 * Valid for: balanced sinusoidal supply, steady state.
 * Source:   derived (root of the torque curve)
 * Example:  slipForTorque({ circuit: exampleCircuit, lineVoltageV: 400, frequencyHz: 50, torqueNm: 36 }) → 0.0239
 */
export function slipForTorque(given: MachineSupply & { torqueNm: number }): number {
  const torqueNm = checkedNumber('torqueNm', given.torqueNm, { min: 0 });
  checkedNumber('lineVoltageV', given.lineVoltageV, { above: 0 });
  const top = breakdown(given);
  if (torqueNm > top.shaftTorqueNm) {
    throw new RangeError(
      `torqueNm: expected at most the pull-out torque of ${top.shaftTorqueNm.toPrecision(4)} N·m, found ${torqueNm} N·m`,
    );
  }
  const lackAt = (slipRatio: number): number =>
    machineState({ ...given, slipRatio }).shaftTorqueNm - torqueNm;
  // The first crossing counts: with changing rotor values the curve may dip on its way to the top.
  let upper = top.slipRatio / SCAN_POINTS;
  while (upper < top.slipRatio && lackAt(upper) < 0) upper += top.slipRatio / SCAN_POINTS;
  upper = Math.min(upper, top.slipRatio);
  return bracketedRoot({ lower: 0, upper, valueAt: lackAt });
}
