import { checkedNumber } from './checked-number.ts';

/**
 * How far a current or voltage is from its own fundamental. With an undistorted voltage, true power factor is displacement power
 * factor times the distortion factor of the current.
 *
 * @param rms.fundamental  r.m.s. value of the fundamental, above 0, any unit
 * @param rms.total        r.m.s. value of the whole, at least the fundamental, same unit
 * @returns thdRatio (harmonics to fundamental, ≥ 0) and distortionFactorRatio (fundamental to whole, 0–1)
 * @throws   {RangeError} a value outside its limits
 * Formula:  THD = √(X² − X₁²)/X₁;  X₁/X = 1/√(1 + THD²)
 * Valid for: signals without a direct part; one that is present counts as distortion here.
 * Source:   ieee-1459, 3.1.2; bimbhra, ex. 3.16
 * Example:  distortion({ fundamental: 3, total: 5 }).distortionFactorRatio → 0.6
 */
export function distortion(rms: { fundamental: number; total: number }): {
  thdRatio: number;
  distortionFactorRatio: number;
} {
  const fundamental = checkedNumber('fundamental', rms.fundamental, { above: 0 });
  const total = checkedNumber('total', rms.total, { min: fundamental });
  return {
    thdRatio: Math.sqrt((total - fundamental) * (total + fundamental)) / fundamental,
    distortionFactorRatio: fundamental / total,
  };
}
