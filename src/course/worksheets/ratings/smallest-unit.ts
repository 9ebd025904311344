import { continuousCurrentA, type InverterModel } from '../../../engine/index.ts';
import {
  add,
  apparentPowersVa,
  type NameplateLoad,
  reactivePowerSum,
  reactivePowersVar,
  realPowerSum,
  realPowersW,
  totalApparentPowerVa,
} from '../current/load-list.ts';
import { fraction, power, product, root, sum } from '../formula.ts';
import { defineWorksheet } from '../worksheet.ts';
import { continuousCurrentEquation, continuousCurrentQuantities } from './continuous-current.ts';

interface Values {
  loads: readonly NameplateLoad[];
  ambientC: number;
  reserveRatio: number;
  small: InverterModel;
  middle: InverterModel;
  large: InverterModel;
  loadVa: number;
  designCurrentA: number;
  chosen: string;
  availableA: number;
  utilisationRatio: number;
}

const sizes = ['small', 'middle', 'large'] as const;
type Size = (typeof sizes)[number];
const VOLTAGE = 'small.datasheet.acNominalV';

/** Ambients of the printed table's columns [°C]. */
const COLUMNS_C = [25, 30, 35, 40, 45];

const availableOf = (values: Pick<Values, Size | 'ambientC'>, size: Size): number =>
  continuousCurrentA({ model: values[size], ambientC: values.ambientC });

const chosenOf = (values: Values): Size | undefined =>
  sizes.find((size) => availableOf(values, size) >= values.designCurrentA);

/** A learner's own figure may be beyond the range; the largest is then the nearest answer. */
const sizeOf = ({ chosen }: Values): Size => sizes.find((size) => size === chosen) ?? 'large';

/** The unit so many places below (−) or above (+) the right one. */
const stepsAway = (values: Values, places: number): Size | null => {
  const right = sizes.indexOf(chosenOf(values) ?? 'large');
  return sizes[right + places] ?? null;
};

export const smallestUnit = defineWorksheet<Values>({
  id: 'smallest-unit',
  unit: 2,
  givens: {
    loads: {
      kind: 'list',
      of: {
        name: { kind: 'text' },
        realPowerW: { kind: 'number', dimension: 'real-power', from: 20, to: 20_000 },
        powerFactor: { kind: 'number', dimension: 'ratio', from: 0.3, to: 1 },
      },
      from: 1,
      to: 4,
    },
    ambientC: { kind: 'number', dimension: 'temperature', from: 25, to: 45 },
    reserveRatio: { kind: 'number', dimension: 'ratio', from: 0.05, to: 1 },
    small: { kind: 'inverter' },
    middle: { kind: 'inverter' },
    large: { kind: 'inverter' },
  },
  quantities: {
    ...continuousCurrentQuantities('small'),
    ...continuousCurrentQuantities('middle'),
    ...continuousCurrentQuantities('large'),
    'loads.*.realPowerW': { symbol: 'P_*', dimension: 'real-power', unit: 'W' },
    'loads.*.powerFactor': { symbol: 'PF_*', dimension: 'ratio' },
    [VOLTAGE]: { symbol: 'U', dimension: 'voltage', unit: 'V' },
    ambientC: { symbol: 'T_site', dimension: 'temperature' },
    reserveRatio: { symbol: 'r', dimension: 'ratio', unit: '%' },
    loadVa: { symbol: 'S', dimension: 'apparent-power', unit: 'VA' },
    designCurrentA: { symbol: 'I_design', dimension: 'current', unit: 'A' },
    availableA: { symbol: 'I_site', dimension: 'current', unit: 'A' },
    utilisationRatio: { symbol: 'u', dimension: 'ratio', unit: '%' },
  },
  // Reactive power must matter, the ambient must be a column of the table, the choice must not hang on rounding,
  // and adding volt-amperes must not look like another way of taking the reserve.
  accepts: (values) => {
    const { loads, ambientC, reserveRatio } = values;
    const loadVa = totalApparentPowerVa(loads);
    const designCurrentA = (loadVa / values.small.datasheet.acNominalV) * (1 + reserveRatio);
    const realW = add(realPowersW(loads));
    const addedVa = add(apparentPowersVa(loads));
    const sidesVa = realW + add(reactivePowersVar(loads));
    const margins = sizes.map((size) => availableOf(values, size) / designCurrentA);
    return (
      COLUMNS_C.includes(ambientC) &&
      loadVa / realW > 1.04 &&
      (loads.length === 1 || addedVa / loadVa > 1.02) &&
      Math.abs((addedVa / loadVa) * (1 - reserveRatio ** 2) - 1) > 0.016 &&
      Math.abs((realW / loadVa) * (1 + reserveRatio) - 1) > 0.016 &&
      Math.abs(sidesVa / loadVa / (1 + reserveRatio) - 1) > 0.021 &&
      margins.every((margin) => Math.abs(margin - 1) > 0.03) &&
      margins.some((margin) => margin > 1)
    );
  },
  tables: (values) => [
    {
      id: 'available',
      columns: [
        { id: 'name', dimension: 'text' },
        ...COLUMNS_C.map((ambientC) => ({ id: `at${ambientC}`, dimension: 'current' as const })),
      ],
      rows: sizes.map((size) => [
        values[size].datasheet.name,
        ...COLUMNS_C.map((ambientC) => continuousCurrentA({ model: values[size], ambientC })),
      ]),
    },
  ],
  datasheetLines: ['output', 'continuous', 'hot', 'longDuration', 'surge', 'cost'],
  steps: [
    {
      kind: 'numeric',
      id: 'loadVa',
      needs: ['loads'],
      solve: ({ loads }) => totalApparentPowerVa(loads),
      formula: ({ loads }) => root(sum(power(realPowerSum(loads), 2), power(reactivePowerSum(loads), 2))),
      tolerance: { relative: 0.01 },
      source: 'bird',
      slips: [
        { id: 'watts-as-va', solve: ({ loads }) => add(realPowersW(loads)) },
        {
          id: 'volt-amperes-added',
          solve: ({ loads }) => (loads.length > 1 ? add(apparentPowersVa(loads)) : null),
        },
        {
          id: 'sides-added',
          solve: ({ loads }) => add(realPowersW(loads)) + add(reactivePowersVar(loads)),
        },
      ],
    },
    {
      kind: 'numeric',
      id: 'designCurrentA',
      needs: ['loadVa', 'reserveRatio', 'small'],
      solve: ({ loadVa, reserveRatio, small }) => (loadVa / small.datasheet.acNominalV) * (1 + reserveRatio),
      formula: product(fraction('loadVa', VOLTAGE), sum(1, 'reserveRatio')),
      tolerance: { relative: 0.015 },
      source: 'common-practice',
      slips: [
        { id: 'reserve-forgotten', solve: ({ loadVa, small }) => loadVa / small.datasheet.acNominalV },
        {
          id: 'reserve-taken-off',
          solve: ({ loadVa, reserveRatio, small }) =>
            (loadVa / small.datasheet.acNominalV) * (1 - reserveRatio),
        },
        {
          id: 'reserve-of-the-unit',
          solve: ({ loadVa, reserveRatio, small }) =>
            loadVa / small.datasheet.acNominalV / (1 - reserveRatio),
        },
      ],
    },
    {
      kind: 'choice',
      id: 'chosen',
      needs: ['designCurrentA', 'ambientC', 'small', 'middle', 'large'],
      options: sizes,
      solve: (values) => chosenOf(values) ?? 'large',
      source: 'common-practice',
      slips: [
        { id: 'one-too-small', solve: (values) => stepsAway(values, -1) },
        { id: 'far-too-small', solve: (values) => stepsAway(values, -2) },
        { id: 'one-too-large', solve: (values) => stepsAway(values, 1) },
        { id: 'far-too-large', solve: (values) => stepsAway(values, 2) },
      ],
    },
    {
      kind: 'numeric',
      id: 'availableA',
      needs: ['chosen', 'ambientC', 'small', 'middle', 'large'],
      solve: (values) => availableOf(values, sizeOf(values)),
      formula: (values) => continuousCurrentEquation(sizeOf(values), 'availableA', 'ambientC'),
      tolerance: { relative: 0.01 },
      source: 'derived',
      slips: [
        {
          id: 'cool-rating',
          solve: (values) =>
            values.ambientC > values[sizeOf(values)].datasheet.referenceAmbientC
              ? values[sizeOf(values)].continuousA
              : null,
        },
        { id: 'surge-rating', solve: (values) => values[sizeOf(values)].surgeA },
        { id: 'long-duration-rating', solve: (values) => values[sizeOf(values)].longDurationA },
      ],
    },
    {
      kind: 'numeric',
      id: 'utilisationRatio',
      needs: ['loadVa', 'availableA', 'designCurrentA', 'small'],
      solve: ({ loadVa, availableA, small }) => loadVa / small.datasheet.acNominalV / availableA,
      formula: fraction('loadVa', product(VOLTAGE, 'availableA')),
      tolerance: { relative: 0.02 },
      source: 'derived',
      slips: [
        { id: 'with-reserve', solve: ({ designCurrentA, availableA }) => designCurrentA / availableA },
        {
          id: 'inverted',
          solve: ({ loadVa, availableA, small }) => (availableA * small.datasheet.acNominalV) / loadVa,
        },
        {
          id: 'room-left',
          solve: ({ loadVa, availableA, small }) => {
            const used = loadVa / small.datasheet.acNominalV / availableA;
            return Math.abs(1 - 2 * used) > 0.06 ? 1 - used : null;
          },
        },
      ],
    },
  ],
});
