import { rowsOf } from './published-row.ts';

/** Textbook figures were read in the open companion set of the FOSSEE project, which keeps each book's example and page. */
const published = 'published';

export const shaftLoadRows = [
  ...rowsOf(
    {
      id: 'A-5',
      source: 'gupta-drives',
      place: 'ex. 22, p. 80',
      basis: published,
      given: { ratedPowerW: 37_500, speedRpm: 500, motorRatio: 1.25, loadRatio: 1, inertiaKgM2: 20 },
    },
    {
      durationS: ['5.85', 's'],
      // By hand: 37 500 W over 52.36 rad/s.
      ratedTorqueNm: ['716.2', 'N·m', { basis: 'derived' }],
    },
  ),
  ...rowsOf(
    {
      id: 'A-6',
      source: 'gupta-drives',
      place: 'ex. 23, p. 80',
      basis: published,
      // Stored energy at speed: 660 kg·m for each kW.
      given: {
        ratedPowerW: 37_500,
        speedRpm: 500,
        motorRatio: 2,
        loadRatio: 1,
        storedEnergyJ: 660 * 9.81 * 37.5,
      },
    },
    {
      durationS: ['12.95', 's'],
      // By hand: 2·242 798 J over (52.36 rad/s)².
      inertiaKgM2: ['177.1', 'kg·m²', { basis: 'derived' }],
    },
  ),
  ...rowsOf(
    {
      id: 'A-7',
      source: 'gupta-singhal',
      place: 'ex. 3.2, p. 34',
      basis: published,
      given: {
        motorInertiaKgM2: 0.4,
        loadInertiaKgM2: 10,
        speedRatio: 0.1,
        loadTorqueNm: 50,
        efficiencyRatio: 0.9,
        motorRpm: 1400,
      },
    },
    { inertiaKgM2: ['0.5', 'kg·m²'], torqueNm: ['5.556', 'N·m'], powerW: ['814.5', 'W'] },
  ),
  ...rowsOf(
    {
      id: 'P-8',
      source: 'affinity-note',
      place: 'article of 2025',
      basis: published,
      given: { speedRatio: 1.1, flowM3PerS: 1, headM: 1, powerW: 1 },
    },
    { flowRisePercent: ['10', '%'], headRisePercent: ['21', '%'], powerRisePercent: ['33', '%'] },
  ),
  ...rowsOf(
    {
      id: 'P-9',
      source: 'affinity-note',
      place: 'article of 2015, p. 59',
      basis: published,
      given: { speedRatio: 2, flowM3PerS: 0.08, headM: 10, powerW: 1 },
    },
    {
      flowM3PerS: ['0.160', 'm³/s'],
      headM: ['40', 'm'],
      // By hand: 2³.
      powerW: ['8', 'times', { basis: 'derived' }],
    },
  ),
  ...rowsOf(
    {
      id: 'P-11',
      source: 'arasu',
      place: 'ex. 7.8, p. 316',
      basis: published,
      given: { flowM3PerS: 0.02, newFlowM3PerS: 0.01, diameterM: 0.3, headM: 15, powerW: 0 },
    },
    { diameterM: ['0.238', 'm'], headM: ['9.45', 'm'], flowM3PerS: ['0.01', 'm³/s'] },
  ),
];
