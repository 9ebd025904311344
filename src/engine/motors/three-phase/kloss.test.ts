import { describe, expect, it } from 'vitest';
import { breakdown } from './breakdown.ts';
import { exampleCircuit } from './example-circuit.ts';
import { klossBreakdownSlip, klossTorque, torqueFromStartingCurrent } from './kloss.ts';
import { machineState } from './machine-state.ts';

describe('klossTorque', () => {
  it('with stator resistance is exact for the circuit where the shunt is neglected', () => {
    const { atStandstill: _, ...constant } = exampleCircuit;
    const circuit = { ...constant, magnetisingReactanceOhm: null, coreLossResistanceOhm: null };
    const supply = { circuit, lineVoltageV: 400, frequencyHz: 50 };
    const top = breakdown(supply);
    for (const slipRatio of [0.01, 0.1, 0.5, 1]) {
      const kloss = klossTorque({
        breakdownTorqueNm: top.torqueNm,
        breakdownSlipRatio: top.slipRatio,
        slipRatio,
        statorToRotorRatio: circuit.statorResistanceOhm / circuit.rotorResistanceOhm,
      });
      const exact = machineState({ ...supply, slipRatio }).electromagneticTorqueNm;
      expect(kloss).toBeCloseTo(exact, 9);
    }
  });

  it('has its top at the slip of pull-out and no torque at no slip', () => {
    const top = { breakdownTorqueNm: 80, breakdownSlipRatio: 0.25 };
    expect(klossTorque({ ...top, slipRatio: 0.25 })).toBe(80);
    expect(klossTorque({ ...top, slipRatio: 0.25, statorToRotorRatio: 1.2 })).toBeCloseTo(80, 12);
    expect(klossTorque({ ...top, slipRatio: 0 })).toBe(0);
    expect(() => klossTorque({ ...top, breakdownSlipRatio: 0, slipRatio: 1 })).toThrow(/breakdownSlipRatio/);
  });
});

describe('klossBreakdownSlip', () => {
  it('finds the top from a point on either side of it', () => {
    const top = { breakdownTorqueNm: 90, breakdownSlipRatio: 0.3 };
    for (const slipRatio of [0.02, 0.29, 0.31, 1]) {
      const breakdownTorqueRatio = 90 / klossTorque({ ...top, slipRatio });
      const found = klossBreakdownSlip({ breakdownTorqueRatio, slipRatio, isRunning: slipRatio < 0.3 });
      expect(found).toBeCloseTo(0.3, 9);
    }
    expect(() => klossBreakdownSlip({ breakdownTorqueRatio: 0.9, slipRatio: 1, isRunning: false })).toThrow(
      /breakdownTorqueRatio/,
    );
  });
});

describe('torqueFromStartingCurrent', () => {
  it('keeps to the Kloss curve that it finds', () => {
    const found = torqueFromStartingCurrent({ startingCurrentRatio: 6, ratedSlipRatio: 0.05 });
    const torqueAt = (slipRatio: number) =>
      klossTorque({
        breakdownTorqueNm: found.breakdownTorqueRatio,
        breakdownSlipRatio: found.breakdownSlipRatio,
        slipRatio,
      });
    expect(torqueAt(0.05)).toBeCloseTo(1, 9);
    expect(torqueAt(1)).toBeCloseTo(found.startingTorqueRatio, 9);
  });

  it('refuses a current that this slip cannot lead to', () => {
    const steep = { startingCurrentRatio: 6, ratedSlipRatio: 0.2 };
    expect(() => torqueFromStartingCurrent(steep)).toThrow(/ratedSlipRatio: .* < 0.1666/);
  });
});
