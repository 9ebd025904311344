import { checkedNumber } from '../../ac/checked-number.ts';

/** Electrical horsepower [W], as motor nameplates and tables use it; the mechanical one is 745.7 W. */
const HORSEPOWER_W = 746;

/**
 * Watts of a motor rated in horsepower.
 *
 * @param horsepower  rated power [hp], 0 or more
 * @returns power at the shaft [W]
 * @throws   {RangeError} negative or not finite
 * Formula:  P = 746 W·hp
 * Valid for: motor nameplates; 0.04 % above the mechanical horsepower.
 * Source:   hubert, ch. 5
 * Example:  wattsOfHorsepower(10) → 7460
 */
export function wattsOfHorsepower(horsepower: number): number {
  return checkedNumber('horsepower', horsepower, { min: 0 }) * HORSEPOWER_W;
}

/**
 * Horsepower of a motor rated in watts.
 *
 * @param ratedPowerW  power at the shaft [W], 0 or more
 * @returns rated power [hp]
 * @throws   {RangeError} negative or not finite
 * Formula:  hp = P/746 W
 * Valid for: motor nameplates; 0.04 % above the mechanical horsepower.
 * Source:   hubert, ch. 5
 * Example:  horsepowerOfWatts(7460) → 10
 */
export function horsepowerOfWatts(ratedPowerW: number): number {
  return checkedNumber('ratedPowerW', ratedPowerW, { min: 0 }) / HORSEPOWER_W;
}
