import { describe, expect, it } from 'vitest';
import {
  breakdown,
  type EquivalentCircuit,
  lockedRotor,
  machineState,
  slipForTorque,
} from '../../src/engine/motors/index.ts';
import { type Solver, testRows } from './expect-printed.ts';
import {
  circuitSolver,
  fromLosses,
  fromTests,
  klossFromCurrent,
  klossFromRatios,
  klossPoints,
  mostPower,
  otherFrequency,
  otherSupply,
  sameTorqueLessVoltage,
  starAndDeltaStart,
} from './motors-three-phase-solvers.ts';
import { measuredMachine, motorsThreePhaseRows } from './rows/motors-three-phase.ts';

const solvers: Record<string, Solver> = {
  'E-1': circuitSolver,
  'E-2': circuitSolver,
  'E-4': circuitSolver,
  'E-5': circuitSolver,
  'E-7': circuitSolver,
  'E-7b': circuitSolver,
  'E-8': mostPower,
  'E-9': circuitSolver,
  'E-12a': circuitSolver,
  'E-12b': circuitSolver,
  'E-12c': circuitSolver,
  'E-12d': circuitSolver,
  'E-14': fromTests,
  'E-15': fromLosses,
  'K-1': klossPoints,
  'K-3': klossFromCurrent,
  'K-5': klossFromRatios,
  'V-1': otherSupply,
  'V-9': otherSupply,
  'V-11': otherSupply,
  'V-13': otherSupply,
  'V-14': otherFrequency,
  'V-16': starAndDeltaStart,
  'V-18': sameTorqueLessVoltage,
};

describe('published three-phase motors', () => testRows(motorsThreePhaseRows, solvers));

describe('E-10 modelica-library, a measured 18.5 kW machine', () => {
  const { circuit: data, measured, windingC, copperPerK, aluminiumPerK } = measuredMachine;
  const circuit: EquivalentCircuit = {
    connection: 'delta',
    polePairs: 2,
    referenceFrequencyHz: 50,
    statorResistanceOhm: data.statorResistance20Ohm * (1 + copperPerK * (windingC - 20)),
    rotorResistanceOhm: data.rotorResistance20Ohm * (1 + aluminiumPerK * (windingC - 20)),
    statorReactanceOhm: data.statorReactanceOhm,
    rotorReactanceOhm: data.rotorReactanceOhm,
    magnetisingReactanceOhm: data.magnetisingReactanceOhm,
    coreLossResistanceOhm: (3 * 388 ** 2) / data.coreLossW,
    rotationalLossW: data.rotationalLossW / (measured.speedRpm / 1500) ** 2,
  };
  const supply = { circuit, lineVoltageV: 400, frequencyHz: 50 };
  const torqueNm = measured.shaftTorqueNm;
  const state = machineState({ ...supply, slipRatio: slipForTorque({ ...supply, torqueNm }) });

  // Shaft torque is what the machine is loaded with here.
  it.each(Object.entries(measured).filter(([name]) => name !== 'shaftTorqueNm'))(
    '%s is within 1.5 per cent of the measured %d',
    (name, value) => {
      const found = (state as unknown as Record<string, number>)[name] ?? Number.NaN;
      expect(Math.abs(found / value - 1), `calculated ${found}`).toBeLessThan(0.015);
    },
  );

  it('has less torque at standstill than at rated load, as constant rotor values make it', () => {
    expect(lockedRotor(supply).torqueNm).toBeLessThan(torqueNm);
    expect(breakdown(supply).torqueNm).toBeGreaterThan(2 * torqueNm);
  });
});
