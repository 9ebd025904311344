import { checkedNumber } from '../../ac/index.ts';

/**
 * Time to change speed with a mean torque left over for acceleration.
 *
 * @param start.motorTorqueNm   mean torque of the motor [N·m]
 * @param start.loadTorqueNm    mean torque of the load [N·m], below the motor's; default 0
 * @param start.inertiaKgM2     all that turns, seen from the motor [kg·m²], above 0
 * @param start.fromRadPerS     speed before [rad/s], ≥ 0; default 0
 * @param start.toRadPerS       speed after [rad/s], ≥ fromRadPerS
 * @returns time [s]
 * @throws  {RangeError} a value outside its limits, or no torque left
 * Formula: t = J·Δω / (T_motor − T_load)
 * Valid for: torques that differ little from their mean; the motor's torque at reduced voltage falls with its square.
 * Source:  gupta-drives, p. 80
 * Example: accelerationTime({ motorTorqueNm: 20, loadTorqueNm: 5, inertiaKgM2: 0.1, toRadPerS: 150 }).durationS → 1
 */
export const accelerationTime = (start: {
  motorTorqueNm: number;
  loadTorqueNm?: number;
  inertiaKgM2: number;
  fromRadPerS?: number;
  toRadPerS: number;
}): { durationS: number } => {
  const loadTorqueNm = checkedNumber('loadTorqueNm', start.loadTorqueNm ?? 0);
  const motorTorqueNm = checkedNumber('motorTorqueNm', start.motorTorqueNm, { above: loadTorqueNm });
  const inertia = checkedNumber('inertiaKgM2', start.inertiaKgM2, { above: 0 });
  const from = checkedNumber('fromRadPerS', start.fromRadPerS ?? 0, { min: 0 });
  const to = checkedNumber('toRadPerS', start.toRadPerS, { min: from });
  return { durationS: (inertia * (to - from)) / (motorTorqueNm - loadTorqueNm) };
};

/**
 * Energy of motion in what turns.
 *
 * @param part.inertiaKgM2   moment of inertia [kg·m²], ≥ 0
 * @param part.speedRadPerS  speed [rad/s]
 * @returns energy [J]
 * @throws  {RangeError} inertia below 0
 * Formula: W = ½·J·ω²
 * Valid for: rigid bodies.
 * Source:  gupta-drives, p. 80
 * Example: kineticEnergyJ({ inertiaKgM2: 0.5, speedRadPerS: 100 }) → 2500
 */
export const kineticEnergyJ = (part: { inertiaKgM2: number; speedRadPerS: number }): number =>
  0.5 *
  checkedNumber('inertiaKgM2', part.inertiaKgM2, { min: 0 }) *
  checkedNumber('speedRadPerS', part.speedRadPerS) ** 2;
