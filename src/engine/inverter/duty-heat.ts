import { heatAfter } from './heat-after.ts';
import { heatCurve, heatTarget } from './heat-target.ts';
import type { HeatState, InverterModel } from './model.ts';
import { periodicNode } from './thermal/periodic-node.ts';
import { curveExtremes } from './thermal/time-to-rise.ts';

/** One stretch of a repeating duty: current [A], null for off. */
export interface DutySegment {
  readonly durationS: number;
  readonly currentA: number | null;
}

export interface Duty {
  readonly model: InverterModel;
  readonly segments: readonly DutySegment[];
}

/** Both nodes as `periodicNode` sees them. */
const dutyNodes = ({ model, segments }: Duty) => {
  const { fastShareRatio, fastTimeConstantS, slowTimeConstantS } = model.network;
  const node = (share: number, timeConstantS: number) =>
    periodicNode({
      segments: segments.map(({ durationS, currentA }) => ({
        durationS,
        target: share * heatTarget(model, currentA),
        timeConstantS,
      })),
    });
  return { fast: node(fastShareRatio, fastTimeConstantS), slow: node(1 - fastShareRatio, slowTimeConstantS) };
};

/**
 * The heat of a duty repeated for ever, from the fixed point of one cycle.
 *
 * @param duty.model     a solved inverter
 * @param duty.segments  durationS [s] and currentA [A, null for off] of each stretch of the cycle
 * @returns startHeat of the settled cycle; peakHeatRatio and peakAtS, troughHeatRatio and troughAtS [s] from the start
 *          of the cycle; meanHeatRatio
 * @throws  {RangeError} the cycle lasts no time
 * Formula: mean heat = Σ u·t / Σ t (a node loses over a cycle what it gained)
 * Source:  gupta-singhal, ch. 4, ex. 4.4 (per node); derived (two nodes, inner peaks)
 * Example: dutyHeat({ model: exampleModel, segments: [{ durationS: 60, currentA: 12 }] }).peakHeatRatio → 1
 */
export const dutyHeat = (
  duty: Duty,
): {
  startHeat: HeatState;
  peakHeatRatio: number;
  peakAtS: number;
  troughHeatRatio: number;
  troughAtS: number;
  meanHeatRatio: number;
} => {
  const nodes = dutyNodes(duty);
  const startHeat: HeatState = { fast: nodes.fast.startSettled, slow: nodes.slow.startSettled };
  const start = startHeat.fast + startHeat.slow;
  let heat = startHeat;
  let peak = { value: start, atS: 0 };
  let trough = { value: start, atS: 0 };
  let clockS = 0;
  let targetSeconds = 0;
  for (const { durationS, currentA } of duty.segments) {
    const stretch = { model: duty.model, heat, currentA, durationS };
    const extremes = curveExtremes({ curve: heatCurve(stretch), durationS });
    if (extremes.peak.value > peak.value) peak = { ...extremes.peak, atS: clockS + extremes.peak.atS };
    if (extremes.trough.value < trough.value)
      trough = { ...extremes.trough, atS: clockS + extremes.trough.atS };
    targetSeconds += heatTarget(duty.model, currentA) * durationS;
    heat = heatAfter(stretch);
    clockS += durationS;
  }
  return {
    startHeat,
    peakHeatRatio: peak.value,
    peakAtS: peak.atS,
    troughHeatRatio: trough.value,
    troughAtS: trough.atS,
    meanHeatRatio: targetSeconds / clockS,
  };
};

/**
 * Heat at the start of the cycle after a duty has been repeated a number of times, without running it.
 *
 * @param given.model     a solved inverter
 * @param given.segments  durationS [s] and currentA [A, null for off] of each stretch of the cycle
 * @param given.heat      heat before the first cycle
 * @param given.cycles    number of cycles done, ≥ 0
 * @returns heat of both nodes
 * @throws  {RangeError} the cycle lasts no time
 * Formula: x(n) = x∞ + (x(0) − x∞)·e^(−n·D/τ), per node
 * Source:  derived
 * Example: dutyAfterCycles({ model: exampleModel, segments: [{ durationS: 60, currentA: 12 }], heat: { fast: 0.1, slow: 0.2 }, cycles: 0 }).slow → 0.2
 */
export const dutyAfterCycles = (
  given: Duty & { readonly heat: HeatState; readonly cycles: number },
): HeatState => {
  const nodes = dutyNodes(given);
  const after = (node: { startSettled: number; remainRatio: number }, start: number): number =>
    node.startSettled + (start - node.startSettled) * node.remainRatio ** given.cycles;
  return { fast: after(nodes.fast, given.heat.fast), slow: after(nodes.slow, given.heat.slow) };
};
