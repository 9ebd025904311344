import { checkedNumber } from '../../ac/checked-number.ts';

/** Voltage lost at a start, by two conventions. */
export interface NetworkDip {
  /** the starting current does not fall with the voltage: S_start/S_sc */
  readonly constantCurrentRatio: number;
  /** the motor is an impedance, its current falls with the voltage: S_start/(S_start + S_sc) */
  readonly constantImpedanceRatio: number;
}

/**
 * The dip of a motor start on a network or generator with an impedance, by the two conventions in use. On a strong
 * network they agree; on a weak one only the second stays below 100 %, and it is the one that `runUp` keeps to: there
 * the motor is an impedance too, though the source has a current limit instead of an impedance.
 *
 * @param given.startVa         apparent power of the start at full voltage [VA], ≥ 0
 * @param given.shortCircuitVa  short-circuit power of the network [VA], > 0; of a generator: rating by X'd
 * @returns both dips as a share of the voltage (0–1; the first may exceed 1)
 * @throws  {RangeError} a value outside its limits
 * Valid for: source and motor impedance of the same angle
 * Source:  gonen (ex. 9.11: constant current); derived (constant impedance)
 * Example: networkDip({ startVa: 100e3, shortCircuitVa: 500e3 }).constantImpedanceRatio → 0.1667
 */
export const networkDip = (given: { startVa: number; shortCircuitVa: number }): NetworkDip => {
  const startVa = checkedNumber('startVa', given.startVa, { min: 0 });
  const shortCircuitVa = checkedNumber('shortCircuitVa', given.shortCircuitVa, { above: 0 });
  return {
    constantCurrentRatio: startVa / shortCircuitVa,
    constantImpedanceRatio: startVa / (startVa + shortCircuitVa),
  };
};
