import { checkedNumber } from './checked-number.ts';
import { type PowerTriangle, powerTriangle } from './power-triangle.ts';

/**
 * Powers of a balanced three-wire load from the readings of two wattmeters.
 *
 * @param readings.firstW   reading of the meter in the line that leads in sequence [W], any sign
 * @param readings.secondW  reading of the meter in the line that follows it by two thirds of a period [W], any sign; the larger one if the
 *                          current lags
 * @returns the power triangle of the load
 * @throws   {RangeError} readings not finite, or a sum below 0 (meters reversed)
 * Formula:  P = W₁ + W₂;  Q = √3·(W₂ − W₁)
 * Valid for: balanced load, sinusoidal. The sum is right for an unbalanced three-wire load as well, the rest is not.
 * Source:   bird, ch. 19, ex. 19.15
 * Example:  twoWattmeter({ firstW: 4000, secondW: 8000 }).powerFactor → 0.866
 */
export function twoWattmeter(readings: { firstW: number; secondW: number }): PowerTriangle {
  const firstW = checkedNumber('firstW', readings.firstW);
  const secondW = checkedNumber('secondW', readings.secondW);
  const realPowerW = checkedNumber('firstW + secondW', firstW + secondW, { min: 0 });
  return powerTriangle({ realPowerW, reactivePowerVar: Math.sqrt(3) * (secondW - firstW) });
}
