import type { InverterModel } from '../../../engine/index.ts';
import { difference, fraction, largest, smallest, sum } from '../formula.ts';
import { defineWorksheet } from '../worksheet.ts';

/** Clock times in seconds after midnight. */
interface LoggedStop {
  stopS: number;
  restartS: number;
}

interface Values {
  inverter: InverterModel;
  log: readonly LoggedStop[];
  meanIntervalS: number;
  spreadS: number;
  cause: string;
  firstLook: string;
}

/** The log counts whole seconds, so an interval can be off by one either way. */
const CLOCK_ERROR_S = 1;
/** Intervals within this are as good as equal. */
const REGULAR_WITHIN_S = 2;
/** Too far from each other to be one clock. */
const CLEARLY_OFF_S = 5;

const intervalsOf = (log: readonly LoggedStop[]): number[] =>
  log.map(({ stopS, restartS }) => restartS - stopS);
/** From each restart to the next stop. */
const runsOf = (log: readonly LoggedStop[]): number[] =>
  log.slice(1).map(({ stopS }, place) => stopS - (log[place]?.restartS ?? stopS));
/** From each stop to the next stop. */
const stopToStopOf = (log: readonly LoggedStop[]): number[] =>
  log.slice(1).map(({ stopS }, place) => stopS - (log[place]?.stopS ?? stopS));

/** Whether no two figures lie closer together than a gap. */
const haveGaps = (figures: readonly number[], gap: number): boolean =>
  figures.every((figure, place) =>
    figures.slice(place + 1).every((other) => Math.abs(figure - other) >= gap),
  );

const mean = (figures: readonly number[]): number =>
  figures.reduce((total, figure) => total + figure, 0) / figures.length;
const spread = (figures: readonly number[]): number => Math.max(...figures) - Math.min(...figures);

const causeOf = (inverter: InverterModel, meanIntervalS: number, spreadS: number): string => {
  if (spreadS > REGULAR_WITHIN_S) return 'irregular-outside';
  const fromWaitS = Math.abs(meanIntervalS - inverter.datasheet.waitS);
  return fromWaitS <= CLOCK_ERROR_S ? 'own-protection' : 'timed-outside';
};

export const restartInterval = defineWorksheet<Values>({
  id: 'restart-interval',
  unit: 2,
  givens: {
    inverter: { kind: 'inverter' },
    log: {
      kind: 'list',
      of: {
        stopS: { kind: 'number', dimension: 'time', from: 0, to: 86_400 },
        restartS: { kind: 'number', dimension: 'time', from: 0, to: 86_400 },
      },
      from: 3,
      to: 6,
    },
  },
  quantities: {
    'log.*.stopS': { symbol: 't_off*', dimension: 'time' },
    'log.*.restartS': { symbol: 't_on*', dimension: 'time' },
    meanIntervalS: { symbol: 't_mean', dimension: 'time' },
    spreadS: { symbol: 't_spread', dimension: 'time', unit: 's' },
  },
  accepts: ({ inverter, log }) => {
    const intervals = intervalsOf(log);
    const waitError = Math.abs(mean(intervals) - inverter.datasheet.waitS);
    const isRegular = spread(intervals) <= REGULAR_WITHIN_S;
    return (
      intervals.every((interval) => interval > 0) &&
      runsOf(log).every((run) => run > 0) &&
      // Clear cases only: regular on the wait, regular well off it, or no two alike and none on the wait.
      (isRegular
        ? waitError <= CLOCK_ERROR_S || waitError >= CLEARLY_OFF_S
        : haveGaps([...intervals, inverter.datasheet.waitS], CLEARLY_OFF_S))
    );
  },
  datasheetLines: ['wait', 'reclaim', 'lockout'],
  steps: [
    {
      kind: 'numeric',
      id: 'meanIntervalS',
      needs: ['log'],
      solve: ({ log }) => mean(intervalsOf(log)),
      formula: ({ log }) => fraction(sum(...intervalsOf(log)), log.length),
      tolerance: { absolute: 1 },
      source: 'derived',
      slips: [
        { id: 'restart-to-stop', solve: ({ log }) => mean(runsOf(log)) },
        { id: 'stop-to-stop', solve: ({ log }) => mean(stopToStopOf(log)) },
        { id: 'total-not-mean', solve: ({ log }) => mean(intervalsOf(log)) * log.length },
        { id: 'one-too-few', solve: ({ log }) => (mean(intervalsOf(log)) * log.length) / (log.length - 1) },
      ],
    },
    {
      kind: 'numeric',
      id: 'spreadS',
      needs: ['log'],
      solve: ({ log }) => spread(intervalsOf(log)),
      formula: ({ log }) => difference(largest(...intervalsOf(log)), smallest(...intervalsOf(log))),
      tolerance: { absolute: 1 },
      source: 'derived',
      slips: [
        { id: 'spread-of-runs', solve: ({ log }) => spread(runsOf(log)) },
        {
          id: 'either-way',
          solve: ({ log }) => {
            const spreadS = spread(intervalsOf(log));
            return spreadS > REGULAR_WITHIN_S ? spreadS / 2 : null;
          },
        },
      ],
    },
    {
      kind: 'choice',
      id: 'cause',
      needs: ['inverter', 'meanIntervalS', 'spreadS'],
      options: ['own-protection', 'cooled-down', 'timed-outside', 'irregular-outside'],
      solve: ({ inverter, meanIntervalS, spreadS }) => causeOf(inverter, meanIntervalS, spreadS),
      source: 'common-practice',
      slips: [
        { id: 'regular-means-own', solve: () => 'own-protection' },
        { id: 'waits-until-cool', solve: () => 'cooled-down' },
        { id: 'thinks-timer', solve: () => 'timed-outside' },
        { id: 'thinks-irregular', solve: () => 'irregular-outside' },
      ],
    },
    {
      kind: 'choice',
      id: 'firstLook',
      needs: ['cause'],
      options: ['loads-and-heat', 'relay-or-program', 'dc-supply-and-people', 'replace-the-unit'],
      solve: ({ cause }) => {
        if (cause === 'own-protection' || cause === 'cooled-down') return 'loads-and-heat';
        return cause === 'timed-outside' ? 'relay-or-program' : 'dc-supply-and-people';
      },
      source: 'common-practice',
      slips: [
        { id: 'loads-first', solve: () => 'loads-and-heat' },
        { id: 'timer-first', solve: () => 'relay-or-program' },
        { id: 'supply-first', solve: () => 'dc-supply-and-people' },
        { id: 'swap-first', solve: () => 'replace-the-unit' },
      ],
    },
  ],
});
