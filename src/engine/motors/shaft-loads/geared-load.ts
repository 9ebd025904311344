import { checkedNumber } from '../../ac/index.ts';
import type { ShaftLoad } from './shaft-load.ts';

/**
 * Inertia of a part behind a gear or belt, seen from the motor's shaft.
 *
 * @param part.inertiaKgM2  moment of inertia on its own shaft [kg·m²], ≥ 0
 * @param part.speedRatio   speed of its shaft by that of the motor [1], above 0
 * @returns inertia at the motor [kg·m²]
 * @throws  {RangeError} a value outside its limits
 * Formula: J′ = J·(n_load/n_motor)²
 * Valid for: stiff drives without slip; kinetic energy stays the same.
 * Source:  gupta-singhal, ex. 3.2
 * Example: referredInertia({ inertiaKgM2: 10, speedRatio: 0.1 }) → 0.1
 */
export const referredInertia = (part: { inertiaKgM2: number; speedRatio: number }): number =>
  checkedNumber('inertiaKgM2', part.inertiaKgM2, { min: 0 }) *
  checkedNumber('speedRatio', part.speedRatio, { above: 0 }) ** 2;

/**
 * A load behind a gear or belt, seen from the motor's shaft.
 *
 * @param drive.load             the load on its own shaft
 * @param drive.speedRatio       speed of its shaft by that of the motor [1], above 0
 * @param drive.efficiencyRatio  of the gear or belt while the motor drives [1], above 0 up to 1; default 1
 * @returns the load at the motor's shaft
 * @throws  {RangeError} a value outside its limits
 * Formula: T′ = T·(n_load/n_motor)/η, J′ = J·(n_load/n_motor)²
 * Valid for: a motor that drives; a load that drives the motor meets the efficiency the other way.
 * Source:  gupta-singhal, ex. 3.2
 * Example: gearedLoad({ load: constantLoad({ torqueNm: 50, inertiaKgM2: 10 }), speedRatio: 0.1, efficiencyRatio: 0.9 }).torqueNm(0) → 5.556
 */
export const gearedLoad = (drive: {
  load: ShaftLoad;
  speedRatio: number;
  efficiencyRatio?: number;
}): ShaftLoad => {
  const { load, speedRatio } = drive;
  const inertiaKgM2 = referredInertia({ inertiaKgM2: load.inertiaKgM2, speedRatio });
  const efficiency = checkedNumber('efficiencyRatio', drive.efficiencyRatio ?? 1, { above: 0, max: 1 });
  return {
    torqueNm: (speedRadPerS) => (load.torqueNm(speedRadPerS * speedRatio) * speedRatio) / efficiency,
    inertiaKgM2,
  };
};
