import { checkedNumber } from '../../ac/index.ts';
import type { ShaftLoad } from './shaft-load.ts';

/** A centrifugal pump in its pipework, as a load with its flow and head at every speed. */
export interface PumpLoad extends ShaftLoad {
  readonly flowM3PerS: (speedRadPerS: number) => number;
  readonly headM: (speedRadPerS: number) => number;
}

/**
 * A centrifugal pump that lifts water against static head and pipe friction. Below the speed at which its shut-off
 * head passes the static head, the check valve stays closed and nothing flows.
 *
 * @param pump.ratedFlowM3PerS     flow at ratedSpeedRadPerS [m³/s], above 0
 * @param pump.ratedHeadM          head at rated flow [m], above 0
 * @param pump.shutOffHeadM        head at rated speed without flow [m], above ratedHeadM
 * @param pump.staticHeadM         height the water is lifted [m], from 0 to ratedHeadM; the rest of ratedHeadM is pipe friction
 * @param pump.efficiencyRatio     of the pump at the rated point [1], above 0 up to 1
 * @param pump.shutOffPowerRatio   shaft power at rated speed without flow by that at rated flow [1], 0–1; default 0.5
 * @param pump.ratedSpeedRadPerS   speed [rad/s], above 0
 * @param pump.densityKgPerM3      of the fluid [kg/m³], above 0; default 1000
 * @param pump.standstillTorqueNm  torque of seals and bearings at every speed [N·m], ≥ 0; default 0
 * @param pump.inertiaKgM2         moment of inertia with the water in the impeller [kg·m²], ≥ 0
 * @returns the load, with flow [m³/s] and head [m] by speed
 * @throws  {RangeError} a value outside its limits
 * Formula: n²H₀ − k·Q² = H_s + c·Q²; T = n²·(T₀ + (T_r − T₀)·(Q/n)/Q_r), n = ω/ω_r
 * Valid for: steady flow at each speed, radial impellers (power grows with flow); start-up of the water column not counted.
 * Source:  derived (affinity laws on a parabolic head curve); common-practice (power at shut-off about half)
 * Example: pumpLoad({ ratedFlowM3PerS: 0.002, ratedHeadM: 40, shutOffHeadM: 50, staticHeadM: 30, efficiencyRatio: 0.6, ratedSpeedRadPerS: 300, inertiaKgM2: 0.002 }).torqueNm(300) → 4.360
 */
export const pumpLoad = (pump: {
  ratedFlowM3PerS: number;
  ratedHeadM: number;
  shutOffHeadM: number;
  staticHeadM: number;
  efficiencyRatio: number;
  shutOffPowerRatio?: number;
  ratedSpeedRadPerS: number;
  densityKgPerM3?: number;
  standstillTorqueNm?: number;
  inertiaKgM2: number;
}): PumpLoad => {
  const ratedFlow = checkedNumber('ratedFlowM3PerS', pump.ratedFlowM3PerS, { above: 0 });
  const ratedHead = checkedNumber('ratedHeadM', pump.ratedHeadM, { above: 0 });
  const shutOffHead = checkedNumber('shutOffHeadM', pump.shutOffHeadM, { above: ratedHead });
  const staticHead = checkedNumber('staticHeadM', pump.staticHeadM, { min: 0, max: ratedHead });
  const efficiency = checkedNumber('efficiencyRatio', pump.efficiencyRatio, { above: 0, max: 1 });
  const shutOffPower = checkedNumber('shutOffPowerRatio', pump.shutOffPowerRatio ?? 0.5, { min: 0, max: 1 });
  const ratedSpeed = checkedNumber('ratedSpeedRadPerS', pump.ratedSpeedRadPerS, { above: 0 });
  const density = checkedNumber('densityKgPerM3', pump.densityKgPerM3 ?? 1000, { above: 0 });
  const seals = checkedNumber('standstillTorqueNm', pump.standstillTorqueNm ?? 0, { min: 0 });
  const ratedTorque = (density * 9.81 * ratedFlow * ratedHead) / efficiency / ratedSpeed;
  const flowAt = (speedRatio: number): number => {
    const lift = speedRatio ** 2 * shutOffHead - staticHead;
    // k + c in units of rated flow: (H₀ − H_r) + (H_r − H_s).
    return lift > 0 ? ratedFlow * Math.sqrt(lift / (shutOffHead - staticHead)) : 0;
  };
  const torqueAt = (speedRatio: number): number => {
    if (speedRatio === 0) return seals;
    const flowShare = flowAt(speedRatio) / speedRatio / ratedFlow;
    return seals + speedRatio ** 2 * ratedTorque * (shutOffPower + (1 - shutOffPower) * flowShare);
  };
  return {
    torqueNm: (speedRadPerS) => torqueAt(speedRadPerS / ratedSpeed),
    flowM3PerS: (speedRadPerS) => flowAt(speedRadPerS / ratedSpeed),
    headM: (speedRadPerS) => {
      const speedRatio = speedRadPerS / ratedSpeed;
      const flowShare = flowAt(speedRatio) / ratedFlow;
      return speedRatio ** 2 * shutOffHead - (shutOffHead - ratedHead) * flowShare ** 2;
    },
    inertiaKgM2: checkedNumber('inertiaKgM2', pump.inertiaKgM2, { min: 0 }),
  };
};
