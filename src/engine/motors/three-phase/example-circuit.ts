import type { CatalogueRow } from './catalogue-row.ts';
import type { EquivalentCircuit } from './equivalent-circuit.ts';

/**
 * A 5.5 kW motor of an invented make, 400 V, 50 Hz, four poles, whose rotor values change from running to
 * standstill. Made up: it shows how to calculate and proves nothing.
 */
export const exampleCircuit: EquivalentCircuit = {
  connection: 'delta',
  polePairs: 2,
  referenceFrequencyHz: 50,
  statorResistanceOhm: 2.2,
  statorReactanceOhm: 3.6,
  magnetisingReactanceOhm: 95,
  coreLossResistanceOhm: 2600,
  rotorResistanceOhm: 1.7,
  rotorReactanceOhm: 5.8,
  atStandstill: { rotorResistanceOhm: 2.7, rotorReactanceOhm: 3.4 },
  rotationalLossW: 90,
};

/** The catalogue row of a 5.5 kW motor of an invented make. */
export const exampleRow: CatalogueRow = {
  ratedPowerW: 5500,
  lineVoltageV: 400,
  frequencyHz: 50,
  connection: 'delta',
  efficiencyRatio: 0.89,
  powerFactor: 0.82,
  ratedSpeedRpm: 1460,
  lockedRotorCurrentRatio: 7.3,
  lockedRotorTorqueRatio: 2.4,
  breakdownTorqueRatio: 3.1,
};
