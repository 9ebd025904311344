import type { StatedPower } from './datasheet.ts';

/**
 * R.m.s. output current of a stated rating. Watts at power factor p are W / p volt-amperes.
 *
 * @param power       the rating as printed [W or VA], power factor 0–1
 * @param acNominalV  nominal output voltage [V], > 0
 * @returns current [A]
 * @throws  {RangeError} value, power factor or voltage outside the limits above
 * Formula: I = S / V, S = P / PF
 * Source:  bird, ch. 26 (apparent power)
 * Example: ratedCurrentA({ value: 2400, unit: 'W', powerFactor: 0.8 }, 230) → 13.04
 */
export const ratedCurrentA = (power: StatedPower, acNominalV: number): number => {
  if (!(power.value > 0 && Number.isFinite(power.value))) {
    throw new RangeError(`power.value: expected more than 0, found ${power.value}`);
  }
  if (!(acNominalV > 0)) throw new RangeError(`acNominalV: expected more than 0 V, found ${acNominalV}`);
  if (power.unit === 'VA') return power.value / acNominalV;
  if (!(power.powerFactor > 0 && power.powerFactor <= 1)) {
    throw new RangeError(`power.powerFactor: expected above 0 up to 1, found ${power.powerFactor}`);
  }
  return power.value / power.powerFactor / acNominalV;
};
