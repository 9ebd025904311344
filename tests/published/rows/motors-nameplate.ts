import { rowsOf } from './published-row.ts';

const published = 'published';
/** Worked out by hand from the printed tables: one figure of a table divided by another. */
const derived = 'derived';

export const motorsNameplateRows = [
  ...rowsOf(
    {
      id: 'R-1',
      source: 'hubert',
      place: 'ex. 5.13, p. 208',
      basis: published,
      given: { horsepower: 150, voltageV: 460, phases: 3, kvaPerHp: 6 },
    },
    { fromA: ['1054', 'A'], toA: ['1186', 'A'] },
  ),
  ...rowsOf(
    {
      id: 'R-3',
      source: 'mcpherson',
      place: 'ex. 4.8',
      basis: published,
      given: { horsepower: 10, voltageV: 230, phases: 3, kvaPerHp: 6 },
    },
    { toA: ['158.1', 'A'] },
  ),
  ...rowsOf(
    {
      id: 'R-5',
      source: 'hubert',
      place: 'ex. 5.1',
      basis: published,
      given: { horsepower: 10, speedRpm: 1150, startRatio: 2.25, breakdownRatio: 1.9, pullUpRatio: 1.65 },
    },
    {
      startTorqueLbFt: ['102.8', 'lb-ft'],
      breakdownTorqueLbFt: ['86.8', 'lb-ft'],
      pullUpTorqueLbFt: ['75.4', 'lb-ft'],
    },
  ),
  ...rowsOf(
    {
      id: 'T-1',
      source: 'nec-430',
      place: 'tables 430.248 and 430.251(A), 230 V: locked-rotor by full-load current',
      basis: derived,
      given: { voltageV: 230, phases: 1 },
    },
    Object.fromEntries([0.5, 0.75, 1, 1.5, 2, 3, 5, 7.5, 10].map((size) => [`${size} hp`, ['6.00', '']])),
  ),
  ...rowsOf(
    {
      id: 'T-2',
      source: 'nec-430',
      place: 'table 430.251(A), 230 V: kilovolt-amperes by horsepower',
      basis: derived,
      given: { voltageV: 230, phases: 1 },
    },
    {
      '0.5 hp': ['13.5', 'kVA/hp'],
      '0.75 hp': ['12.7', 'kVA/hp'],
      '1 hp': ['11.0', 'kVA/hp'],
      '1.5 hp': ['9.2', 'kVA/hp'],
      '2 hp': ['8.3', 'kVA/hp'],
      '3 hp': ['7.8', 'kVA/hp'],
      '5 hp': ['7.7', 'kVA/hp'],
      '7.5 hp': ['7.4', 'kVA/hp'],
      '10 hp': ['6.9', 'kVA/hp'],
    },
  ),
  ...rowsOf(
    {
      id: 'T-3',
      source: 'nec-430',
      place: 'tables 430.250 and 430.251(B), 460 V: locked-rotor by full-load current',
      basis: derived,
      given: { voltageV: 460, phases: 3 },
    },
    {
      '0.5 hp': ['9.09', ''],
      '0.75 hp': ['7.81', ''],
      '1 hp': ['7.14', ''],
      '1.5 hp': ['6.67', ''],
      '2 hp': ['7.35', ''],
      '3 hp': ['6.67', ''],
      '5 hp': ['6.05', ''],
      '7.5 hp': ['5.77', ''],
      '10 hp': ['5.79', ''],
      '20 hp': ['5.37', ''],
      '50 hp': ['5.58', ''],
      '100 hp': ['5.85', ''],
    },
  ),
  ...rowsOf(
    {
      id: 'T-4',
      source: 'nec-430',
      place: 'table 430.251(B), 460 V: kilovolt-amperes by horsepower',
      basis: derived,
      given: { voltageV: 460, phases: 3 },
    },
    {
      '0.5 hp': ['15.9', 'kVA/hp'],
      '0.75 hp': ['13.3', 'kVA/hp'],
      '1 hp': ['12.0', 'kVA/hp'],
      '1.5 hp': ['10.6', 'kVA/hp'],
      '2 hp': ['10.0', 'kVA/hp'],
      '3 hp': ['8.5', 'kVA/hp'],
      '5 hp': ['7.33', 'kVA/hp'],
      '7.5 hp': ['6.75', 'kVA/hp'],
      '10 hp': ['6.45', 'kVA/hp'],
      '20 hp': ['5.78', 'kVA/hp'],
      '50 hp': ['5.78', 'kVA/hp'],
      '100 hp': ['5.78', 'kVA/hp'],
    },
  ),
  ...rowsOf(
    {
      id: 'L-1',
      source: 'iec-60034-12',
      place: 'limit S/P of a 4 kW motor, efficiency 0.886, power factor 0.81',
      basis: 'memory',
      given: { ratedPowerW: 4000, efficiencyRatio: 0.886, powerFactor: 0.81 },
    },
    { currentRatio: ['9.33', ''] },
  ),
  ...rowsOf(
    {
      id: 'L-2',
      source: 'iec-60034-12',
      place: 'limit S/P of an 11 kW motor, efficiency 0.914, power factor 0.84',
      basis: 'memory',
      given: { ratedPowerW: 11000, efficiencyRatio: 0.914, powerFactor: 0.84 },
    },
    { currentRatio: ['9.21', ''] },
  ),
];
