import { rowsOf } from './published-row.ts';

const derived = 'derived';
const published = 'published';

/** Where a handbook writes 1.414 V, it means the peak of a sine of 1 V r.m.s., √2 V. */
export const waveformRows = [
  ...rowsOf(
    {
      id: 'WF-sine',
      source: 'kuphaldt',
      place: 'AC ch. 1, fig. 02016',
      basis: published,
      given: { peak: 1 },
    },
    {
      rms: ['0.7071', ''],
      formFactor: ['1.1107', ''],
      crestFactor: ['1.414', ''],
      averagingMeterRatio: ['1.000', ''],
    },
  ),
  ...rowsOf(
    { id: 'WF-square', source: 'kuphaldt', place: 'AC ch. 1', basis: published, given: { peak: 1 } },
    { rms: ['1', ''], formFactor: ['1', ''], crestFactor: ['1', ''], averagingMeterRatio: ['1.111', ''] },
  ),
  ...rowsOf(
    { id: 'WF-triangle', source: 'kuphaldt', place: 'AC ch. 1', basis: published, given: { peak: 1 } },
    {
      rms: ['0.577', ''],
      formFactor: ['1.1547', ''],
      crestFactor: ['1.732', ''],
      averagingMeterRatio: ['0.962', ''],
      meter: ['0.555', 'V'],
    },
  ),
  ...rowsOf(
    { id: 'WF-half-wave', source: 'storey', place: 'ex. 3.4', basis: published, given: { peak: 1 } },
    {
      rms: ['0.5', ''],
      formFactor: ['1.571', ''],
      crestFactor: ['2', ''],
      averagingMeterRatio: ['0.707', '', { basis: derived }],
    },
  ),
  ...rowsOf(
    {
      id: 'WF-pulse-25',
      source: 'meter-handbooks',
      place: 'first handbook, p. 47',
      basis: published,
      given: { peak: 1, dutyRatio: 0.25 },
    },
    { formFactor: ['2', ''], crestFactor: ['2', ''], averagingMeterRatio: ['0.555', ''] },
  ),
  ...rowsOf(
    {
      id: 'WF-pulse-1',
      source: 'meter-handbooks',
      place: 'first handbook, p. 47',
      basis: published,
      given: { peak: 1, dutyRatio: 0.01 },
    },
    { formFactor: ['10', ''], crestFactor: ['10', ''], averagingMeterRatio: ['0.111', ''] },
  ),
  ...rowsOf(
    {
      id: 'WF-full-wave-ac',
      source: 'meter-handbooks',
      place: 'second handbook, p. 21',
      basis: published,
      given: { peak: Math.SQRT2 },
    },
    { rms: ['0.4352', 'V'], meter: ['0.421', 'V'] },
  ),
  ...rowsOf(
    {
      id: 'WF-half-wave-ac',
      source: 'meter-handbooks',
      place: 'third handbook, p. 3',
      basis: published,
      given: { peak: Math.SQRT2 },
    },
    {
      rms: ['0.5453', 'V'],
      meter: [
        '0.550',
        'V',
        {
          exact: '0.551',
          note: 'The handbook gives 0.2 % less than the exact 0.5511 V and does not say why.',
        },
      ],
    },
  ),
  ...rowsOf(
    {
      id: 'WF-half-wave-ac-2',
      source: 'meter-handbooks',
      place: 'second handbook, p. 21',
      basis: published,
      given: { peak: 2 },
    },
    {
      rms: ['0.771', 'V'],
      meter: [
        '0.764',
        'V',
        {
          exact: '0.779',
          note: 'A misprint: an averaging meter reads above the true 0.771 V here, not below.',
        },
      ],
    },
  ),
  ...[
    ['50', 1 / 2, '2.00', '-29'],
    ['40', 2 / 5, '2.24', '-37'],
    ['33', 1 / 3, '2.45', '-42'],
    ['25', 1 / 4, '2.83', '-50'],
  ].flatMap(([percent, widthRatio, crestFactor, errorPercent]) =>
    rowsOf(
      {
        id: `WF-truncated-${percent}`,
        source: 'derived',
        place: 'pulses of a half-sine, up and down',
        basis: derived,
        given: { peak: 1, widthRatio: Number(widthRatio) },
      },
      { crestFactor: [String(crestFactor), ''], meterErrorPercent: [String(errorPercent), '%'] },
    ),
  ),
  ...rowsOf(
    { id: 'NL-12', source: 'robertson', place: 'ex. 6.9, p. 213', basis: published, given: { shown: 5 } },
    {
      squareTrue: [
        '4.505',
        'V',
        { exact: '4.502', note: 'The book takes 1.11 for the form factor of a sine, exactly 1.1107.' },
      ],
      triangleTrue: [
        '5.18',
        'V',
        {
          exact: '5.20',
          note: 'The book takes 1.11 and 1.15 for the two form factors, exactly 1.1107 and 1.1547.',
        },
      ],
    },
  ),
  ...rowsOf(
    {
      id: 'NL-14',
      source: 'meter-note',
      place: 'examples',
      basis: published,
      given: { squareVpp: 2, pulseV: 3, dutyRatio: 0.1 },
    },
    {
      squareRms: ['1.000', 'V'],
      squareMeter: ['1.111', 'V'],
      pulseRms: ['0.95', 'V'],
      pulseCrest: ['3.16', ''],
    },
  ),
  ...rowsOf(
    {
      id: 'NL-09',
      source: 'bimbhra',
      place: 'ex. 3.16',
      basis: published,
      given: {},
    },
    {
      distortionFactor: ['0.90', ''],
      thd: ['0.48', ''],
      crestFactor: ['1.0', ''],
      powerFactor: ['0.90', ''],
    },
  ),
  ...rowsOf(
    {
      id: 'NL-04',
      source: 'bird',
      place: 'ex. 36.9',
      basis: published,
      given: { first: 240, third: 40, fifth: 30, resistanceOhm: 12, inductanceH: 9.55e-3, omega: 314 },
    },
    {
      currentA: ['13.89', 'A'],
      voltageV: ['173.35', 'V'],
      realPowerW: ['2316', 'W'],
      powerFactor: ['0.96', ''],
    },
  ),
  ...rowsOf(
    {
      id: 'NL-05',
      source: 'bird',
      place: 'ex. 36.11',
      basis: published,
      given: {
        direct: 25,
        first: 100,
        third: 40,
        fifth: 20,
        resistanceOhm: 5,
        inductanceH: 500e-6,
        omega: 1e4,
      },
    },
    { currentA: ['11.34', 'A'], realPowerW: ['643', 'W'] },
  ),
  ...rowsOf(
    {
      id: 'NL-06',
      source: 'bird',
      place: 'ex. 36.3',
      basis: published,
      given: { first: 0.1, second: 0.02, third: 0.01 },
    },
    { currentA: ['72.46', 'mA'] },
  ),
  ...rowsOf(
    {
      id: 'NL-08',
      source: 'bird',
      place: 'ex. 36.5',
      basis: published,
      given: { first: 12, second: 5, third: 2, resistanceOhm: 20 },
    },
    { realPowerW: ['1730', 'W'] },
  ),
];
