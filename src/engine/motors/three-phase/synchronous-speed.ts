import { checkedNumber } from '../../ac/checked-number.ts';

/**
 * Speed of the rotating field.
 *
 * @param given.frequencyHz  supply frequency [Hz], above 0
 * @param given.polePairs    pole pairs, 1 or more
 * @returns speedRadPerS [rad/s] and speedRpm [1/min]
 * @throws   {RangeError} a value outside its limits
 * Formula:  ω = 2π·f/p
 * Valid for: any machine with a rotating field.
 * Source:   fitzgerald, ch. 6
 * Example:  synchronousSpeed({ frequencyHz: 50, polePairs: 2 }).speedRpm → 1500
 */
export function synchronousSpeed(given: { frequencyHz: number; polePairs: number }): {
  speedRadPerS: number;
  speedRpm: number;
} {
  const perSecond =
    checkedNumber('frequencyHz', given.frequencyHz, { above: 0 }) /
    checkedNumber('polePairs', given.polePairs, { min: 1 });
  return { speedRadPerS: 2 * Math.PI * perSecond, speedRpm: 60 * perSecond };
}

/**
 * Slip of a rotor: how far it lags the field, as a share of the field's speed.
 *
 * @param given.speedRpm     speed of the shaft [1/min]; negative when turning against the field
 * @param given.frequencyHz  supply frequency [Hz], above 0
 * @param given.polePairs    pole pairs, 1 or more
 * @returns slip [1]: 1 at standstill, 0 at synchronous speed, negative above it
 * @throws   {RangeError} a value outside its limits
 * Formula:  s = 1 − n/n_s
 * Valid for: any induction machine.
 * Source:   fitzgerald, ch. 6
 * Example:  slipOfSpeed({ speedRpm: 1440, frequencyHz: 50, polePairs: 2 }) → 0.04
 */
export function slipOfSpeed(given: { speedRpm: number; frequencyHz: number; polePairs: number }): number {
  return 1 - checkedNumber('speedRpm', given.speedRpm) / synchronousSpeed(given).speedRpm;
}

/**
 * Torque of a shaft from its power and speed.
 *
 * @param given.powerW    power at the shaft [W]
 * @param given.speedRpm  speed [1/min], above 0
 * @returns torque [N·m]
 * @throws   {RangeError} a value outside its limits
 * Formula:  T = P/ω
 * Valid for: any shaft.
 * Source:   fitzgerald, ch. 6
 * Example:  torqueOfPower({ powerW: 5500, speedRpm: 1440 }) → 36.47
 */
export function torqueOfPower(given: { powerW: number; speedRpm: number }): number {
  const speedRpm = checkedNumber('speedRpm', given.speedRpm, { above: 0 });
  return checkedNumber('powerW', given.powerW) / ((2 * Math.PI * speedRpm) / 60);
}
