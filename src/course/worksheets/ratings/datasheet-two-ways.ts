import { continuousCurrentA, type InverterModel, loadCurrent, ratedCurrentA } from '../../../engine/index.ts';
import { fraction, product } from '../formula.ts';
import { defineWorksheet } from '../worksheet.ts';
import { continuousCurrentEquation, continuousCurrentQuantities } from './continuous-current.ts';

interface Values {
  unit: InverterModel;
  ambientC: number;
  loadW: number;
  loadPowerFactor: number;
  coolCurrentA: number;
  hotCurrentA: number;
  plan: string;
  siteCurrentA: number;
  loadCurrentA: number;
  utilisationRatio: number;
}

const plans = ['cool', 'between', 'hot'] as const;

function planOf({ unit, ambientC }: Values): string {
  if (ambientC <= unit.datasheet.referenceAmbientC) return 'cool';
  return ambientC >= unit.datasheet.hot.ambientC ? 'hot' : 'between';
}

/** How far the site is on the way from the reference ambient (0) to the hot one (1). */
const wayToHot = ({ unit: { datasheet }, ambientC }: Pick<Values, 'unit' | 'ambientC'>): number =>
  (ambientC - datasheet.referenceAmbientC) / (datasheet.hot.ambientC - datasheet.referenceAmbientC);

const unlessNear = (figure: number, key: number, ratio: number): number | null =>
  Math.abs(figure / key - 1) > ratio ? figure : null;

/** The engine's current; the learner's own two ratings stand in for the datasheet's where they differ. */
function siteCurrent({ unit, ambientC, coolCurrentA, hotCurrentA }: Values): number {
  const share = (continuousCurrentA({ model: unit, ambientC }) - unit.hotA) / (unit.continuousA - unit.hotA);
  return hotCurrentA + share * (coolCurrentA - hotCurrentA);
}

export const datasheetTwoWays = defineWorksheet<Values>({
  id: 'datasheet-two-ways',
  unit: 2,
  givens: {
    unit: { kind: 'inverter' },
    ambientC: { kind: 'number', dimension: 'temperature', from: 10, to: 55 },
    loadW: { kind: 'number', dimension: 'real-power', from: 50, to: 20_000 },
    loadPowerFactor: { kind: 'number', dimension: 'ratio', from: 0.3, to: 1 },
  },
  quantities: {
    ...continuousCurrentQuantities('unit'),
    'unit.datasheet.continuous.power.value': { symbol: 'S_cool', dimension: 'apparent-power', unit: 'VA' },
    'unit.datasheet.hot.power.value': { symbol: 'P_hot', dimension: 'real-power', unit: 'W' },
    'unit.datasheet.hot.power.powerFactor': { symbol: 'PF_hot', dimension: 'ratio' },
    'unit.datasheet.hot.ambientC': { symbol: 'T_hot', dimension: 'temperature' },
    'unit.datasheet.acNominalV': { symbol: 'U', dimension: 'voltage', unit: 'V' },
    ambientC: { symbol: 'T_site', dimension: 'temperature' },
    loadW: { symbol: 'P_load', dimension: 'real-power', unit: 'W' },
    loadPowerFactor: { symbol: 'PF_load', dimension: 'ratio' },
    coolCurrentA: { symbol: 'I_cool', dimension: 'current', unit: 'A' },
    hotCurrentA: { symbol: 'I_hot', dimension: 'current', unit: 'A' },
    siteCurrentA: { symbol: 'I_site', dimension: 'current', unit: 'A' },
    loadCurrentA: { symbol: 'I_load', dimension: 'current', unit: 'A' },
    utilisationRatio: { symbol: 'u', dimension: 'ratio', unit: '%' },
  },
  // Volt-amperes for the cool rating, watts for the hot one; half-way between, right and wrong end read the same.
  accepts: ({ unit, ambientC, loadPowerFactor }) =>
    unit.datasheet.continuous.power.unit === 'VA' &&
    unit.datasheet.hot.power.unit === 'W' &&
    Math.abs(wayToHot({ unit, ambientC }) - 0.5) > 0.09 &&
    loadPowerFactor < 0.97,
  datasheetLines: ['output', 'continuous', 'hot'],
  steps: [
    {
      kind: 'numeric',
      id: 'coolCurrentA',
      needs: ['unit'],
      solve: ({ unit }) => ratedCurrentA(unit.datasheet.continuous.power, unit.datasheet.acNominalV),
      formula: fraction('unit.datasheet.continuous.power.value', 'unit.datasheet.acNominalV'),
      tolerance: { relative: 0.015 },
      source: 'invented-data',
      slips: [
        {
          id: 'va-as-watts',
          solve: ({ unit }) => {
            const { powerFactor } = unit.datasheet.hot.power;
            return powerFactor < 1 ? unit.continuousA / powerFactor : null;
          },
        },
      ],
    },
    {
      kind: 'numeric',
      id: 'hotCurrentA',
      needs: ['unit', 'loadPowerFactor'],
      solve: ({ unit }) => ratedCurrentA(unit.datasheet.hot.power, unit.datasheet.acNominalV),
      formula: fraction(
        'unit.datasheet.hot.power.value',
        product('unit.datasheet.hot.power.powerFactor', 'unit.datasheet.acNominalV'),
      ),
      tolerance: { relative: 0.015 },
      source: 'invented-data',
      slips: [
        {
          id: 'watts-as-va',
          solve: ({ unit }) => {
            const { powerFactor } = unit.datasheet.hot.power;
            return powerFactor < 1 ? unit.hotA * powerFactor : null;
          },
        },
        {
          id: 'times-power-factor',
          solve: ({ unit }) => {
            const { powerFactor } = unit.datasheet.hot.power;
            return powerFactor < 1 ? unit.hotA * powerFactor ** 2 : null;
          },
        },
        {
          id: 'load-power-factor',
          solve: ({ unit, loadPowerFactor }) =>
            unlessNear((unit.hotA * unit.datasheet.hot.power.powerFactor) / loadPowerFactor, unit.hotA, 0.03),
        },
      ],
    },
    {
      kind: 'choice',
      id: 'plan',
      needs: ['unit', 'ambientC'],
      options: plans,
      solve: planOf,
      source: 'derived',
      slips: plans.map((option) => ({
        id: option,
        solve: (values: Values) => (planOf(values) === option ? null : option),
      })),
    },
    {
      kind: 'numeric',
      id: 'siteCurrentA',
      needs: ['unit', 'ambientC', 'coolCurrentA', 'hotCurrentA'],
      solve: siteCurrent,
      formula: continuousCurrentEquation('unit', 'siteCurrentA', 'ambientC'),
      // The straight line between the two stated ratings lies well within this band.
      tolerance: { relative: 0.015 },
      source: 'derived',
      slips: [
        {
          id: 'cool-rating',
          solve: (values) => unlessNear(values.coolCurrentA, siteCurrent(values), 0.02),
        },
        { id: 'hot-rating', solve: (values) => unlessNear(values.hotCurrentA, siteCurrent(values), 0.02) },
        {
          id: 'wrong-end',
          solve: (values) => {
            const { coolCurrentA, hotCurrentA } = values;
            const mirrored = hotCurrentA + wayToHot(values) * (coolCurrentA - hotCurrentA);
            const others = [siteCurrent(values), coolCurrentA, hotCurrentA];
            const stands = others.every((figure) => Math.abs(mirrored / figure - 1) > 0.022);
            return planOf(values) === 'between' && stands ? mirrored : null;
          },
        },
        {
          id: 'temperatures-divided',
          solve: ({ unit, ambientC, coolCurrentA }) =>
            ambientC > unit.datasheet.referenceAmbientC
              ? (coolCurrentA * unit.datasheet.referenceAmbientC) / ambientC
              : null,
        },
      ],
    },
    {
      kind: 'numeric',
      id: 'loadCurrentA',
      needs: ['unit', 'loadW', 'loadPowerFactor'],
      solve: ({ unit, loadW, loadPowerFactor }) =>
        loadCurrent({
          realPowerW: loadW,
          powerFactor: loadPowerFactor,
          voltageV: unit.datasheet.acNominalV,
          phases: 1,
        }).currentA,
      formula: fraction('loadW', product('loadPowerFactor', 'unit.datasheet.acNominalV')),
      tolerance: { relative: 0.015 },
      source: 'bird',
      slips: [
        { id: 'watts-over-volts', solve: ({ unit, loadW }) => loadW / unit.datasheet.acNominalV },
        {
          id: 'times-power-factor',
          solve: ({ unit, loadW, loadPowerFactor }) => (loadW * loadPowerFactor) / unit.datasheet.acNominalV,
        },
        {
          id: 'unit-power-factor',
          solve: ({ unit, loadW, loadPowerFactor }) => {
            const { powerFactor } = unit.datasheet.hot.power;
            const wrong = loadW / (powerFactor * unit.datasheet.acNominalV);
            const differs = Math.abs(powerFactor / loadPowerFactor - 1) > 0.03;
            return powerFactor < 1 && differs ? wrong : null;
          },
        },
      ],
    },
    {
      kind: 'numeric',
      id: 'utilisationRatio',
      needs: ['loadCurrentA', 'siteCurrentA'],
      solve: ({ loadCurrentA, siteCurrentA }) => loadCurrentA / siteCurrentA,
      formula: fraction('loadCurrentA', 'siteCurrentA'),
      tolerance: { relative: 0.03 },
      source: 'derived',
      slips: [
        {
          id: 'inverted',
          solve: ({ loadCurrentA, siteCurrentA }) =>
            unlessNear(siteCurrentA / loadCurrentA, loadCurrentA / siteCurrentA, 0.07),
        },
        {
          id: 'room-left',
          solve: ({ loadCurrentA, siteCurrentA }) =>
            unlessNear(Math.abs(1 - loadCurrentA / siteCurrentA), loadCurrentA / siteCurrentA, 0.07),
        },
      ],
    },
  ],
});
