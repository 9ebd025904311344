import { rowsOf } from './published-row.ts';

const basis = 'published';

/** The cycles themselves stand beside the calculation in the test: a list of stretches does not fit a row of numbers. */
export const dutyRmsRows = [
  ...rowsOf(
    { id: 'TH-22', source: 'gupta-singhal', place: 'ex. 4.6, p. 59', basis, given: {} },
    { rms: ['94.74', 'hp'] },
  ),
  ...rowsOf(
    { id: 'TH-24', source: 'theraja', place: 'ex. 45.4', basis, given: {} },
    { rms: ['69.07', 'hp'] },
  ),
  ...rowsOf(
    { id: 'TH-25', source: 'theraja', place: 'ex. 45.5', basis, given: {} },
    { rms: ['48.11', 'hp'] },
  ),
  ...rowsOf(
    { id: 'TH-27', source: 'dubey', place: 'ex. 4.3, p. 53', basis, given: {} },
    { rms: ['367', 'kW'] },
  ),
  ...rowsOf(
    { id: 'TH-29', source: 'theraja', place: 'ex. 45.7', basis, given: {} },
    { rms: ['26.55', 'hp', { note: 'The next standard size, 30 hp, is then chosen.' }] },
  ),
  ...rowsOf(
    {
      id: 'TH-30',
      source: 'dubey',
      place: 'ex. 4.2, p. 52',
      basis,
      given: { inertiaKgM2: 1e4, speedRpm: 200, reversalS: 5 },
    },
    {
      reversalNm: ['83776', 'N·m'],
      rms: [
        '45975',
        'N·m',
        { note: 'As re-calculated in the open companion; the answer printed in the book itself is wrong.' },
      ],
      ratingW: ['962.9', 'kW', { note: 'As for the torque.' }],
    },
  ),
  ...rowsOf(
    { id: 'TH-31', source: 'theraja', place: 'ex. 45.1, p. 1796', basis, given: { idleShare: 1 / 3 } },
    { rms: ['66', 'kW'], plainRms: ['58.6', 'kW', { basis: 'derived' }] },
  ),
  ...rowsOf(
    { id: 'TH-32', source: 'theraja', place: 'ex. 45.2', basis, given: { idleShare: 1 / 3 } },
    {
      rms: [
        '141',
        'kW',
        {
          exact: '146.1',
          note: 'The book puts the mean of the ramp, 100 kW, in place of its r.m.s. value, 200 kW/√3.',
        },
      ],
      flatMeanRms: [
        '141',
        'kW',
        { note: 'The same slip made on purpose: it gives the printed figure, which shows the cause.' },
      ],
      plainRms: ['123.4', 'kW', { basis: 'derived' }],
    },
  ),
];
