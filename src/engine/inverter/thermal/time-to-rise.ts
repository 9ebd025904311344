import { type TwoExponential, twoExponentialAt, twoExponentialTurn } from './two-exponential.ts';

/** Heights closer than this share of the level count as equal: rounding must not turn "settles on" into "passes". */
const sameRatio = 1e-12;

/** Newton steps, each kept inside a bracket that shrinks; f(lower) < 0 ≤ f(upper). */
const risingRoot = (curve: TwoExponential, level: number, lowerS: number, upperS: number): number => {
  const { fastPart, slowPart, fastTimeConstantS, slowTimeConstantS } = curve;
  let lower = lowerS;
  let upper = upperS;
  // From the right: where the curve bends downward the first step lands left of the root, the next ones creep up to it.
  let t = upperS;
  for (let round = 0; round < 100; round++) {
    const fast = fastPart * Math.exp(-t / fastTimeConstantS);
    const slow = slowPart * Math.exp(-t / slowTimeConstantS);
    const above = curve.steady + fast + slow - level;
    if (above === 0) return t;
    if (above > 0) upper = t;
    else lower = t;
    const slope = -fast / fastTimeConstantS - slow / slowTimeConstantS;
    let next = t - above / slope;
    if (!(next > lower && next < upper)) next = lower + (upper - lower) / 2;
    if (Math.abs(next - t) <= 2 * Number.EPSILON * next || next === lower || next === upper) return next;
    t = next;
  }
  return t;
};

/**
 * When a two-node curve first passes a level upward.
 *
 * @param problem.curve  settled value, two parts, two time constants [s]
 * @param problem.level  the level, in the unit of the curve
 * @returns time [s]; 0 when it starts above, or on the level and rising; null when it never goes above (touching the
 *          level, or settling on it, is not passing it)
 * @throws  nothing
 * Valid for: any signs of the parts; root by Newton steps inside a bracket, exact to the last digits
 * Source:  derived (a curve of two exponentials turns at most once)
 * Example: timeToRise({ curve: { steady: 1.44, fastPart: -1.44, slowPart: 0, fastTimeConstantS: 60, slowTimeConstantS: 600 }, level: 1 }) → 71.14
 */
export const timeToRise = (problem: { curve: TwoExponential; level: number }): number | null => {
  const { curve, level } = problem;
  const start = curve.steady + curve.fastPart + curve.slowPart;
  const above = level + sameRatio * Math.abs(level);
  const turn = twoExponentialTurn(curve);
  const peak = turn?.kind === 'peak' ? turn : null;
  if (Math.max(start, curve.steady, peak?.value ?? start) <= above) return null;
  if (start > above) return 0;
  if (start >= level && turn?.kind !== 'trough') return 0;
  if (peak) return peak.value > above ? risingRoot(curve, level, 0, peak.atS) : null;
  // U − h(t) ≤ (sum of the parts below target)·e^(−t/τ2): from there on the curve is above the level for certain.
  const below = Math.max(0, -curve.fastPart) + Math.max(0, -curve.slowPart);
  const lowerS = turn?.atS ?? 0;
  const upperS = curve.slowTimeConstantS * Math.log(below / (curve.steady - level));
  return upperS > lowerS ? risingRoot(curve, level, lowerS, upperS) : lowerS;
};

/**
 * When a two-node curve first passes a level downward: `timeToRise` of the curve turned upside down.
 *
 * @param problem.curve  settled value, two parts, two time constants [s]
 * @param problem.level  the level, in the unit of the curve
 * @returns time [s]; 0 when it starts below, or on the level and falling; null when it never goes below
 * @throws  nothing
 * Source:  derived
 * Example: timeToFall({ curve: { steady: 0, fastPart: 0.5, slowPart: 0.5, fastTimeConstantS: 60, slowTimeConstantS: 600 }, level: 0.1 }) → 965.7
 */
export const timeToFall = (problem: { curve: TwoExponential; level: number }): number | null => {
  const { curve } = problem;
  return timeToRise({
    curve: { ...curve, steady: -curve.steady, fastPart: -curve.fastPart, slowPart: -curve.slowPart },
    level: -problem.level,
  });
};

/**
 * Highest and lowest value of a two-node curve within a time, inner turning point included.
 *
 * @param problem.curve      settled value, two parts, two time constants [s]
 * @param problem.durationS  length of the stretch [s], ≥ 0
 * @returns peak and trough, each with value and atS [s] from the start of the stretch
 * @throws  nothing
 * Source:  derived
 * Example: curveExtremes({ curve: { steady: 1, fastPart: -0.5, slowPart: 0.4, fastTimeConstantS: 60, slowTimeConstantS: 1800 }, durationS: 3600 }).peak.value → 1.341
 */
export const curveExtremes = (problem: {
  curve: TwoExponential;
  durationS: number;
}): { peak: { value: number; atS: number }; trough: { value: number; atS: number } } => {
  const { curve, durationS } = problem;
  const start = { value: curve.steady + curve.fastPart + curve.slowPart, atS: 0 };
  const end = { value: twoExponentialAt(curve, durationS), atS: durationS };
  const turn = twoExponentialTurn(curve);
  const inside = turn && turn.atS < durationS ? turn : null;
  const ends = start.value >= end.value ? { peak: start, trough: end } : { peak: end, trough: start };
  return {
    peak: inside?.kind === 'peak' ? { value: inside.value, atS: inside.atS } : ends.peak,
    trough: inside?.kind === 'trough' ? { value: inside.value, atS: inside.atS } : ends.trough,
  };
};
