import { continuousCurrentA, type InverterModel, loadCurrent } from '../../../engine/index.ts';
import { difference, equation, fraction, product } from '../formula.ts';
import { defineWorksheet } from '../worksheet.ts';
import { areApart } from './are-apart.ts';
import { demandFormula, heatQuantities, stopTimeEquation } from './heat-formula.ts';
import { readsWell, tableLoads } from './printed-curve.ts';
import { stopTimeOrNull, stopTimeS } from './stop-time.ts';

interface Values {
  inverter: InverterModel;
  apparentPowerVa: number;
  roomC: number;
  loadA: number;
  continuousThereA: number;
  whereItStops: string;
  timeToStopS: number;
}

type Room = Pick<Values, 'inverter' | 'roomC'>;

const currentOf = (inverter: InverterModel, apparentPowerVa: number): number =>
  loadCurrent({ apparentPowerVa, voltageV: inverter.datasheet.acNominalV, phases: 1 }).currentA;

const continuousOf = ({ inverter, roomC }: Room): number =>
  continuousCurrentA({ model: inverter, ambientC: roomC });

/** What the straight line through the two stated ratings gives, so many kelvin above the reference ambient. */
function onStraightLine(inverter: InverterModel, aboveReferenceK: number): number {
  const { hot, referenceAmbientC } = inverter.datasheet;
  const lostPerKelvinA = (inverter.continuousA - inverter.hotA) / (hot.ambientC - referenceAmbientC);
  return inverter.continuousA - lostPerKelvinA * aboveReferenceK;
}

/** As far on the other side of the reference ambient as the room is on this one. */
const mirrored = ({ inverter, roomC }: Room): number => 2 * inverter.datasheet.referenceAmbientC - roomC;

const curveAt = (inverter: InverterModel, ambientC: number) => (currentA: number) =>
  stopTimeOrNull({ model: inverter, currentA, ambientC });

const columnsOf = ({ inverter, roomC }: Room): number[] =>
  [...new Set([inverter.datasheet.referenceAmbientC, roomC, mirrored({ inverter, roomC })])].sort(
    (a, b) => a - b,
  );

const rowsOf = ({ inverter, roomC }: Room): number[] =>
  tableLoads(
    columnsOf({ inverter, roomC }).map((ambientC) => curveAt(inverter, ambientC)),
    {
      from: Math.min(inverter.continuousA, continuousOf({ inverter, roomC })),
      to: inverter.limitA,
      widest: inverter.continuousA / 8,
    },
  );

/** The time at the reference ambient, shortened as the current is: the wrong thing derated. */
function deratedTime({ inverter, roomC }: Room, loadA: number): number | null {
  const timeS = stopTimeOrNull({ model: inverter, currentA: loadA });
  return timeS === null ? null : (timeS * continuousOf({ inverter, roomC })) / inverter.continuousA;
}

const lossAllowed = product(
  'inverter.continuousLossW',
  fraction(
    difference('inverter.limitC', 'roomC'),
    difference('inverter.limitC', 'inverter.datasheet.referenceAmbientC'),
  ),
);

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
    continuousThereA: { symbol: 'I_room', dimension: 'current', unit: 'A' },
    timeToStopS: { symbol: 't', dimension: 'time' },
  },
  accepts: ({ inverter, apparentPowerVa, roomC }) => {
    const { referenceAmbientC, hot } = inverter.datasheet;
    const loadA = currentOf(inverter, apparentPowerVa);
    return (
      roomC % 5 === 0 &&
      Math.abs(roomC - referenceAmbientC) >= 5 &&
      roomC !== hot.ambientC &&
      // The line that the hint speaks of must lead inside the tolerance.
      Math.abs(onStraightLine(inverter, roomC - referenceAmbientC) / continuousOf({ inverter, roomC }) - 1) <
        0.017 &&
      mirrored({ inverter, roomC }) >= 0 &&
      loadA < inverter.limitA * 0.98 &&
      loadA > continuousOf({ inverter, roomC }) * 1.03 &&
      Math.abs(loadA / inverter.continuousA - 1) > 0.015 &&
      Math.abs(loadA / inverter.hotA - 1) > 0.02 &&
      areApart(
        [
          ...columnsOf({ inverter, roomC }).map((ambientC) => curveAt(inverter, ambientC)(loadA)),
          deratedTime({ inverter, roomC }, loadA),
          inverter.datasheet.longDuration.durationS,
        ],
        0.075,
      ) &&
      readsWell(curveAt(inverter, roomC), rowsOf({ inverter, roomC }), loadA)
    );
  },
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
      id: 'continuousThereA',
      needs: ['inverter', 'roomC'],
      solve: continuousOf,
      formula: equation(
        demandFormula('continuousThereA'),
        fraction(
          difference('inverter.limitC', 'roomC'),
          difference('inverter.limitC', 'inverter.datasheet.referenceAmbientC'),
        ),
      ),
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
    {
      kind: 'numeric',
      id: 'timeToStopS',
      needs: ['inverter', 'roomC', 'loadA'],
      solve: ({ inverter, roomC, loadA }) => stopTimeS({ model: inverter, currentA: loadA, ambientC: roomC }),
      formula: stopTimeEquation({ current: 'loadA', time: 'timeToStopS', allowed: lossAllowed }),
      tolerance: { relative: 0.07 },
      source: 'derived',
      slips: [
        {
          id: 'reference-column',
          solve: ({ inverter, loadA }) => stopTimeOrNull({ model: inverter, currentA: loadA }),
        },
        {
          id: 'other-side-column',
          solve: ({ inverter, roomC, loadA }) =>
            stopTimeOrNull({ model: inverter, currentA: loadA, ambientC: mirrored({ inverter, roomC }) }),
        },
        {
          id: 'time-derated',
          solve: ({ inverter, roomC, loadA }) => deratedTime({ inverter, roomC }, loadA),
        },
        { id: 'long-duration-row', solve: ({ inverter }) => inverter.datasheet.longDuration.durationS },
      ],
    },
  ],
});
