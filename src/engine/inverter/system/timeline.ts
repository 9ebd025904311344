import { inputPowerW, lossW } from '../energy.ts';
import { heatAfter } from '../heat-after.ts';
import type { HeatState } from '../model.ts';
import type { Segment, SystemState, Timeline, UnitSegment, UnitSummary } from './system-types.ts';

/** Index of the segment that holds a moment; on a border the later one. Binary search: segments are in order. */
const segmentIndexAt = (segments: readonly Segment[], timeS: number): number => {
  let low = 0;
  let high = segments.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((segments[middle] as Segment).startS <= timeS) low = middle;
    else high = middle - 1;
  }
  return low;
};

const unitAt = (timeline: Timeline, unitIndex: number): UnitSummary => {
  const unit = timeline.units[unitIndex];
  if (unit === undefined) {
    throw new RangeError(`unitIndex: expected below ${timeline.units.length}, found ${unitIndex}`);
  }
  return unit;
};

const heatInSegment = (unit: UnitSummary, segment: Segment, part: UnitSegment, timeS: number): HeatState =>
  heatAfter({
    model: unit.model,
    heat: part.heatStart,
    currentA: part.currentForHeatA,
    durationS: timeS - segment.startS,
  });

/**
 * Heat of one unit at any moment of a timeline, in closed form from the start of its segment.
 *
 * @param timeline   from `simulateSystem`
 * @param unitIndex  place of the unit in the system, from 0
 * @param timeS      moment [s], 0 to the end
 * @returns heat of the fast and the slow node
 * @throws  {RangeError} no such unit, or a moment outside the timeline
 * Source:  foster-notebook
 * Example: heatAt(simulateSystem({ units: [{ id: 'a', phase: 'L1', model: exampleModel, ambientC: 25, heat: { fast: 0, slow: 0.5 }, loads: [] }], untilS: 60, stopsTogether: true }), 0, 0).slow → 0.5
 */
export const heatAt = (timeline: Timeline, unitIndex: number, timeS: number): HeatState => {
  const unit = unitAt(timeline, unitIndex);
  if (!(timeS >= 0 && timeS <= timeline.untilS)) {
    throw new RangeError(`timeS: expected 0 to ${timeline.untilS} s, found ${timeS} s`);
  }
  const segment = timeline.segments[segmentIndexAt(timeline.segments, timeS)];
  const part = segment?.units[unitIndex];
  return segment && part ? heatInSegment(unit, segment, part, timeS) : unit.heatEnd;
};

/** What a chart or a table shows at one moment. */
export interface TimelineSample {
  readonly timeS: number;
  readonly state: SystemState;
  readonly units: readonly { heat: HeatState; heatRatio: number; currentA: number; voltageRatio: number }[];
}

/**
 * A timeline read at equal steps, ends included, for a chart or table.
 *
 * @param given.timeline  from `simulateSystem`
 * @param given.count     number of samples, ≥ 2
 * @param given.fromS     first moment [s], default 0
 * @param given.toS       last moment [s], default the end
 * @returns for each sample timeS [s], state, and of each unit heat, heatRatio (sum), currentA [A], voltageRatio
 * @throws  {RangeError} fewer than two samples, moments outside the timeline, or a timeline of no length
 * Source:  foster-notebook
 * Example: sampleTimeline({ timeline: simulateSystem({ units: [{ id: 'a', phase: 'L1', model: exampleModel, ambientC: 25, loads: [] }], untilS: 60, stopsTogether: true }), count: 3 })[1]?.timeS → 30
 */
export const sampleTimeline = (given: {
  timeline: Timeline;
  count: number;
  fromS?: number;
  toS?: number;
}): TimelineSample[] => {
  const { timeline, count, fromS = 0, toS = timeline.untilS } = given;
  if (!(count >= 2)) throw new RangeError(`count: expected 2 or more, found ${count}`);
  if (!(fromS >= 0 && toS >= fromS && toS <= timeline.untilS && timeline.segments.length > 0)) {
    throw new RangeError(`fromS, toS: expected within 0 to ${timeline.untilS} s, found ${fromS} to ${toS} s`);
  }
  return Array.from({ length: count }, (_, i) => {
    const timeS = i === count - 1 ? toS : fromS + ((toS - fromS) * i) / (count - 1);
    const segment = timeline.segments[segmentIndexAt(timeline.segments, timeS)] as Segment;
    const units = segment.units.map((part, unitIndex) => {
      const heat = heatInSegment(unitAt(timeline, unitIndex), segment, part, timeS);
      return {
        heat,
        heatRatio: heat.fast + heat.slow,
        currentA: part.currentA,
        voltageRatio: part.voltageRatio,
      };
    });
    return { timeS, state: segment.state, units };
  });
};

/**
 * Energy of one unit over a timeline.
 *
 * @param timeline   from `simulateSystem`
 * @param unitIndex  place of the unit in the system, from 0
 * @returns inputJ from the DC side, outputJ to the loads, lossJ turned to heat [J]
 * @throws  {RangeError} no such unit
 * Formula: input = output + losses
 * Source:  common-practice
 * Example: timelineEnergy(simulateSystem({ units: [{ id: 'a', phase: 'L1', model: exampleModel, ambientC: 25, loads: [] }], untilS: 60, stopsTogether: true }), 0).inputJ → 1200
 */
export const timelineEnergy = (
  timeline: Timeline,
  unitIndex: number,
): { inputJ: number; outputJ: number; lossJ: number } => {
  const { model } = unitAt(timeline, unitIndex);
  const energy = { inputJ: 0, outputJ: 0, lossJ: 0 };
  for (const segment of timeline.segments) {
    const { outputW, currentForHeatA } = segment.units[unitIndex] as UnitSegment;
    const durationS = segment.endS - segment.startS;
    energy.inputJ += durationS * inputPowerW({ model, currentA: currentForHeatA, outputW });
    energy.outputJ += durationS * outputW;
    energy.lossJ += durationS * lossW(model, currentForHeatA);
  }
  return energy;
};
