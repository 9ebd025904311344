import { type InverterModel, loadCurrent, overloadLevel, ratedCurrentA } from '../../../engine/index.ts';
import { fraction, product, smallest } from '../formula.ts';
import { defineWorksheet } from '../worksheet.ts';
import { NOMINAL, sharedVoltage, sharedVoltageEquation } from './shared-voltage.ts';

interface Values {
  unit: InverterModel;
  impedanceW: number;
  impedancePowerFactor: number;
  electronicsW: number;
  demandA: number;
  limitA: number;
  voltageRatio: number;
  voltageV: number;
  level: string;
  sharedVoltageV: number;
}

const levels = ['none', 'heat', 'surge', 'voltage-lost'] as const;

/** Far enough from each other to tell two wrong ways apart. */
const apart = (figure: number, other: number): boolean => Math.abs(figure - other) > 0.03 * Math.abs(other);

const levelOf = ({ unit, demandA }: Values): string =>
  overloadLevel({ model: unit, demandA, ambientC: unit.datasheet.referenceAmbientC });

export const voltsHeld = defineWorksheet<Values>({
  id: 'volts-held',
  unit: 2,
  givens: {
    unit: { kind: 'inverter' },
    impedanceW: { kind: 'number', dimension: 'real-power', from: 100, to: 60_000 },
    impedancePowerFactor: { kind: 'number', dimension: 'ratio', from: 0.2, to: 1 },
    electronicsW: { kind: 'number', dimension: 'real-power', from: 20, to: 20_000 },
  },
  quantities: {
    [NOMINAL]: { symbol: 'U', dimension: 'voltage', unit: 'V' },
    'unit.datasheet.currentLimit.power.value': { symbol: 'S_limit', dimension: 'apparent-power' },
    'unit.datasheet.voltageHeldRatio': { symbol: 'k_held', dimension: 'ratio', unit: '%' },
    impedanceW: { symbol: 'P_1', dimension: 'real-power', unit: 'W' },
    impedancePowerFactor: { symbol: 'PF_1', dimension: 'ratio' },
    electronicsW: { symbol: 'P_2', dimension: 'real-power', unit: 'W' },
    demandA: { symbol: 'I_wanted', dimension: 'current', unit: 'A' },
    limitA: { symbol: 'I_limit', dimension: 'current', unit: 'A' },
    voltageRatio: { symbol: 'k', dimension: 'ratio', unit: '%' },
    voltageV: { symbol: 'V', dimension: 'voltage', unit: 'V' },
    sharedVoltageV: { symbol: 'V_both', dimension: 'voltage', unit: 'V' },
  },
  // Well within the limit or well beyond it; and with the electronics a voltage must exist, clear of the edge.
  accepts: (loads) => {
    const { unit, impedanceW, impedancePowerFactor, electronicsW } = loads;
    const demandA = impedanceW / impedancePowerFactor / unit.datasheet.acNominalV;
    const wanted = demandA / unit.limitA;
    const clear = wanted < 0.95 || wanted > 1.02 / unit.datasheet.voltageHeldRatio;
    const clearOfRatings = [unit.continuousA, unit.longDurationA].every(
      (ratingA) => Math.abs(demandA / ratingA - 1) > 0.03,
    );
    const volts = sharedVoltage(loads, unit.limitA, 'power');
    if (unit.datasheet.currentLimit.power.unit !== 'VA' || !clear || !clearOfRatings || volts === null)
      return false;
    const alone = unit.datasheet.acNominalV * Math.min(1, 1 / wanted);
    const asImpedance = sharedVoltage(loads, unit.limitA, 'impedance') ?? 0;
    const lower = electronicsW / unit.limitA;
    return volts < 0.95 * alone && volts < 0.96 * asImpedance && volts > 1.25 * lower;
  },
  datasheetLines: ['output', 'continuous', 'longDuration', 'surge', 'currentLimit', 'voltageHeld'],
  steps: [
    {
      kind: 'numeric',
      id: 'demandA',
      needs: ['unit', 'impedanceW', 'impedancePowerFactor'],
      solve: ({ unit, impedanceW, impedancePowerFactor }) =>
        loadCurrent({
          realPowerW: impedanceW,
          powerFactor: impedancePowerFactor,
          voltageV: unit.datasheet.acNominalV,
          phases: 1,
        }).currentA,
      formula: fraction('impedanceW', product('impedancePowerFactor', NOMINAL)),
      tolerance: { relative: 0.015 },
      source: 'bird',
      slips: [
        {
          id: 'watts-over-volts',
          solve: ({ unit, impedanceW, impedancePowerFactor }) =>
            impedancePowerFactor < 1 ? impedanceW / unit.datasheet.acNominalV : null,
        },
        {
          id: 'times-power-factor',
          solve: ({ unit, impedanceW, impedancePowerFactor }) =>
            impedancePowerFactor < 1 ? (impedanceW * impedancePowerFactor) / unit.datasheet.acNominalV : null,
        },
        {
          id: 'peak-for-rms',
          solve: ({ unit, impedanceW, impedancePowerFactor }) =>
            (Math.SQRT2 * impedanceW) / impedancePowerFactor / unit.datasheet.acNominalV,
        },
      ],
    },
    {
      kind: 'numeric',
      id: 'limitA',
      needs: ['unit'],
      solve: ({ unit }) => ratedCurrentA(unit.datasheet.currentLimit.power, unit.datasheet.acNominalV),
      formula: fraction('unit.datasheet.currentLimit.power.value', NOMINAL),
      tolerance: { relative: 0.015 },
      source: 'invented-data',
      slips: [
        { id: 'continuous-rating', solve: ({ unit }) => unit.continuousA },
        { id: 'long-duration-rating', solve: ({ unit }) => unit.longDurationA },
        {
          id: 'surge-rating',
          solve: ({ unit }) => (unit.surgeA < 0.97 * unit.limitA ? unit.surgeA : null),
        },
      ],
    },
    {
      kind: 'numeric',
      id: 'voltageRatio',
      needs: ['demandA', 'limitA'],
      solve: ({ demandA, limitA }) => Math.min(1, limitA / demandA),
      formula: smallest(1, fraction('limitA', 'demandA')),
      tolerance: { relative: 0.02 },
      source: 'derived',
      slips: [
        { id: 'inverted', solve: ({ demandA, limitA }) => demandA / limitA },
        {
          id: 'root',
          solve: ({ demandA, limitA }) => (demandA > limitA ? Math.sqrt(limitA / demandA) : null),
        },
        {
          id: 'square',
          solve: ({ demandA, limitA }) => (demandA > limitA ? (limitA / demandA) ** 2 : null),
        },
        {
          id: 'part-lost',
          solve: ({ demandA, limitA }) => {
            const left = limitA / demandA;
            const lost = 1 - left;
            return left < 1 && apart(lost, left) && apart(lost, left ** 2) ? lost : null;
          },
        },
        {
          id: 'above-nominal',
          solve: ({ demandA, limitA }) => (demandA < limitA ? limitA / demandA : null),
        },
      ],
    },
    {
      kind: 'numeric',
      id: 'voltageV',
      needs: ['voltageRatio', 'unit', 'impedancePowerFactor'],
      solve: ({ voltageRatio, unit }) => voltageRatio * unit.datasheet.acNominalV,
      formula: product('voltageRatio', NOMINAL),
      tolerance: { relative: 0.02 },
      source: 'derived',
      slips: [
        {
          id: 'nominal',
          solve: ({ voltageRatio, unit, impedancePowerFactor }) =>
            voltageRatio < 1 && impedancePowerFactor === 1 ? unit.datasheet.acNominalV : null,
        },
        {
          id: 'held-threshold',
          solve: ({ unit, voltageRatio }) => {
            const { voltageHeldRatio, acNominalV } = unit.datasheet;
            return apart(voltageHeldRatio, voltageRatio) ? voltageHeldRatio * acNominalV : null;
          },
        },
        {
          id: 'peak-for-rms',
          solve: ({ unit, voltageRatio }) => {
            const peakRatio = Math.SQRT2 * voltageRatio;
            const stands = apart(peakRatio, 1) && apart(peakRatio, unit.datasheet.voltageHeldRatio);
            return stands ? peakRatio * unit.datasheet.acNominalV : null;
          },
        },
      ],
    },
    {
      kind: 'choice',
      id: 'level',
      needs: ['demandA', 'unit'],
      options: levels,
      solve: levelOf,
      source: 'common-practice',
      slips: levels.map((option) => ({
        id: option,
        solve: (values: Values) => (levelOf(values) === option ? null : option),
      })),
    },
    {
      kind: 'numeric',
      id: 'sharedVoltageV',
      needs: ['unit', 'impedanceW', 'impedancePowerFactor', 'electronicsW', 'limitA', 'voltageV'],
      solve: (values) => {
        const volts = sharedVoltage(values, values.limitA, 'power');
        if (volts === null)
          throw new RangeError('limitA: expected a limit that some voltage meets, found none');
        return volts;
      },
      formula: sharedVoltageEquation,
      tolerance: { relative: 0.02 },
      source: 'derived',
      slips: [
        { id: 'as-impedance', solve: (values) => sharedVoltage(values, values.limitA, 'impedance') },
        { id: 'electronics-left-out', solve: ({ voltageV }) => voltageV },
        {
          id: 'current-kept',
          // The electronics' current as at nominal voltage, the rest of the limit left for the other load.
          solve: (loads) => {
            const { unit, impedanceW, impedancePowerFactor, electronicsW, limitA } = loads;
            const { acNominalV } = unit.datasheet;
            const left = limitA - electronicsW / acNominalV;
            const volts = (left * impedancePowerFactor * acNominalV ** 2) / impedanceW;
            const others = [
              sharedVoltage(loads, limitA, 'impedance'),
              sharedVoltage(loads, limitA, 'power'),
              acNominalV,
            ];
            return left > 0 && others.every((other) => apart(volts, other ?? 0)) ? volts : null;
          },
        },
      ],
    },
  ],
});
