/**
 * One heat node after a time under a constant cause: it approaches its target exponentially.
 *
 * @param node.start          value now (rise [K], volts, share …)
 * @param node.target         value it would settle at
 * @param node.timeConstantS  time constant [s], > 0 (any unit of time, if durationS has the same)
 * @param node.durationS      time passed [s], ≥ 0, Infinity allowed; negative looks back
 * @returns value after the time, in the unit of start
 * @throws  nothing
 * Formula: x(t) = target + (start − target)·e^(−t/τ)
 * Source:  bird, ch. 17; dubey, ch. 4
 * Example: exponentialApproach({ start: 0, target: 120, timeConstantS: 0.705, durationS: 0.705 }) → 75.85
 */
export const exponentialApproach = (node: {
  start: number;
  target: number;
  timeConstantS: number;
  durationS: number;
}): number => node.target + (node.start - node.target) * Math.exp(-node.durationS / node.timeConstantS);

/**
 * The target that takes a node from one value to another in a given time: `exponentialApproach` solved for it.
 *
 * @param node.start          value now
 * @param node.end            value at the end of the time
 * @param node.timeConstantS  time constant [s], > 0
 * @param node.durationS      time passed [s], > 0
 * @returns the target, in the unit of start
 * @throws  nothing
 * Source:  dubey, ch. 4, ex. 4.1
 * Example: exponentialTarget({ start: 0, end: 50, timeConstantS: 0.910239, durationS: 1 }) → 75.0
 */
export const exponentialTarget = (node: {
  start: number;
  end: number;
  timeConstantS: number;
  durationS: number;
}): number => node.start + (node.end - node.start) / -Math.expm1(-node.durationS / node.timeConstantS);

/**
 * When a single node passes a level on its way to its target.
 *
 * @param node.start          value now
 * @param node.target         value it would settle at
 * @param node.timeConstantS  time constant [s], > 0
 * @param node.level          value to be passed
 * @returns time [s]; 0 when it starts on the level; null when the level does not lie on its way
 * @throws  nothing
 * Formula: t = τ·ln((target − start) / (target − level))
 * Source:  iec-60255-149
 * Example: timeToLevel({ start: 0, target: 1.44, timeConstantS: 60, level: 1 }) → 71.14
 */
export const timeToLevel = (node: {
  start: number;
  target: number;
  timeConstantS: number;
  level: number;
}): number | null => {
  if (node.level === node.start) return 0;
  const wholeRatio = (node.target - node.start) / (node.target - node.level);
  return wholeRatio > 1 && wholeRatio !== Number.POSITIVE_INFINITY
    ? node.timeConstantS * Math.log(wholeRatio)
    : null;
};

/**
 * Time constant and final value of a single node from two readings, the second at twice the time of the first.
 *
 * @param readings.start      value at time 0
 * @param readings.first      value at the interval
 * @param readings.second     value at twice the interval
 * @param readings.intervalS  time between readings [s], > 0
 * @returns timeConstantS [s] and target, in the unit of start
 * @throws  {RangeError} the second step is not smaller than the first: no exponential fits
 * Formula: (second − first) / (first − start) = e^(−t/τ)
 * Source:  gupta-singhal, ch. 4, ex. 4.1
 * Example: nodeFromReadings({ start: 0, first: 30, second: 45, intervalS: 40 }).target → 60
 */
export const nodeFromReadings = (readings: {
  start: number;
  first: number;
  second: number;
  intervalS: number;
}): { timeConstantS: number; target: number } => {
  const remainRatio = (readings.second - readings.first) / (readings.first - readings.start);
  if (!(remainRatio > 0 && remainRatio < 1)) {
    throw new RangeError(
      `second: expected a smaller step than the first, found steps in ratio ${remainRatio}`,
    );
  }
  return {
    timeConstantS: -readings.intervalS / Math.log(remainRatio),
    target: readings.start + (readings.first - readings.start) / (1 - remainRatio),
  };
};
