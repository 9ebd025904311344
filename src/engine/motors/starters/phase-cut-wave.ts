import { checkedNumber } from '../../ac/checked-number.ts';
import { bracketedRoot } from '../../inverter/bracketed-root.ts';

/** A sine wave whose start is cut out of each half-cycle, on a resistance and an inductance in series. */
export interface PhaseCutWave {
  /** how long the current flows in each half-cycle [°], up to 180 */
  readonly conductionDeg: number;
  /** r.m.s. and fundamental of the voltage at the load, by the r.m.s. of the whole sine */
  readonly voltageRmsRatio: number;
  readonly voltageFundamentalRatio: number;
  /** r.m.s. of the current by that of the uncut current */
  readonly currentRmsRatio: number;
  /** r.m.s. of all harmonics of the current by its fundamental */
  readonly harmonicRatio: number;
  /** fundamental of the current behind the supply's voltage [°] */
  readonly lagDeg: number;
}

const radians = (degrees: number): number => (degrees * Math.PI) / 180;
/**
 * The wave behind two thyristors back to back, one phase with its return: fired late, they conduct until the current
 * comes to nought by itself.
 *
 * @param given.firingDeg     from the voltage's passage through nought to firing [°], 0 to 180
 * @param given.loadAngleDeg  angle of the load's impedance [°], 0 (resistor) to below 90
 * @returns ratios to the uncut wave, and angles [°]; nothing is cut when firing comes before the load's angle
 * @throws  {RangeError} an angle outside its limits
 * Valid for: one phase on its own. Three phases without a return influence each other: there it is an approximation
 * Formula: i = sin(θ − φ) − sin(α − φ)·e^(−(θ − α)/tan φ), in units of V̂/Z, until it is nought
 * Source:  dubey (ac voltage controllers); derived
 * Example: phaseCutWave({ firingDeg: 90, loadAngleDeg: 0 }).voltageRmsRatio → 0.7071
 */
export const phaseCutWave = (given: { firingDeg: number; loadAngleDeg: number }): PhaseCutWave => {
  const firing = radians(checkedNumber('firingDeg', given.firingDeg, { min: 0, max: 180 }));
  const angle = radians(checkedNumber('loadAngleDeg', given.loadAngleDeg, { min: 0, below: 90 }));
  if (firing <= angle) {
    const whole = { voltageRmsRatio: 1, voltageFundamentalRatio: 1, currentRmsRatio: 1, harmonicRatio: 0 };
    return { conductionDeg: 180, ...whole, lagDeg: given.loadAngleDeg };
  }
  const decay = 1 / Math.tan(Math.max(angle, 1e-9));
  const free = Math.sin(firing - angle);
  const currentAt = (theta: number): number =>
    Math.sin(theta - angle) - (theta > firing ? free * Math.exp((firing - theta) * decay) : free);
  // At π the current is still positive (or nought), a hair beyond π + φ it has gone.
  const upper = Math.PI + angle + 1e-9;
  const end = bracketedRoot({ lower: Math.PI, upper, valueAt: currentAt });
  const squareSum = (end - firing) / 2 - (Math.sin(2 * end) - Math.sin(2 * firing)) / 4;
  const inPhase = (2 / Math.PI) * squareSum;
  const inQuadrature = (Math.sin(end) ** 2 - Math.sin(firing) ** 2) / Math.PI;
  const fundamental = Math.hypot(inPhase, inQuadrature);
  // ∫i² term by term: the steady sine, its product with the dying part, the dying part.
  const span = end - firing;
  const died = Math.exp(-span * decay);
  const [first, last] = [firing - angle, end - angle];
  const sine = span / 2 - (Math.sin(2 * last) - Math.sin(2 * first)) / 4;
  const mixed =
    (decay * Math.sin(first) + Math.cos(first) - died * (decay * Math.sin(last) + Math.cos(last))) /
    (1 + decay * decay);
  const dying = (1 - died * died) / (2 * decay);
  const currentSquare = (2 / Math.PI) * (sine - 2 * free * mixed + free * free * dying);
  const harmonics = Math.sqrt(Math.max(0, currentSquare - fundamental * fundamental));
  return {
    conductionDeg: ((end - firing) * 180) / Math.PI,
    voltageRmsRatio: Math.sqrt(inPhase),
    voltageFundamentalRatio: fundamental,
    currentRmsRatio: Math.sqrt(currentSquare),
    harmonicRatio: fundamental > 0 ? harmonics / fundamental : 0,
    lagDeg: given.loadAngleDeg - (Math.atan2(inQuadrature, inPhase) * 180) / Math.PI,
  };
};
