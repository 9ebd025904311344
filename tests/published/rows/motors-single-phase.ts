import { rowsOf } from './published-row.ts';

/** Textbook figures were read in the open companion set of the FOSSEE project, which keeps each book's example and page. */
const published = 'published';
const cutCurrent =
  'The re-computation rounds 3.605 A up to 4.0 A; the book’s other figures follow from 3.605 A.';
const splitWindings = {
  voltageV: 120,
  mainOhm: 2,
  mainReactanceOhm: 3.5,
  auxiliaryOhm: 9.15,
  auxiliaryReactanceOhm: 8.4,
};

export const singlePhaseMotorRows = [
  ...rowsOf(
    {
      id: 'Y-1',
      source: 'fitzgerald',
      place: 'ex. 9.2, p. 467',
      basis: published,
      given: {
        voltageV: 110,
        frequencyHz: 60,
        polePairs: 2,
        mainResistanceOhm: 2.02,
        mainReactanceOhm: 2.79,
        rotorResistanceOhm: 4.12,
        rotorReactanceOhm: 2.12,
        magnetizingReactanceOhm: 66.8,
        slipRatio: 0.05,
        coreLossW: 24,
        frictionLossW: 13,
      },
    },
    {
      currentA: ['4.0', 'A', { exact: '3.605', note: cutCurrent }],
      powerFactor: ['0.621', ''],
      shaftPowerW: ['147', 'W'],
      speedRpm: ['1710', 'rpm'],
      shaftTorqueNm: ['0.823', 'N·m'],
      efficiencyPercent: ['60', '%'],
      // By hand, with the locked rotor: 110 V over |2.02 + j2.79 + (j66.8 ∥ (4.12 + j2.12))| = 7.764 Ω.
      lockedRotorA: ['14.17', 'A', { basis: 'derived' }],
    },
  ),
  ...rowsOf(
    {
      id: 'Y-3',
      source: 'hubert',
      place: 'ex. 6.1',
      basis: published,
      given: { ...splitWindings, splitDeg: 30 },
    },
    {
      mainA: ['29.8', 'A'],
      mainAngleDeg: ['-60.3', '°'],
      auxiliaryA: ['9.66', 'A'],
      auxiliaryAngleDeg: ['-42.6', '°'],
      splitDeg: ['17.7', '°'],
      torqueFactorA2: ['87.4', 'A²'],
      addedOhm: ['5.25', 'Ω'],
      torqueFactorSplitA2: ['107.1', 'A²'],
      // By hand: |V/Z_main + V/Z_aux| = |14.769 − j25.846 + 7.117 − j6.533|.
      lineA: ['39.08', 'A', { basis: 'derived' }],
    },
  ),
  ...rowsOf(
    {
      id: 'Y-4',
      source: 'hubert',
      place: 'ex. 6.2',
      basis: published,
      given: { ...splitWindings, frequencyHz: 60 },
    },
    {
      capacitorOhm: ['13.6', 'Ω'],
      auxiliaryA: ['11.4', 'A'],
      torqueFactorA2: ['339', 'A²'],
      risePercent: [
        '216.5',
        '%',
        { exact: '216.4', note: 'The book divides its rounded 339 by its rounded 107.1.' },
      ],
      // By hand: 1/(2π·60·13.629) F; the re-computation prints no usable capacitance.
      capacitanceF: ['194.6', 'µF', { basis: 'derived' }],
      // By hand: √(29.77² + 11.39²), because the currents stand at right angles.
      lineA: ['31.9', 'A', { basis: 'derived' }],
    },
  ),
  ...rowsOf(
    {
      id: 'Y-6',
      source: 'fitzgerald',
      place: 'ex. 9.1',
      basis: published,
      given: {
        mainOhm: 4.5,
        mainReactanceOhm: 3.7,
        auxiliaryOhm: 9.5,
        auxiliaryReactanceOhm: 3.5,
        frequencyHz: 60,
      },
    },
    { capacitanceF: ['176', 'µF'] },
  ),
  ...rowsOf(
    {
      id: 'P-7',
      source: 'kosow',
      place: 'ex. 10.4',
      basis: published,
      // The plate gives no locked-rotor current; 6 is the multiple of the NEC tables and bears on no figure printed here.
      given: {
        voltageV: 115,
        frequencyHz: 60,
        currentA: 5.35,
        inputPowerW: 400,
        shaftPowerW: 746 / 3,
        shaftTorqueNm: 1.3558,
        lockedRotorTorqueRatio: 4.5,
        lockedRotorCurrentRatio: 6,
      },
    },
    { efficiencyPercent: ['62.2', '%'], powerFactor: ['0.650', ''], startTorqueRatio: ['4.5', ''] },
  ),
];
