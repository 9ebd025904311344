import { checkedNumber } from '../../ac/index.ts';
import type { ShaftLoad } from './shaft-load.ts';

/**
 * A piston compressor, as its mean torque over a turn. Pressure left from before asks for torque from the first
 * moment; with pressures equalised the torque builds up with speed; an unloader holds it off until a speed.
 *
 * @param compressor.ratedTorqueNm         mean torque at full pressure [N·m], above 0
 * @param compressor.frictionTorqueNm      torque of bearings, pistons and seals alone [N·m], from 0 to ratedTorqueNm
 * @param compressor.backPressureRatio     share of the pressure torque present at standstill [1]: 0 equalised, 1 full back pressure
 * @param compressor.ratedSpeedRadPerS     speed at which pressure has built up [rad/s], above 0
 * @param compressor.unloadedBelowRadPerS  an unloader keeps the pressure off below this speed [rad/s], from 0; default 0, without unloader
 * @param compressor.inertiaKgM2           moment of inertia with its flywheel [kg·m²], ≥ 0
 * @returns the load
 * @throws  {RangeError} a value outside its limits
 * Formula: T = T_f + (T_r − T_f)·(b + (1 − b)·min(1, ω/ω_r)), friction alone while unloaded
 * Valid for: mean torque; a single cylinder asks for several times as much within a turn, which inertia must carry,
 *          and at standstill it may rest in such a place.
 * Source:  common-practice (pressure building up in proportion to speed)
 * Example: compressorLoad({ ratedTorqueNm: 6, frictionTorqueNm: 1, backPressureRatio: 0.4, ratedSpeedRadPerS: 300, inertiaKgM2: 0.003 }).torqueNm(0) → 3
 */
export const compressorLoad = (compressor: {
  ratedTorqueNm: number;
  frictionTorqueNm: number;
  backPressureRatio: number;
  ratedSpeedRadPerS: number;
  unloadedBelowRadPerS?: number;
  inertiaKgM2: number;
}): ShaftLoad => {
  const rated = checkedNumber('ratedTorqueNm', compressor.ratedTorqueNm, { above: 0 });
  const friction = checkedNumber('frictionTorqueNm', compressor.frictionTorqueNm, { min: 0, max: rated });
  const back = checkedNumber('backPressureRatio', compressor.backPressureRatio, { min: 0, max: 1 });
  const speed = checkedNumber('ratedSpeedRadPerS', compressor.ratedSpeedRadPerS, { above: 0 });
  const unloaded = checkedNumber('unloadedBelowRadPerS', compressor.unloadedBelowRadPerS ?? 0, { min: 0 });
  return {
    torqueNm: (speedRadPerS) => {
      if (speedRadPerS < unloaded) return friction;
      const built = Math.min(1, speedRadPerS / speed);
      return friction + (rated - friction) * (back + (1 - back) * built);
    },
    inertiaKgM2: checkedNumber('inertiaKgM2', compressor.inertiaKgM2, { min: 0 }),
  };
};
