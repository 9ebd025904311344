import { describe, expect, it } from 'vitest';
import { complexMagnitude, complexPower, parallelImpedance, seriesImpedance } from '../../ac/index.ts';
import { breakdown } from './breakdown.ts';
import type { EquivalentCircuit } from './equivalent-circuit.ts';
import { exampleCircuit } from './example-circuit.ts';
import { lockedRotor } from './locked-rotor.ts';
import { machineAdmittance } from './machine-admittance.ts';
import { machineState } from './machine-state.ts';
import { slipForTorque } from './slip-for-torque.ts';

const { atStandstill: _, ...rest } = exampleCircuit;
const constant: EquivalentCircuit = rest;
const supply = { circuit: exampleCircuit, lineVoltageV: 400, frequencyHz: 50 };
const plain = { ...supply, circuit: constant };

describe('machineState', () => {
  it('agrees with the circuit put together branch by branch', () => {
    const slipRatio = 0.07;
    const shunt = parallelImpedance([
      { re: 2600, im: 0 },
      { re: 0, im: 95 },
      { re: 1.7 / slipRatio, im: 5.8 },
    ]);
    const impedance = { re: 2.2 + shunt.re, im: 3.6 + shunt.im };
    const state = machineState({ ...plain, slipRatio });
    expect(state.phaseCurrentA).toBeCloseTo(400 / complexMagnitude(impedance), 9);
    expect(state.lineCurrentA).toBeCloseTo(state.phaseCurrentA * Math.sqrt(3), 9);
    const { realPowerW, reactivePowerVar } = complexPower({ re: 400, im: 0 }, state.phaseCurrent);
    expect(state.inputPowerW).toBeCloseTo(3 * realPowerW, 6);
    expect(state.reactivePowerVar).toBeCloseTo(3 * reactivePowerVar, 6);
  });

  it('draws only what the shunt takes at synchronous speed', () => {
    const state = machineState({ ...supply, slipRatio: 0 });
    expect(state.rotorCurrentA).toBe(0);
    expect(state.electromagneticTorqueNm).toBe(0);
    expect(state.shaftTorqueNm).toBeCloseTo(-90 / (50 * Math.PI), 9);
    expect(state.efficiencyRatio).toBe(0);
  });

  it('generates above synchronous speed and brakes against the field', () => {
    const generating = machineState({ ...supply, slipRatio: -0.05 });
    expect(generating.inputPowerW).toBeLessThan(0);
    expect(generating.powerFactor).toBeLessThan(0);
    expect(generating.reactivePowerVar).toBeGreaterThan(0);
    expect(generating.efficiencyRatio).toBe(0);
    const braking = machineState({ ...supply, slipRatio: 1.5 });
    expect(braking.speedRadPerS).toBeLessThan(0);
    expect(braking.mechanicalPowerW).toBeLessThan(0);
    // Friction helps to brake.
    expect(braking.shaftTorqueNm).toBeGreaterThan(braking.electromagneticTorqueNm);
  });

  it('takes the standstill values at standstill and half of each half way', () => {
    const held = { ...constant, rotorResistanceOhm: 2.7, rotorReactanceOhm: 3.4 };
    expect(machineState({ ...supply, slipRatio: 1 }).lineCurrentA).toBeCloseTo(
      machineState({ ...supply, circuit: held, slipRatio: 1 }).lineCurrentA,
      9,
    );
    const half = { ...constant, rotorResistanceOhm: 2.2, rotorReactanceOhm: 4.6 };
    expect(machineState({ ...supply, slipRatio: 0.5 }).lineCurrentA).toBeCloseTo(
      machineState({ ...supply, circuit: half, slipRatio: 0.5 }).lineCurrentA,
      9,
    );
    // It is the frequency in the rotor that counts: at half the supply frequency standstill is half way.
    expect(machineState({ ...supply, frequencyHz: 25, slipRatio: 1 }).lineCurrentA).toBeCloseTo(
      machineState({ ...supply, circuit: half, frequencyHz: 25, slipRatio: 1 }).lineCurrentA,
      9,
    );
  });

  it('knows a circuit without shunt, which takes nothing at synchronous speed', () => {
    const bare = { ...constant, magnetisingReactanceOhm: null, coreLossResistanceOhm: null };
    const state = machineState({ ...supply, circuit: bare, slipRatio: 0 });
    expect(state.lineCurrentA).toBe(0);
    expect(state.powerFactor).toBe(0);
    const held = machineState({ ...supply, circuit: bare, slipRatio: 1 });
    const series = seriesImpedance({
      resistanceOhm: 3.9,
      inductanceH: 9.4 / (100 * Math.PI),
      frequencyHz: 50,
    });
    expect(held.phaseCurrentA).toBeCloseTo(400 / complexMagnitude(series), 9);
  });

  it('gives delta three times the line current and torque of star', () => {
    const star = { ...exampleCircuit, connection: 'star' as const };
    const inDelta = lockedRotor(supply);
    const inStar = lockedRotor({ ...supply, circuit: star });
    expect(inDelta.lineCurrentA / inStar.lineCurrentA).toBeCloseTo(3, 9);
    expect(inDelta.torqueNm / inStar.torqueNm).toBeCloseTo(3, 9);
  });

  it.each([
    [{ connection: 'zigzag' as 'star' }, /connection/],
    [{ polePairs: 0 }, /polePairs/],
    [{ polePairs: 1.5 }, /polePairs/],
    [{ referenceFrequencyHz: 0 }, /referenceFrequencyHz/],
    [{ statorResistanceOhm: -0.1 }, /statorResistanceOhm/],
    [{ statorReactanceOhm: Number.NaN }, /statorReactanceOhm/],
    [{ magnetisingReactanceOhm: 0 }, /magnetisingReactanceOhm/],
    [{ coreLossResistanceOhm: 0 }, /coreLossResistanceOhm/],
    [{ rotorResistanceOhm: 0 }, /^rotorResistanceOhm/],
    [{ rotorReactanceOhm: -1 }, /^rotorReactanceOhm/],
    [{ atStandstill: { rotorResistanceOhm: 0, rotorReactanceOhm: 1 } }, /atStandstill.rotorResistanceOhm/],
    [{ rotationalLossW: -1 }, /rotationalLossW/],
  ])('refuses %j', (wrong, message) => {
    const circuit = { ...exampleCircuit, ...wrong };
    expect(() => machineState({ ...supply, circuit, slipRatio: 1 })).toThrow(message);
  });

  it.each([
    [{ lineVoltageV: -1 }, /lineVoltageV/],
    [{ frequencyHz: 0 }, /frequencyHz/],
    [{ slipRatio: Number.NaN }, /slipRatio/],
  ])('refuses %j', (wrong, message) => {
    expect(() => machineState({ ...supply, slipRatio: 1, ...wrong })).toThrow(message);
  });
});

describe('machineAdmittance', () => {
  it('is the line current by the voltage to the star point, in star and in delta', () => {
    for (const connection of ['star', 'delta'] as const) {
      const circuit = { ...exampleCircuit, connection };
      const { lineCurrentA, inputPowerW } = machineState({ ...supply, circuit, slipRatio: 0.3 });
      const admittance = machineAdmittance({ circuit, frequencyHz: 50, slipRatio: 0.3 });
      expect((complexMagnitude(admittance) * 400) / Math.sqrt(3)).toBeCloseTo(lineCurrentA, 9);
      expect(admittance.re * 400 ** 2).toBeCloseTo(inputPowerW, 6);
    }
  });
});

describe('breakdown', () => {
  it('finds by search what the closed form says of a rotor that does not change', () => {
    const { rotorResistanceOhm, rotorReactanceOhm } = constant;
    const circuit = { ...constant, atStandstill: { rotorResistanceOhm, rotorReactanceOhm } };
    const bySearch = breakdown({ ...supply, circuit });
    const closed = breakdown(plain);
    expect(bySearch.slipRatio).toBeCloseTo(closed.slipRatio, 6);
    expect(bySearch.torqueNm).toBeCloseTo(closed.torqueNm, 9);
  });

  it('is no less than the torque at any slip', () => {
    for (const frequencyHz of [10, 50, 100]) {
      const top = breakdown({ ...supply, frequencyHz });
      for (let slipRatio = 0.005; slipRatio < 3; slipRatio += 0.005) {
        const { electromagneticTorqueNm } = machineState({ ...supply, frequencyHz, slipRatio });
        expect(electromagneticTorqueNm).toBeLessThanOrEqual(top.torqueNm + 1e-9);
      }
    }
  });

  it('lies beyond standstill where rotor resistance outweighs reactance', () => {
    const rotor = { rotorResistanceOhm: 40, rotorReactanceOhm: 4 };
    const closed = breakdown({ ...supply, circuit: { ...constant, ...rotor } });
    expect(closed.slipRatio).toBeGreaterThan(1);
    const bySearch = breakdown({ ...supply, circuit: { ...constant, ...rotor, atStandstill: rotor } });
    expect(bySearch.slipRatio).toBeCloseTo(closed.slipRatio, 9);
  });
});

describe('slipForTorque', () => {
  it('finds the running side, up to pull-out itself', () => {
    const top = breakdown(supply);
    for (const share of [0, 0.2, 0.9, 1]) {
      const torqueNm = share * top.shaftTorqueNm;
      const slipRatio = slipForTorque({ ...supply, torqueNm });
      expect(slipRatio).toBeLessThanOrEqual(top.slipRatio);
      expect(machineState({ ...supply, slipRatio }).shaftTorqueNm).toBeCloseTo(torqueNm, 6);
    }
  });

  it('refuses what would stall the machine, and an open supply', () => {
    const { shaftTorqueNm } = breakdown(supply);
    expect(() => slipForTorque({ ...supply, torqueNm: shaftTorqueNm * 1.001 })).toThrow(/pull-out torque/);
    expect(() => slipForTorque({ ...supply, torqueNm: -1 })).toThrow(/torqueNm/);
    expect(() => slipForTorque({ ...supply, lineVoltageV: 0, torqueNm: 0 })).toThrow(/lineVoltageV/);
  });
});
