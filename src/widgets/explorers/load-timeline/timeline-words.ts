import type { PrintedTable } from '../../../course/exercises/given-rows.ts';
import { type InverterModel, type SystemEvent, sampleTimeline } from '../../../engine/index.ts';
import type { KeyEntry } from '../../shared/chart/Key.tsx';
import type { Readout } from '../../shared/explorer/Readouts.tsx';
import { amperes, axisTime, celsius, duration, fill, percent, words } from '../words.ts';
import type { PatternSetting } from './pattern.ts';
import type { PatternRun } from './run-pattern.ts';

const text = words.loadTimeline;

const timesText = (count: number): string =>
  count === 1 ? text.times.one : fill(text.times.many, { count });

export function timelineSummary(model: InverterModel, { ambientC }: PatternSetting, run: PatternRun): string {
  const common = { name: model.datasheet.name, length: axisTime(run.lengthS) };
  if (run.firstStop === null) {
    return fill(text.summaryFine, {
      ...common,
      peak: percent(run.peakRatio),
      ambient: celsius(ambientC),
      when: duration(run.peakAtS),
    });
  }
  return fill(text.summaryStops, {
    ...common,
    stops: timesText(run.stops),
    first: duration(run.firstStop.timeS),
    cause: text.causes[run.firstStop.cause],
    off: duration(run.offS),
    end: text.states[run.endState],
  });
}

export function timelineReadouts(run: PatternRun): Readout[] {
  return [
    { name: text.readPeak, value: percent(run.peakRatio), main: true },
    { name: text.readStops, value: String(run.stops) },
    { name: text.readOff, value: duration(run.offS) },
    { name: text.readEnd, value: text.statesShort[run.endState] },
  ];
}

export const timelineLines: readonly KeyEntry[] = [
  { line: 'plot-line', label: text.sum },
  { line: 'plot-line plot-thin plot-line-2', label: text.fast },
  { line: 'plot-line plot-thin plot-line-3', label: text.slow },
  { line: 'plot-limit', label: text.allowed },
  { line: 'plot-limit plot-limit-warning', label: text.warning },
  { line: 'plot-line plot-thin plot-wanted', label: text.wanted },
];

/** Longest list of events that is still read. */
const mostEvents = 14;

export interface EventLine {
  readonly time: string;
  readonly letter: string;
  readonly sentence: string;
}

function eventSentence({ kind, count, cause }: SystemEvent): string {
  if (kind === 'load-change') return '';
  return fill(text.events[kind], {
    count: count ?? 0,
    cause: cause ? text.causes[cause] : '',
  });
}

/** What happened, in order and in words; changes of load are the learner's own and left out. */
export function eventLines({ timeline }: PatternRun): { lines: EventLine[]; more: number } {
  const told = timeline.events.filter(({ kind }) => kind !== 'load-change');
  const letters: Readonly<Record<string, string>> = text.letters;
  return {
    lines: told.slice(0, mostEvents).map((event) => ({
      time: duration(event.timeS),
      letter: letters[event.kind] ?? '',
      sentence: eventSentence(event),
    })),
    more: Math.max(0, told.length - mostEvents),
  };
}

const rowCount = 13;

export function timelineTable(model: InverterModel, run: PatternRun): PrintedTable {
  return {
    caption: fill(text.tableCaption, { name: model.datasheet.name }),
    columns: [text.colTime, text.colState, text.colCurrent, text.colHeat, text.colVoltage],
    rows: sampleTimeline({ timeline: run.timeline, count: rowCount }).map(({ timeS, state, units }) => {
      const [unit] = units;
      return [
        duration(timeS),
        text.statesShort[state],
        amperes(unit?.currentA ?? 0),
        percent((unit?.heatRatio ?? 0) / run.allowedHeat),
        percent(unit?.voltageRatio ?? 0),
      ];
    }),
  };
}
