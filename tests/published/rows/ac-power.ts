import { rowsOf } from './published-row.ts';

/** Textbook figures were read in the open companion set of the FOSSEE project, which keeps each book's example and page. */
const published = 'published';

/** In AC-24 the printed power factor of 0.866 stands for 30°, the angle the book works with. */
export const acPowerRows = [
  ...rowsOf(
    {
      id: 'AC-01',
      source: 'kuphaldt',
      place: 'AC ch. 11',
      basis: published,
      given: { voltageV: 120, frequencyHz: 60, resistanceOhm: 60, inductanceH: 0.16 },
    },
    {
      reactanceOhm: ['60.319', 'Ω'],
      impedanceOhm: ['85.078', 'Ω'],
      angleDeg: ['45.152', '°'],
      currentA: ['1.410', 'A'],
      realPowerW: ['119.365', 'W'],
      reactivePowerVar: ['119.998', 'var'],
      apparentPowerVa: ['169.256', 'VA'],
      powerFactor: ['0.705', ''],
    },
  ),
  ...rowsOf(
    {
      id: 'AC-02',
      source: 'kuphaldt',
      place: 'AC ch. 11',
      basis: published,
      given: { voltageV: 120, frequencyHz: 60, resistanceOhm: 60, inductanceH: 0.16, capacitanceF: 22e-6 },
    },
    {
      currentA: ['994.7', 'mA'],
      powerFactor: [
        '0.999',
        '',
        { exact: '0.99999', note: 'The text cuts its 0.9999 off instead of rounding; cos 0.27° is 0.99999.' },
      ],
    },
  ),
  ...rowsOf(
    {
      id: 'AC-04',
      source: 'bird',
      place: 'ex. 15.7, p. 216',
      basis: published,
      given: { voltageV: 240, frequencyHz: 50, resistanceOhm: 4, inductanceH: 9.55e-3 },
    },
    { reactanceOhm: ['3', 'Ω'], impedanceOhm: ['5', 'Ω'], currentA: ['48', 'A'], angleDeg: ['36.87', '°'] },
  ),
  ...rowsOf(
    {
      id: 'AC-05',
      source: 'bird',
      place: 'ex. 15.8',
      basis: published,
      given: { directV: 12, directA: 2, voltageV: 240, currentA: 20, frequencyHz: 50 },
    },
    {
      resistanceOhm: ['6', 'Ω'],
      impedanceOhm: ['12', 'Ω'],
      reactanceOhm: ['10.39', 'Ω'],
      inductanceH: ['33.1', 'mH'],
    },
  ),
  ...rowsOf(
    {
      id: 'AC-07',
      source: 'bird',
      place: 'ex. 16.6, p. 244',
      basis: published,
      given: {
        voltageV: 240,
        frequencyHz: 50,
        resistanceOhm: 40,
        inductanceH: 159.2e-3,
        capacitanceF: 30e-6,
      },
    },
    {
      coilA: ['3.75', 'A'],
      coilAngleDeg: ['-51.35', '°'],
      capacitorA: ['2.26', 'A'],
      currentA: ['2.43', 'A'],
      angleDeg: ['-15.85', '°'],
      impedanceOhm: ['98.64', 'Ω'],
      realPowerW: ['561.76', 'W'],
      apparentPowerVa: ['583.97', 'VA'],
      reactivePowerVar: ['159.53', 'var'],
    },
  ),
  ...rowsOf(
    {
      id: 'AC-08',
      source: 'bird',
      place: 'ex. 26.2',
      basis: published,
      given: { voltageRe: 120, voltageIm: 200, currentRe: 15, currentIm: 8 },
    },
    { realPowerW: ['3400', 'W'], reactivePowerVar: ['2040', 'var'] },
  ),
  ...rowsOf(
    {
      id: 'AC-10',
      source: 'bird',
      place: 'ex. 26.7',
      basis: published,
      given: { voltageV: 50, frequencyHz: 1500, resistanceOhm: 3, reactanceOhm: 4, target: 0.966 },
    },
    {
      realPowerW: ['300', 'W'],
      apparentPowerVa: ['500', 'VA'],
      reactivePowerVar: ['400', 'var'],
      correctionVar: ['319.71', 'var'],
      capacitanceF: ['13.57', 'µF'],
    },
  ),
  ...rowsOf(
    {
      id: 'AC-11',
      source: 'bird',
      place: 'ex. 19.9',
      basis: published,
      given: { realPowerW: 5000, currentA: 8.6, lineVoltageV: 400 },
    },
    { powerFactor: ['0.839', ''] },
  ),
  ...rowsOf(
    {
      id: 'AC-12',
      source: 'bird',
      place: 'ex. 16.11, p. 252',
      basis: published,
      given: { voltageV: 240, currentA: 50, powerFactor: 0.6, target: 1, frequencyHz: 50 },
    },
    { capacitorA: ['40', 'A'], supplyA: ['30', 'A'] },
  ),
  ...rowsOf(
    {
      id: 'AC-13',
      source: 'bird',
      place: 'ex. 16.12, p. 253',
      basis: published,
      given: {
        outputW: 4800,
        efficiencyRatio: 0.8,
        powerFactor: 0.625,
        target: 0.95,
        voltageV: 240,
        frequencyHz: 50,
      },
    },
    {
      currentA: ['40', 'A'],
      supplyA: ['26.32', 'A'],
      capacitorA: ['23', 'A'],
      capacitanceF: ['305', 'µF'],
      correctionVar: ['5.52', 'kvar'],
    },
  ),
  ...rowsOf(
    {
      id: 'AC-15',
      source: 'bird',
      place: 'ex. 26.6, p. 471',
      basis: published,
      given: { apparentPowerVa: 300_000, powerFactor: 0.7, target: 0.9 },
    },
    { correctionVar: ['112.54', 'kvar'] },
  ),
  ...rowsOf(
    {
      id: 'AC-18',
      source: 'mehta',
      place: 'ex. 6.4',
      basis: published,
      given: { realPowerW: 5000, powerFactor: 0.75, target: 0.9 },
    },
    { correctionVar: ['1.99', 'kvar'], perPhaseVar: ['0.663', 'kvar'] },
  ),
  ...rowsOf(
    {
      id: 'AC-19',
      source: 'mehta',
      place: 'ex. 6.5',
      basis: published,
      given: {
        outputW: 74_600,
        efficiencyRatio: 0.93,
        powerFactor: 0.75,
        target: 0.95,
        voltageV: 400,
        frequencyHz: 50,
        unitsInSeries: 4,
      },
    },
    {
      unitCapacitanceF: [
        '1173.8',
        'µF',
        { exact: '1177.2', note: 'The book rounds the tangents on the way, 0.3 % low.' },
      ],
    },
  ),
  ...rowsOf(
    {
      id: 'AC-20',
      source: 'masters',
      place: 'ex. 2.7',
      basis: published,
      given: { correctionVar: 4400, voltageV: 230, frequencyHz: 60 },
    },
    { capacitanceF: ['221', 'µF'] },
  ),
  ...rowsOf(
    {
      id: 'AC-21',
      source: 'bird',
      place: 'ex. 19.4, p. 301',
      basis: published,
      given: { phaseVoltageV: 240, firstW: 24_000, secondW: 18_000, thirdW: 12_000 },
    },
    { firstA: ['100', 'A'], secondA: ['75', 'A'], thirdA: ['50', 'A'], neutralA: ['43.3', 'A'] },
  ),
  ...rowsOf(
    {
      id: 'AC-23',
      source: 'mehta',
      place: 'ex. 14.8',
      basis: published,
      given: {
        firstA: 70,
        secondA: 84,
        thirdA: 33,
        motorA: 200,
        motorPowerFactor: 0.2,
        phaseVoltageV: 230,
        lineVoltageV: 400,
      },
    },
    {
      neutralA: ['45.64', 'A'],
      neutralWithMotorA: ['45.64', 'A'],
      firstLineA: ['224.7', 'A'],
      secondLineA: ['232', 'A'],
      thirdLineA: ['209.1', 'A'],
      lampsW: ['43.01', 'kW'],
      motorW: ['27.713', 'kW'],
    },
  ),
  ...rowsOf(
    {
      id: 'AC-24',
      source: 'mehta',
      place: 'ex. 14.9, p. 370',
      basis: published,
      given: { phaseVoltageV: 230, firstW: 20_000, secondVa: 28_750, thirdVa: 28_750, lagDeg: 30 },
    },
    {
      firstA: ['86.96', 'A'],
      secondA: ['125', 'A'],
      thirdA: ['125', 'A'],
      neutralA: [
        '129.54',
        'A',
        { exact: '129.55', note: 'The book adds 86.96 A and 2 · 125 A · 0.866, both already rounded.' },
      ],
      neutralThirdOffA: ['66.03', 'A'],
    },
  ),
  ...rowsOf(
    {
      id: 'AC-26',
      source: 'bird',
      place: 'ex. 19.7',
      basis: published,
      given: { resistanceOhm: 3, reactanceOhm: 4, lineVoltageV: 415 },
    },
    { starLineA: ['47.92', 'A'], deltaPhaseA: ['83', 'A'], deltaLineA: ['143.76', 'A'] },
  ),
  ...rowsOf(
    {
      id: 'AC-27',
      source: 'bird',
      place: 'ex. 19.10',
      basis: published,
      given: { resistanceOhm: 10, inductanceH: 0.042, frequencyHz: 50, lineVoltageV: 415 },
    },
    { starW: ['6283.3', 'W'], deltaW: ['18849.9', 'W'] },
  ),
  ...rowsOf(
    {
      id: 'AC-29',
      source: 'bird',
      place: 'ex. 19.13',
      basis: published,
      given: { resistanceOhm: 30, reactanceOhm: 40, lineVoltageV: 400 },
    },
    { lineA: ['13.86', 'A'], realPowerW: ['5.76', 'kW'], apparentPowerVa: ['9.6', 'kVA'] },
  ),
  ...rowsOf(
    {
      id: 'AC-31',
      source: 'bird',
      place: 'ex. 19.15',
      basis: published,
      given: { firstW: 8000, secondW: 4000 },
    },
    { realPowerW: ['12', 'kW'], powerFactor: ['0.866', ''] },
  ),
  ...rowsOf(
    {
      id: 'AC-33',
      source: 'kuphaldt',
      place: 'AC, polyphase chapter, harmonics',
      basis: published,
      given: { fundamentalA: 0.1198, harmonicA: 0.0499 },
    },
    {
      thirdNeutralA: [
        '149.3',
        'mA',
        {
          exact: '149.7',
          note: 'The source simulated its circuit; three times the phase current it prints is 149.7 mA.',
        },
      ],
      ninthNeutralA: ['149.3', 'mA', { exact: '149.7', note: 'As for the third harmonic.' }],
      fundamentalNeutralA: [
        '0.4337',
        'A',
        { exact: '0', note: 'The text prints A where its own table has µA: balanced fundamentals cancel.' },
      ],
      fifthNeutralA: ['0', 'A', { basis: 'derived', note: 'Balanced currents of order 5 cancel.' }],
    },
  ),
  ...rowsOf(
    {
      id: 'AC-34',
      source: 'derived',
      place: 'third harmonic of 0.7 in each of three phases',
      basis: 'derived',
      given: { fundamentalA: 1, thirdA: 0.7 },
    },
    { phaseA: ['1.2207', 'A'], neutralA: ['2.1', 'A'], neutralToPhase: ['1.72', ''] },
  ),
  ...rowsOf(
    {
      id: 'AC-35',
      source: 'storey',
      place: 'ex. 3.12',
      basis: published,
      given: { voltageV: 50, frequencyHz: 60, resistanceOhm: 6, inductanceH: 0.03 },
    },
    {
      currentA: ['3.91', 'A'],
      angleDeg: ['62.05', '°'],
      apparentPowerVa: ['195.27', 'VA'],
      realPowerW: ['92', 'W'],
    },
  ),
];
