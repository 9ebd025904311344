import type { SystemEventKind } from '../../../engine/index.ts';
import type { StackedMark, StackedSpec } from '../../shared/chart/stacked-spec.ts';
import { linearTicks, roundUp, timeTicks } from '../../shared/chart/ticks.ts';
import { axisNumber, axisTime, words } from '../words.ts';
import { type PatternRun, patternSeries } from './run-pattern.ts';

const text = words.loadTimeline;

/** Letters closer than this share of the run would lie on one another on a phone. */
const closestRatio = 0.045;

const isMarked = (kind: SystemEventKind): kind is keyof typeof text.letters => kind in text.letters;

/** Stops before warnings and restarts, where there is no room for all. */
const isWeighty = (kind: SystemEventKind): boolean => kind === 'stop' || kind === 'lockout';

/** Events as marks. Letters that would lie on one another give way, to a stop or to the one before. */
export function eventMarks({ timeline, lengthS }: PatternRun): StackedMark[] {
  const shownS: number[] = [];
  const hasRoom = (timeS: number) =>
    shownS.every((other) => Math.abs(other - timeS) >= closestRatio * lengthS);
  const marked = timeline.events.flatMap(({ kind, timeS }) => (isMarked(kind) ? [{ kind, timeS }] : []));
  const shown = new Set<(typeof marked)[number]>();
  for (const weighty of [true, false]) {
    for (const mark of marked) {
      if (isWeighty(mark.kind) !== weighty || !hasRoom(mark.timeS)) continue;
      shownS.push(mark.timeS);
      shown.add(mark);
    }
  }
  return marked.map((mark) => ({
    timeS: mark.timeS,
    letter: text.letters[mark.kind],
    ink: isWeighty(mark.kind) ? 'limit' : 'axis',
    shown: shown.has(mark),
  }));
}

/** The run as panels: heat against what is allowed, current given and wanted, voltage. */
export function timelineSpec(run: PatternRun): StackedSpec {
  const series = patternSeries(run);
  const ends = (y: number) => [
    { x: 0, y },
    { x: run.lengthS, y },
  ];
  const [unit] = run.timeline.units;
  const warning = 100 * ((unit?.warningHeatRatio ?? 0) / run.allowedHeat);
  const mostA = roundUp(Math.max(1, series.mostA * 1.2));
  return {
    untilS: run.lengthS,
    timeTicks: (width) => timeTicks({ from: 0, to: run.lengthS, most: width < 480 ? 5 : 9 }),
    timeLabel: axisTime,
    numberLabel: axisNumber,
    marks: eventMarks(run),
    panels: [
      {
        title: text.heatTitle,
        weight: 5,
        max: Math.max(125, roundUp(run.peakRatio * 100)),
        ticks: [0, 25, 50, 75, 100],
        lines: [
          { points: ends(100), ink: 'limit', width: 1.5, dash: [6, 4], line: 'plot-limit' },
          {
            points: ends(warning),
            ink: 'limit',
            width: 1,
            dash: [1, 4],
            line: 'plot-limit plot-limit-warning',
          },
          {
            points: series.slow,
            ink: 'third',
            width: 1.5,
            dash: [2, 4],
            line: 'plot-line plot-thin plot-line-3',
          },
          {
            points: series.fast,
            ink: 'second',
            width: 1.5,
            dash: [9, 4],
            line: 'plot-line plot-thin plot-line-2',
          },
          { points: series.whole, ink: 'first', width: 2.5, dash: [], line: 'plot-line' },
        ],
      },
      {
        title: text.currentTitle,
        weight: 3,
        max: mostA,
        ticks: linearTicks({ from: 0, to: mostA * 0.85, most: 4 }),
        lines: [
          {
            points: series.wanted,
            ink: 'axis',
            width: 1.5,
            dash: [3, 3],
            line: 'plot-line plot-thin plot-wanted',
          },
          { points: series.delivered, ink: 'first', width: 2, dash: [], line: 'plot-line' },
        ],
      },
      {
        title: text.voltageTitle,
        weight: 2.2,
        max: 160,
        ticks: [0, 50, 100],
        lines: [{ points: series.voltage, ink: 'first', width: 2, dash: [], line: 'plot-line' }],
      },
    ],
  };
}
