import { checkedNumber } from '../../ac/checked-number.ts';

/**
 * Torque at a slip from the pull-out point alone (Kloss). Near the running point it is good to some per cent; toward
 * standstill real cages have more torque than it says.
 *
 * @param given.breakdownTorqueNm     pull-out torque [N·m], above 0; any unit of torque, the result has the same
 * @param given.breakdownSlipRatio    slip there [1], above 0
 * @param given.slipRatio             slip [1]
 * @param given.statorToRotorRatio    stator (Thévenin) by rotor resistance [1], 0 or more; default 0 neglects the stator's
 * @returns torque at that slip [N·m]; 0 at synchronous speed
 * @throws   {RangeError} a value outside its limits
 * Formula:  T = T_b·2·(1 + a·s_b)/(s/s_b + s_b/s + 2·a·s_b)
 * Valid for: constant rotor values, rated voltage and frequency.
 * Source:   kosow, ex. 9.14; derived (term of the stator resistance, exact for the equivalent circuit)
 * Example:  klossTorque({ breakdownTorqueNm: 100, breakdownSlipRatio: 0.2, slipRatio: 1 }) → 38.46
 */
export function klossTorque(given: {
  breakdownTorqueNm: number;
  breakdownSlipRatio: number;
  slipRatio: number;
  statorToRotorRatio?: number;
}): number {
  const top = checkedNumber('breakdownTorqueNm', given.breakdownTorqueNm, { above: 0 });
  const topSlip = checkedNumber('breakdownSlipRatio', given.breakdownSlipRatio, { above: 0 });
  const slip = checkedNumber('slipRatio', given.slipRatio);
  const stator = checkedNumber('statorToRotorRatio', given.statorToRotorRatio ?? 0, { min: 0 }) * topSlip;
  if (slip === 0) return 0;
  return (2 * top * (1 + stator)) / (slip / topSlip + topSlip / slip + 2 * stator);
}

/**
 * Slip of pull-out from one other point of the torque curve, by Kloss without stator resistance.
 *
 * @param given.breakdownTorqueRatio  pull-out torque by the torque of the known point [1], 1 or more
 * @param given.slipRatio             slip of the known point [1], above 0
 * @param given.isRunning             true for a point between synchronous speed and pull-out, false for one beyond, such as standstill
 * @returns slip of pull-out [1]
 * @throws   {RangeError} a value outside its limits
 * Formula:  s_b = s·(k ± √(k² − 1)), + for a running point
 * Valid for: constant rotor values.
 * Source:   nagrath-kothari, ex. 9.3
 * Example:  klossBreakdownSlip({ breakdownTorqueRatio: 2, slipRatio: 1, isRunning: false }) → 0.268
 */
export function klossBreakdownSlip(given: {
  breakdownTorqueRatio: number;
  slipRatio: number;
  isRunning: boolean;
}): number {
  const ratio = checkedNumber('breakdownTorqueRatio', given.breakdownTorqueRatio, { min: 1 });
  const slip = checkedNumber('slipRatio', given.slipRatio, { above: 0 });
  const root = Math.sqrt(ratio * ratio - 1);
  return given.isRunning ? slip * (ratio + root) : slip / (ratio + root);
}

/**
 * Starting and pull-out torque from starting current and rated slip, neglecting stator resistance and magnetising current:
 * torque goes with the square of rotor current by slip.
 *
 * @param given.startingCurrentRatio  starting by rated current [1], above 1
 * @param given.ratedSlipRatio        slip at rated load [1], above 0, with (current ratio)²·slip² below 1
 * @returns startingTorqueRatio and breakdownTorqueRatio, by rated torque [1], and breakdownSlipRatio [1]
 * @throws   {RangeError} a value outside its limits, or a current that no slip of pull-out gives
 * Formula:  T_s/T_r = (I_s/I_r)²·s_r;  (I_s/I_r)² = (s_b² + s_r²)/(s_r²·(1 + s_b²))
 * Valid for: constant rotor values.
 * Source:   nagrath-kothari, ex. 9.10
 * Example:  torqueFromStartingCurrent({ startingCurrentRatio: 5, ratedSlipRatio: 0.04 }).breakdownTorqueRatio → 2.6
 */
export function torqueFromStartingCurrent(given: { startingCurrentRatio: number; ratedSlipRatio: number }): {
  startingTorqueRatio: number;
  breakdownTorqueRatio: number;
  breakdownSlipRatio: number;
} {
  const current = checkedNumber('startingCurrentRatio', given.startingCurrentRatio, { above: 1 });
  const slip = checkedNumber('ratedSlipRatio', given.ratedSlipRatio, { above: 0, below: 1 / current });
  const square = (current * slip) ** 2;
  const topSlip = Math.sqrt((square - slip * slip) / (1 - square));
  const startingTorqueRatio = current * current * slip;
  return {
    startingTorqueRatio,
    breakdownTorqueRatio: (startingTorqueRatio * (1 + topSlip * topSlip)) / (2 * topSlip),
    breakdownSlipRatio: topSlip,
  };
}
