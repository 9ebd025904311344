import { allowedHeat, type InverterModel, loadCurrent } from '../../../engine/index.ts';
import { areApart } from '../are-apart.ts';
import { difference, equation, fraction } from '../formula.ts';
import { defineWorksheet } from '../worksheet.ts';
import {
  demandFormula,
  demandStep,
  heatQuantities,
  stopTimeEquation,
  timeInSeconds,
} from './heat-formula.ts';
import { columnsOf, continuousOf, curveAt, deratedTime, onStraightLine, type Room, rowsOf } from './room.ts';
import { rowStep } from './row-step.ts';
import { stopTimeOrNull, stopTimeS } from './stop-time.ts';
import { liesBetweenRows, rowFor, timeBetweenRows } from './table-rows.ts';

interface Values {
  inverter: InverterModel;
  apparentPowerVa: number;
  roomC: number;
  loadA: number;
  allowedHeatRatio: number;
  continuousThereA: number;
  whereItStops: string;
  rowA: number;
  demandRatio: number;
  timeToStopS: number;
}

const currentOf = (inverter: InverterModel, apparentPowerVa: number): number =>
  loadCurrent({ apparentPowerVa, voltageV: inverter.datasheet.acNominalV, phases: 1 }).currentA;

function accepts({ inverter, apparentPowerVa, roomC }: Room & Pick<Values, 'apparentPowerVa'>): boolean {
  const { referenceAmbientC, hot, longDuration } = inverter.datasheet;
  const room = { inverter, roomC };
  const loadA = currentOf(inverter, apparentPowerVa);
  const rows = rowsOf(room);
  const row = rowFor(rows, loadA);
  if (row === null || !liesBetweenRows(rows, loadA)) return false;
  return (
    roomC % 5 === 0 &&
    Math.abs(roomC - referenceAmbientC) >= 5 &&
    roomC !== hot.ambientC &&
    // The line that the hint speaks of must lead inside the tolerance.
    Math.abs(onStraightLine(inverter, roomC - referenceAmbientC) / continuousOf(room) - 1) < 0.017 &&
    loadA > continuousOf(room) * 1.03 &&
    [inverter.continuousA, inverter.hotA].every((rating) => Math.abs(loadA / rating - 1) > 0.02) &&
    areApart(
      [
        ...columnsOf(room).map((ambientC) => curveAt(inverter, ambientC)(row)),
        timeBetweenRows(curveAt(inverter, roomC), rows, loadA),
        deratedTime(room, row),
        longDuration.durationS,
      ],
      0.035,
    )
  );
}

export const hotRoom = defineWorksheet<Values>({
  id: 'hot-room',
  unit: 2,
  givens: {
    inverter: { kind: 'inverter' },
    apparentPowerVa: { kind: 'number', dimension: 'apparent-power', from: 100, to: 50_000 },
    roomC: { kind: 'number', dimension: 'temperature', from: 0, to: 60 },
  },
  quantities: {
    ...heatQuantities,
    apparentPowerVa: { symbol: 'S', dimension: 'apparent-power' },
    roomC: { symbol: 'T_room', dimension: 'temperature' },
    loadA: { symbol: 'I', dimension: 'current', unit: 'A' },
    allowedHeatRatio: { symbol: 'h_room', dimension: 'ratio' },
    continuousThereA: { symbol: 'I_room', dimension: 'current', unit: 'A' },
    rowA: { symbol: 'I_row', dimension: 'current', unit: 'A', figures: 'as-is' },
    demandRatio: { symbol: 'u', dimension: 'ratio' },
    timeToStopS: timeInSeconds('t'),
  },
  accepts,
  datasheetLines: ['output', 'continuous', 'hot', 'longDuration'],
  tables: ({ inverter, roomC }) => {
    const ambients = columnsOf({ inverter, roomC });
    const { referenceAmbientC, hot } = inverter.datasheet;
    return [
      {
        id: 'ratings',
        columns: [
          { id: 'ambientC', dimension: 'temperature' },
          { id: 'continuousA', dimension: 'current' },
        ],
        rows: [
          [referenceAmbientC, inverter.continuousA],
          [hot.ambientC, inverter.hotA],
        ],
      },
      {
        id: 'timeToStop',
        columns: [
          { id: 'currentA', dimension: 'current' },
          ...ambients.map((ambientC) => ({ id: `at${ambientC}`, dimension: 'time' as const })),
        ],
        rows: rowsOf({ inverter, roomC }).map((currentA) => [
          currentA,
          ...ambients.map((ambientC) => curveAt(inverter, ambientC)(currentA)),
        ]),
      },
    ];
  },
  steps: [
    {
      kind: 'numeric',
      id: 'loadA',
      needs: ['inverter', 'apparentPowerVa'],
      solve: ({ inverter, apparentPowerVa }) => currentOf(inverter, apparentPowerVa),
      formula: fraction('apparentPowerVa', 'inverter.datasheet.acNominalV'),
      tolerance: { relative: 0.01 },
      source: 'bird',
      slips: [
        {
          id: 'three-phase-root',
          solve: ({ inverter, apparentPowerVa }) => currentOf(inverter, apparentPowerVa) / Math.sqrt(3),
        },
        {
          id: 'battery-voltage',
          solve: ({ inverter, apparentPowerVa }) => apparentPowerVa / inverter.datasheet.dcNominalV,
        },
      ],
    },
    {
      kind: 'numeric',
      id: 'allowedHeatRatio',
      needs: ['inverter', 'roomC'],
      solve: ({ inverter, roomC }) => allowedHeat({ model: inverter, ambientC: roomC }),
      formula: fraction(
        difference('inverter.limitC', 'roomC'),
        difference('inverter.limitC', 'inverter.datasheet.referenceAmbientC'),
      ),
      tolerance: { relative: 0.02 },
      source: 'derived',
      slips: [],
    },
    {
      kind: 'numeric',
      id: 'continuousThereA',
      needs: ['inverter', 'roomC', 'allowedHeatRatio'],
      solve: continuousOf,
      formula: equation(demandFormula('continuousThereA'), 'allowedHeatRatio'),
      tolerance: { relative: 0.02 },
      source: 'derived',
      slips: [
        { id: 'ambient-ignored', solve: ({ inverter }) => inverter.continuousA },
        { id: 'wrong-way', solve: (values) => 2 * values.inverter.continuousA - continuousOf(values) },
        { id: 'applied-twice', solve: (values) => continuousOf(values) ** 2 / values.inverter.continuousA },
        { id: 'hot-rating', solve: ({ inverter }) => inverter.hotA },
        {
          id: 'counted-from-nought',
          solve: ({ inverter, roomC }) => onStraightLine(inverter, roomC),
        },
      ],
    },
    {
      kind: 'choice',
      id: 'whereItStops',
      needs: ['inverter', 'loadA', 'continuousThereA'],
      options: ['nowhere', 'only-here', 'only-at-reference', 'both'],
      solve: ({ inverter, loadA, continuousThereA }) => {
        const atReference = loadA > inverter.continuousA;
        if (loadA > continuousThereA) return atReference ? 'both' : 'only-here';
        return atReference ? 'only-at-reference' : 'nowhere';
      },
      source: 'derived',
      slips: [
        { id: 'thinks-nowhere', solve: () => 'nowhere' },
        { id: 'thinks-only-here', solve: () => 'only-here' },
        { id: 'thinks-only-at-reference', solve: () => 'only-at-reference' },
        { id: 'thinks-both', solve: () => 'both' },
      ],
    },
    rowStep<Values>({
      id: 'rowA',
      needs: ['inverter', 'roomC', 'loadA'],
      rows: rowsOf,
      load: ({ loadA }) => loadA,
      slips: [],
    }),
    demandStep<Values>({
      id: 'demandRatio',
      needs: ['inverter', 'rowA'],
      currentA: ({ rowA }) => rowA,
      current: 'rowA',
    }),
    {
      kind: 'numeric',
      id: 'timeToStopS',
      needs: ['inverter', 'roomC', 'loadA', 'allowedHeatRatio', 'rowA', 'demandRatio'],
      solve: ({ inverter, roomC, rowA }) => stopTimeS({ model: inverter, currentA: rowA, ambientC: roomC }),
      formula: stopTimeEquation({
        demand: 'demandRatio',
        time: 'timeToStopS',
        allowed: 'allowedHeatRatio',
      }),
      tolerance: { relative: 0.03 },
      source: 'derived',
      slips: [
        {
          id: 'reference-column',
          solve: ({ inverter, rowA }) => stopTimeOrNull({ model: inverter, currentA: rowA }),
        },
        {
          id: 'hot-column',
          solve: ({ inverter, rowA }) => curveAt(inverter, inverter.datasheet.hot.ambientC)(rowA),
        },
        { id: 'time-derated', solve: (values) => deratedTime(values, values.rowA) },
        {
          id: 'between-rows',
          solve: (values) =>
            timeBetweenRows(curveAt(values.inverter, values.roomC), rowsOf(values), values.loadA),
        },
        { id: 'long-duration-row', solve: ({ inverter }) => inverter.datasheet.longDuration.durationS },
      ],
    },
  ],
});
