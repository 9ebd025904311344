import { rowsOf } from './published-row.ts';

/** Textbook figures were read in the open companion set of the FOSSEE project, which keeps each book's example and page. */
const published = 'published';
const memory = 'memory';

export const runUpRows = [
  ...rowsOf(
    {
      id: 'A-2',
      source: 'gupta-singhal',
      place: 'ex. 6.7, p. 169',
      basis: published,
      given: {
        lineVoltageV: 400,
        frequencyHz: 50,
        polePairs: 4,
        r1: 0.1,
        r2: 0.1,
        x1: 0.4,
        x2: 0.4,
        inertiaKgM2: 10,
      },
    },
    {
      durationS: ['1.54', 's'],
      lossKj: ['61.69', 'kJ'],
    },
  ),
  ...rowsOf(
    {
      id: 'A-3',
      source: 'nagrath-kothari',
      place: 'ex. 9.19, p. 198',
      basis: published,
      given: {
        lineVoltageV: 415,
        frequencyHz: 50,
        polePairs: 3,
        reactanceOhm: 1.5,
        r2: 0.591,
        inertiaKgM2: 11,
        speedRatio: 0.96,
      },
    },
    { durationS: ['2.66', 's'] },
  ),
  ...rowsOf(
    {
      id: 'V-2',
      source: 'kosow',
      place: 'ex. 9.16, p. 313',
      basis: published,
      given: { phaseV: 120, currentA: 252, torque: 120, tapRatio: 0.6 },
    },
    { motorA: ['151.2', 'A'], lineA: ['90.72', 'A'], torque: ['43.2', 'lb-ft'] },
  ),
  ...rowsOf(
    {
      id: 'V-4',
      source: 'theraja-machines',
      place: 'ex. 35.15',
      basis: published,
      given: { phaseV: 230, currentA: 300, torque: 225 },
    },
    { lineA: ['100', 'A'], torque: ['75', 'N·m'] },
  ),
  ...rowsOf(
    {
      id: 'V-5',
      source: 'theraja-machines',
      place: 'ex. 35.16',
      basis: published,
      given: { phaseV: 230, startingCurrentRatio: 6, ratedSlipRatio: 0.04, tapPercent: 70.7 },
    },
    { starTorquePercent: ['48', '%'], tapTorquePercent: ['72', '%'] },
  ),
  ...rowsOf(
    {
      id: 'V-7',
      source: 'nagrath-kothari',
      place: 'ex. 9.12',
      basis: published,
      given: { phaseV: 230, startingCurrentRatio: 6, ratedSlipRatio: 0.05, tapRatio: 0.745, limitRatio: 2 },
    },
    {
      seriesTorque: ['0.2', ''],
      starLine: ['2', ''],
      starTorque: ['0.6', ''],
      tapTorque: ['1.0', ''],
    },
  ),
  ...rowsOf(
    {
      id: 'V-10',
      source: 'chakrabarti',
      place: 'ch. 4',
      basis: published,
      given: { lineVoltageV: 500, windingOhm: 3.5, torque: 334, tapRatio: 0.6 },
    },
    {
      directA: ['247', 'A'],
      starA: ['82.5', 'A'],
      starTorque: ['111', 'N·m'],
      tapLineA: ['89', 'A'],
      tapTorque: ['120', 'N·m'],
    },
  ),
  ...rowsOf(
    {
      id: 'P-1',
      source: 'gonen',
      place: 'ex. 9.11, p. 493',
      basis: published,
      given: { startVa: 63_000, faultA: 1438, lineV: 7200, baseV: 120 },
    },
    {
      dipV: ['0.730', 'V'],
      dipPercent: ['0.61', '%'],
      // By hand: 120 V · 63/(63 + 10 353.6).
      impedanceDipV: ['0.726', 'V', { basis: 'derived' }],
    },
  ),
  ...rowsOf(
    {
      id: 'P-5',
      source: 'derived',
      place: 'generator of 100 kVA, transient reactance 0.20',
      basis: memory,
      given: { ratedVa: 100_000, transientRatio: 0.2, startVa: 100_000 },
    },
    { dipPercent: ['16.7', '%'] },
  ),
];

const notTheLastDigit = (exact: string) => ({
  exact,
  note: 'The figure is from memory; the same table’s constants give the exact one.',
});

/** Eigenvalues of the machines at standstill, 1/s, in a frame turning with the supply. */
export const krauseRows = [
  ...rowsOf(
    { id: '3 hp', source: 'krause', place: 'eigenvalues at stall', basis: memory, given: {} },
    {
      statorRe: ['-4.57', '1/s'],
      statorIm: ['377', '1/s'],
      rotorRe: ['-313', '1/s'],
      rotorIm: ['377', '1/s', notTheLastDigit('378')],
      real: ['1.46', '1/s'],
    },
  ),
  ...rowsOf(
    { id: '50 hp', source: 'krause', place: 'eigenvalues at stall', basis: memory, given: {} },
    {
      statorRe: ['-2.02', '1/s'],
      statorIm: ['377', '1/s'],
      rotorRe: ['-198', '1/s', notTheLastDigit('-197')],
      rotorIm: ['377', '1/s', notTheLastDigit('378')],
      real: ['1.18', '1/s'],
    },
  ),
  ...rowsOf(
    { id: '500 hp', source: 'krause', place: 'eigenvalues at stall', basis: memory, given: {} },
    {
      statorRe: ['-0.872', '1/s'],
      statorIm: ['377', '1/s'],
      rotorRe: ['-70.3', '1/s'],
      rotorIm: ['377', '1/s'],
      real: ['0.397', '1/s', notTheLastDigit('0.398')],
    },
  ),
  ...rowsOf(
    { id: '2250 hp', source: 'krause', place: 'eigenvalues at stall', basis: memory, given: {} },
    {
      statorRe: ['-0.428', '1/s'],
      statorIm: ['377', '1/s'],
      rotorRe: ['-42.6', '1/s'],
      rotorIm: ['377', '1/s'],
      real: ['0.241', '1/s'],
    },
  ),
];
