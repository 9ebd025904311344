export { breakdown } from './breakdown.ts';
export { catalogueOf } from './catalogue-of.ts';
export type { CatalogueRow } from './catalogue-row.ts';
export { circuitFromTests, type TestReadings } from './circuit-from-tests.ts';
export { energyBalance } from './energy-balance.ts';
export {
  checkedCircuit,
  type EquivalentCircuit,
  type MachineSupply,
  type RotorValues,
} from './equivalent-circuit.ts';
export { exampleCircuit, exampleRow } from './example-circuit.ts';
export { fitFromCatalogue } from './fit-from-catalogue.ts';
export { klossBreakdownSlip, klossTorque, torqueFromStartingCurrent } from './kloss.ts';
export { lockedRotor } from './locked-rotor.ts';
export { machineAdmittance } from './machine-admittance.ts';
export { type MachineState, machineState } from './machine-state.ts';
export { startAtSupply } from './reduced-supply.ts';
export { slipForTorque } from './slip-for-torque.ts';
export { slipOfSpeed, synchronousSpeed, torqueOfPower } from './synchronous-speed.ts';
