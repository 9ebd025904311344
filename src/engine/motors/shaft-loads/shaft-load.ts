import { checkedNumber } from '../../ac/index.ts';

/** What a motor drives, seen from one shaft. */
export interface ShaftLoad {
  /** torque against the motor [N·m] at a speed from 0 [rad/s]; at 0 what must be overcome to break away */
  readonly torqueNm: (speedRadPerS: number) => number;
  readonly inertiaKgM2: number;
}

/**
 * A shaft that turns freely: inertia and nothing else.
 *
 * @param load.inertiaKgM2  moment of inertia [kg·m²], ≥ 0
 * @returns the load
 * @throws  {RangeError} inertia below 0
 * Valid for: an uncoupled motor, a saw or flywheel before it cuts.
 * Source:  derived (no torque)
 * Example: freeLoad({ inertiaKgM2: 0.02 }).torqueNm(150) → 0
 */
export const freeLoad = (load: { inertiaKgM2: number }): ShaftLoad => ({
  torqueNm: () => 0,
  inertiaKgM2: checkedNumber('inertiaKgM2', load.inertiaKgM2, { min: 0 }),
});

/**
 * A load with the same torque at every speed, such as a conveyor, a hoist or a piston pump.
 *
 * @param load.torqueNm     torque [N·m], ≥ 0
 * @param load.inertiaKgM2  moment of inertia [kg·m²], ≥ 0
 * @returns the load
 * @throws  {RangeError} a value below 0
 * Valid for: speeds from 0.
 * Source:  gupta-drives, p. 80
 * Example: constantLoad({ torqueNm: 12, inertiaKgM2: 0.1 }).torqueNm(0) → 12
 */
export const constantLoad = (load: { torqueNm: number; inertiaKgM2: number }): ShaftLoad => {
  const torqueNm = checkedNumber('torqueNm', load.torqueNm, { min: 0 });
  return {
    torqueNm: () => torqueNm,
    inertiaKgM2: checkedNumber('inertiaKgM2', load.inertiaKgM2, { min: 0 }),
  };
};

/**
 * A load whose torque grows with the square of speed, such as a fan, over a constant part from bearings and belt.
 *
 * @param load.ratedTorqueNm       torque at ratedSpeedRadPerS [N·m], ≥ 0
 * @param load.ratedSpeedRadPerS   speed [rad/s], above 0
 * @param load.standstillTorqueNm  constant part [N·m], from 0 to ratedTorqueNm; default 0
 * @param load.inertiaKgM2         moment of inertia [kg·m²], ≥ 0
 * @returns the load
 * @throws  {RangeError} a value outside its limits
 * Formula: T = T₀ + (T_r − T₀)·(ω/ω_r)²
 * Valid for: speeds from 0; the duct or damper unchanged.
 * Source:  derived (affinity laws: power by speed cubed)
 * Example: quadraticLoad({ ratedTorqueNm: 20, ratedSpeedRadPerS: 150, inertiaKgM2: 0.5 }).torqueNm(75) → 5
 */
export const quadraticLoad = (load: {
  ratedTorqueNm: number;
  ratedSpeedRadPerS: number;
  standstillTorqueNm?: number;
  inertiaKgM2: number;
}): ShaftLoad => {
  const rated = checkedNumber('ratedTorqueNm', load.ratedTorqueNm, { min: 0 });
  const speed = checkedNumber('ratedSpeedRadPerS', load.ratedSpeedRadPerS, { above: 0 });
  const atRest = checkedNumber('standstillTorqueNm', load.standstillTorqueNm ?? 0, { min: 0, max: rated });
  return {
    torqueNm: (speedRadPerS) => atRest + (rated - atRest) * (speedRadPerS / speed) ** 2,
    inertiaKgM2: checkedNumber('inertiaKgM2', load.inertiaKgM2, { min: 0 }),
  };
};

/**
 * Several loads on one shaft, such as a saw blade and its dust extractor.
 *
 * @param loads  the loads, all seen from this shaft (see gearedLoad)
 * @returns the load of all together; nothing for an empty list
 * @throws  nothing
 * Formula: T = Σ Tᵢ, J = Σ Jᵢ
 * Valid for: stiff couplings.
 * Source:  gupta-singhal, ex. 3.2
 * Example: combinedLoad([constantLoad({ torqueNm: 3, inertiaKgM2: 0.1 }), freeLoad({ inertiaKgM2: 0.4 })]).inertiaKgM2 → 0.5
 */
export const combinedLoad = (loads: readonly ShaftLoad[]): ShaftLoad => ({
  torqueNm: (speedRadPerS) => loads.reduce((sum, load) => sum + load.torqueNm(speedRadPerS), 0),
  inertiaKgM2: loads.reduce((sum, load) => sum + load.inertiaKgM2, 0),
});
