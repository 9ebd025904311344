import type { InverterDatasheet } from './datasheet.ts';
import { solveHeatNetwork } from './solve-heat-network.ts';

/** The invented unit that the examples in the doc blocks compute with: 12 A for ever, 15 A for 30 min, 24 A for 60 s. */
export const exampleDatasheet: InverterDatasheet = {
  id: 'example',
  name: 'Example 2760',
  dcNominalV: 24,
  acNominalV: 230,
  frequencyHz: 50,
  referenceAmbientC: 25,
  continuous: { power: { value: 2760, unit: 'VA', powerFactor: 1 } },
  hot: { power: { value: 2400, unit: 'VA', powerFactor: 1 }, ambientC: 40 },
  longDuration: { power: { value: 3450, unit: 'VA', powerFactor: 1 }, durationS: 1800 },
  surge: { power: { value: 5520, unit: 'VA', powerFactor: 1 }, durationS: 60 },
  currentLimit: { power: { value: 5750, unit: 'VA', powerFactor: 1 } },
  heatSinkTimeConstantS: 3600,
  idleLossW: 20,
  efficiencyHalfRatio: 0.94,
  efficiencyFullRatio: 0.92,
  warnAtHeatRatio: 0.9,
  voltageHeldRatio: 0.9,
  voltageLostCycles: 25,
  waitS: 30,
  reclaimS: 120,
  stopsToLockout: 3,
  altitude: { fromM: 1000, lossPer100mRatio: 0.01, maxM: 4000 },
  massKg: 14,
  costIndex: 100,
};

export const exampleModel = solveHeatNetwork(exampleDatasheet);
