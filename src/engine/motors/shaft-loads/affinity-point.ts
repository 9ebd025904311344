import { checkedNumber } from '../../ac/index.ts';

/** Where a centrifugal pump or fan works. */
export interface FlowPoint {
  /** flow [m³/s] */
  readonly flowM3PerS: number;
  /** head [m] */
  readonly headM: number;
  /** power at the shaft [W] */
  readonly powerW: number;
}

/**
 * The matching point of a centrifugal pump or fan at another speed or in another size, by the affinity laws.
 *
 * @param point                 the known point: flow [m³/s], head [m] and shaft power [W], each ≥ 0
 * @param change.speedRatio     new speed by old speed [1], above 0; default 1
 * @param change.diameterRatio  new impeller diameter by old one [1], all its sizes in proportion, above 0; default 1
 * @returns flow, head and power of the matching point
 * @throws  {RangeError} a value outside its limits
 * Formula: Q ∝ n·D³, H ∝ n²·D², P ∝ n³·D⁵
 * Valid for: equal efficiency at matching points; with static head the system does not stay on matching points.
 * Source:  arasu, ex. 7.8; affinity-note
 * Example: affinityPoint({ flowM3PerS: 0.08, headM: 10, powerW: 10000 }, { speedRatio: 2 }).headM → 40
 */
export const affinityPoint = (
  point: FlowPoint,
  change: { speedRatio?: number; diameterRatio?: number },
): FlowPoint => {
  const n = checkedNumber('speedRatio', change.speedRatio ?? 1, { above: 0 });
  const d = checkedNumber('diameterRatio', change.diameterRatio ?? 1, { above: 0 });
  return {
    flowM3PerS: checkedNumber('flowM3PerS', point.flowM3PerS, { min: 0 }) * n * d ** 3,
    headM: checkedNumber('headM', point.headM, { min: 0 }) * n ** 2 * d ** 2,
    powerW: checkedNumber('powerW', point.powerW, { min: 0 }) * n ** 3 * d ** 5,
  };
};
