import { type InverterModel, loadCurrent } from '../../../engine/index.ts';
import { type Formula, fraction, product } from '../formula.ts';
import { defineWorksheet } from '../worksheet.ts';
import { lastsWarm } from './lasts-warm.ts';

interface Values {
  unit: InverterModel;
  ambientC: number;
  runningW: number;
  runningPowerFactor: number;
  runningS: number;
  peakW: number;
  peakPowerFactor: number;
  peakS: number;
  runningCurrentA: number;
  peakCurrentA: number;
  rating: string;
  utilisationRatio: number;
  peakRatio: number;
  verdict: string;
}

const VOLTAGE = 'unit.datasheet.acNominalV';
const ratings = ['continuous', 'hot', 'long-duration', 'surge'] as const;
type Rating = (typeof ratings)[number];
const verdicts = ['fits', 'running-too-much', 'peak-too-much', 'peak-too-long'] as const;

/** The rating that holds where the unit hangs for as long as the load runs. */
function ratingOf({ unit, ambientC, runningS }: Values): Rating {
  if (ambientC > unit.datasheet.referenceAmbientC) return 'hot';
  return runningS > unit.datasheet.longDuration.durationS ? 'continuous' : 'long-duration';
}

const ratingField = (rating: string): 'continuous' | 'hot' | 'longDuration' | 'surge' =>
  rating === 'long-duration' ? 'longDuration' : (ratings.find((one) => one === rating) as 'hot');

const ratedA = ({ unit, rating }: Values): number => unit[`${ratingField(rating)}A`];

/** Share of the rating with this name on the datasheet: I·U / S. */
const shareFormula = (currentId: string, field: string): Formula =>
  fraction(product(currentId, VOLTAGE), `unit.datasheet.${field}.power.value`);

const amperes = (unit: InverterModel, realPowerW: number, powerFactor: number): number =>
  loadCurrent({ realPowerW, powerFactor, voltageV: unit.datasheet.acNominalV, phases: 1 }).currentA;

/** Two slips that lead to one figure teach nothing apart. */
const unlessNear = (figure: number, other: number): number | null =>
  Math.abs(figure / other - 1) > 0.03 ? figure : null;

const wattsOverVolts = (unit: InverterModel, realPowerW: number): number =>
  realPowerW / unit.datasheet.acNominalV;

function verdictOf({ unit, utilisationRatio, peakRatio, peakS }: Values): string {
  if (utilisationRatio > 1) return 'running-too-much';
  if (peakRatio > 1) return 'peak-too-much';
  return peakS > unit.datasheet.surge.durationS ? 'peak-too-long' : 'fits';
}

function isWorthAsking(givens: Values): boolean {
  const { unit, ambientC, runningW, runningPowerFactor, runningS, peakW, peakPowerFactor, peakS } = givens;
  const { continuous, hot, longDuration, surge, referenceAmbientC } = unit.datasheet;
  const inVa = [continuous, hot, longDuration, surge].every(({ power }) => power.unit === 'VA');
  const hotSite = ambientC > referenceAmbientC;
  const ambientIsStated = !hotSite || (ambientC === hot.ambientC && runningS > longDuration.durationS);
  if (!inVa || !ambientIsStated) return false;
  const runningCurrentA = amperes(unit, runningW, runningPowerFactor);
  const peakCurrentA = amperes(unit, peakW, peakPowerFactor);
  const values: Values = { ...givens, runningCurrentA, peakCurrentA, rating: ratingOf(givens) };
  values.utilisationRatio = runningCurrentA / ratedA(values);
  values.peakRatio = peakCurrentA / unit.surgeA;
  const clear = Math.abs(values.utilisationRatio - 1) > 0.04 && Math.abs(values.peakRatio - 1) > 0.04;
  const faults = [values.utilisationRatio > 1, values.peakRatio > 1, peakS > surge.durationS];
  const oneFault = faults.filter(Boolean).length <= 1;
  return (
    clear &&
    oneFault &&
    peakCurrentA > 1.1 * runningCurrentA &&
    (verdictOf(values) !== 'fits' ||
      lastsWarm({ model: unit, ambientC, runningA: runningCurrentA, peakA: peakCurrentA, peakS }))
  );
}

export const designRating = defineWorksheet<Values>({
  id: 'design-rating',
  unit: 2,
  givens: {
    unit: { kind: 'inverter' },
    ambientC: { kind: 'number', dimension: 'temperature', from: 10, to: 60 },
    runningW: { kind: 'number', dimension: 'real-power', from: 50, to: 20_000 },
    runningPowerFactor: { kind: 'number', dimension: 'ratio', from: 0.3, to: 1 },
    runningS: { kind: 'number', dimension: 'time', from: 60, to: 86_400 },
    peakW: { kind: 'number', dimension: 'real-power', from: 50, to: 40_000 },
    peakPowerFactor: { kind: 'number', dimension: 'ratio', from: 0.2, to: 1 },
    peakS: { kind: 'number', dimension: 'time', from: 1, to: 900 },
  },
  quantities: {
    [VOLTAGE]: { symbol: 'U', dimension: 'voltage', unit: 'V' },
    'unit.datasheet.continuous.power.value': { symbol: 'S_cont', dimension: 'apparent-power' },
    'unit.datasheet.hot.power.value': { symbol: 'S_hot', dimension: 'apparent-power' },
    'unit.datasheet.longDuration.power.value': { symbol: 'S_long', dimension: 'apparent-power' },
    'unit.datasheet.surge.power.value': { symbol: 'S_surge', dimension: 'apparent-power' },
    'unit.datasheet.longDuration.durationS': { symbol: 't_long', dimension: 'time' },
    'unit.datasheet.surge.durationS': { symbol: 't_surge', dimension: 'time' },
    ambientC: { symbol: 'T_site', dimension: 'temperature' },
    runningW: { symbol: 'P_run', dimension: 'real-power', unit: 'W' },
    runningPowerFactor: { symbol: 'PF_run', dimension: 'ratio' },
    runningS: { symbol: 't_run', dimension: 'time' },
    peakW: { symbol: 'P_peak', dimension: 'real-power', unit: 'W' },
    peakPowerFactor: { symbol: 'PF_peak', dimension: 'ratio' },
    peakS: { symbol: 't_peak', dimension: 'time' },
    runningCurrentA: { symbol: 'I_run', dimension: 'current', unit: 'A' },
    peakCurrentA: { symbol: 'I_peak', dimension: 'current', unit: 'A' },
    utilisationRatio: { symbol: 'u_run', dimension: 'ratio', unit: '%' },
    peakRatio: { symbol: 'u_peak', dimension: 'ratio', unit: '%' },
  },
  accepts: isWorthAsking,
  datasheetLines: ['output', 'continuous', 'hot', 'longDuration', 'surge', 'currentLimit'],
  steps: [
    {
      kind: 'numeric',
      id: 'runningCurrentA',
      needs: ['unit', 'runningW', 'runningPowerFactor'],
      solve: ({ unit, runningW, runningPowerFactor }) => amperes(unit, runningW, runningPowerFactor),
      formula: fraction('runningW', product('runningPowerFactor', VOLTAGE)),
      tolerance: { relative: 0.015 },
      source: 'bird',
      slips: [
        {
          id: 'watts-over-volts',
          solve: ({ unit, runningW, runningPowerFactor }) =>
            runningPowerFactor < 1 ? wattsOverVolts(unit, runningW) : null,
        },
        {
          id: 'times-power-factor',
          solve: ({ unit, runningW, runningPowerFactor }) =>
            runningPowerFactor < 1 ? wattsOverVolts(unit, runningW) * runningPowerFactor : null,
        },
      ],
    },
    {
      kind: 'numeric',
      id: 'peakCurrentA',
      needs: ['unit', 'peakW', 'peakPowerFactor', 'runningCurrentA'],
      solve: ({ unit, peakW, peakPowerFactor }) => amperes(unit, peakW, peakPowerFactor),
      formula: fraction('peakW', product('peakPowerFactor', VOLTAGE)),
      tolerance: { relative: 0.015 },
      source: 'bird',
      slips: [
        {
          id: 'watts-over-volts',
          solve: ({ unit, peakW, peakPowerFactor }) =>
            peakPowerFactor < 1 ? wattsOverVolts(unit, peakW) : null,
        },
        {
          id: 'running-added',
          solve: ({ unit, peakW, peakPowerFactor, runningCurrentA }) =>
            amperes(unit, peakW, peakPowerFactor) + runningCurrentA,
        },
        {
          id: 'running-power-factor',
          solve: ({ unit, peakW, peakPowerFactor, runningW, runningCurrentA }) => {
            const wrongA = (peakW / runningW) * runningCurrentA;
            const rightA = amperes(unit, peakW, peakPowerFactor);
            const isWatts = Math.abs(wrongA / wattsOverVolts(unit, peakW) - 1) < 0.03;
            return !isWatts && Math.abs(wrongA / rightA - 1) > 0.03 ? wrongA : null;
          },
        },
      ],
    },
    {
      kind: 'choice',
      id: 'rating',
      needs: ['unit', 'ambientC', 'runningS'],
      options: ratings,
      solve: ratingOf,
      source: 'common-practice',
      slips: ratings.map((option) => ({
        id: option,
        solve: (values: Values) => (ratingOf(values) === option ? null : option),
      })),
    },
    {
      kind: 'numeric',
      id: 'utilisationRatio',
      needs: ['runningCurrentA', 'peakCurrentA', 'rating', 'unit'],
      solve: (values) => values.runningCurrentA / ratedA(values),
      formula: ({ rating }) => shareFormula('runningCurrentA', ratingField(rating)),
      tolerance: { relative: 0.025 },
      source: 'common-practice',
      slips: [
        { id: 'inverted', solve: (values) => ratedA(values) / values.runningCurrentA },
        {
          id: 'room-left',
          solve: (values) => {
            const used = values.runningCurrentA / ratedA(values);
            return Math.abs(1 - 2 * used) > 0.06 ? Math.abs(1 - used) : null;
          },
        },
        {
          id: 'peak-on-it',
          solve: (values) => {
            const rating = ratedA(values);
            const inverted = rating / values.runningCurrentA;
            return unlessNear(values.peakCurrentA / rating, inverted);
          },
        },
      ],
    },
    {
      kind: 'numeric',
      id: 'peakRatio',
      needs: ['peakCurrentA', 'unit', 'rating'],
      solve: ({ peakCurrentA, unit }) => peakCurrentA / unit.surgeA,
      formula: shareFormula('peakCurrentA', 'surge'),
      tolerance: { relative: 0.025 },
      source: 'common-practice',
      slips: [
        { id: 'inverted', solve: ({ peakCurrentA, unit }) => unit.surgeA / peakCurrentA },
        {
          id: 'design-rating',
          solve: (values) =>
            unlessNear(values.peakCurrentA / ratedA(values), values.unit.surgeA / values.peakCurrentA),
        },
        {
          id: 'current-limit',
          solve: ({ peakCurrentA, unit }) =>
            unit.surgeA < 0.97 * unit.limitA ? peakCurrentA / unit.limitA : null,
        },
      ],
    },
    {
      kind: 'choice',
      id: 'verdict',
      needs: ['unit', 'utilisationRatio', 'peakRatio', 'peakS'],
      options: verdicts,
      solve: verdictOf,
      source: 'common-practice',
      slips: verdicts.map((option) => ({
        id: option,
        solve: (values: Values) => (verdictOf(values) === option ? null : option),
      })),
    },
  ],
});
