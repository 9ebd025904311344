import { checkedNumber } from '../../ac/checked-number.ts';
import { breakdown } from './breakdown.ts';
import type { CatalogueRow } from './catalogue-row.ts';
import type { MachineSupply } from './equivalent-circuit.ts';
import { lockedRotor } from './locked-rotor.ts';
import { machineState } from './machine-state.ts';
import { slipForTorque } from './slip-for-torque.ts';

/**
 * The row that a catalogue would print for a machine: the way back from fitFromCatalogue.
 *
 * @param given.circuit        the machine, see EquivalentCircuit
 * @param given.lineVoltageV   rated voltage line to line [V], above 0
 * @param given.frequencyHz    rated frequency [Hz], above 0
 * @param given.ratedTorqueNm  rated torque at the shaft [N·m], above 0
 * @returns the row, see CatalogueRow
 * @throws   {RangeError} a value outside its limits, or more torque than the machine has
 * Valid for: as machineState.
 * Source:   derived (equivalent circuit of fitzgerald, ch. 6)
 * Example:  catalogueOf({ circuit: exampleCircuit, lineVoltageV: 400, frequencyHz: 50, ratedTorqueNm: 36 }).breakdownTorqueRatio → 3.54
 */
export function catalogueOf(given: MachineSupply & { ratedTorqueNm: number }): CatalogueRow {
  const { circuit, lineVoltageV, frequencyHz } = given;
  const torqueNm = checkedNumber('ratedTorqueNm', given.ratedTorqueNm, { above: 0 });
  const rated = machineState({ ...given, slipRatio: slipForTorque({ ...given, torqueNm }) });
  const held = lockedRotor(given);
  return {
    ratedPowerW: rated.shaftPowerW,
    lineVoltageV,
    frequencyHz,
    connection: circuit.connection,
    efficiencyRatio: rated.efficiencyRatio,
    powerFactor: rated.powerFactor,
    ratedSpeedRpm: rated.speedRpm,
    lockedRotorCurrentRatio: held.lineCurrentA / rated.lineCurrentA,
    lockedRotorTorqueRatio: held.torqueNm / torqueNm,
    breakdownTorqueRatio: breakdown(given).shaftTorqueNm / torqueNm,
  };
}
