import { describe, expect, it } from 'vitest';
import { circuitFromTests } from './circuit-from-tests.ts';
import type { EquivalentCircuit } from './equivalent-circuit.ts';
import { machineState } from './machine-state.ts';

describe('circuitFromTests', () => {
  const readings = {
    polePairs: 2,
    frequencyHz: 50,
    statorResistanceOhm: 0.3,
    statorToRotorRatio: 1,
    noLoad: { lineVoltageV: 400, currentA: 6, inputPowerW: 400 },
    lockedRotor: { lineVoltageV: 90, currentA: 20, inputPowerW: 1200, frequencyHz: 50 },
  };

  it('gives back the reactances of a machine that was tested by calculation', () => {
    // Without iron loss the method is exact but for resistance in the shunt path, here made small.
    const known: EquivalentCircuit = {
      connection: 'star',
      polePairs: 2,
      referenceFrequencyHz: 50,
      statorResistanceOhm: 1e-4,
      statorReactanceOhm: 1.2,
      magnetisingReactanceOhm: 40,
      coreLossResistanceOhm: null,
      rotorResistanceOhm: 2e-4,
      rotorReactanceOhm: 2.4,
    };
    const test = (slipRatio: number, lineVoltageV: number) => {
      const { lineCurrentA, inputPowerW } = machineState({
        circuit: known,
        lineVoltageV,
        frequencyHz: 50,
        slipRatio,
      });
      return { lineVoltageV, currentA: lineCurrentA, inputPowerW };
    };
    const free = test(0, 400);
    const found = circuitFromTests({
      ...readings,
      statorResistanceOhm: 1e-4,
      statorToRotorRatio: 0.5,
      noLoad: { ...free, inputPowerW: free.inputPowerW + 1e-3 },
      lockedRotor: { ...test(1, 80), frequencyHz: 50 },
    });
    expect(found.statorReactanceOhm).toBeCloseTo(1.2, 6);
    expect(found.rotorReactanceOhm).toBeCloseTo(2.4, 6);
    expect(found.magnetisingReactanceOhm).toBeCloseTo(40, 5);
    expect(found.rotorResistanceOhm).toBeCloseTo(2e-4, 8);
    expect(found.rotationalLossW).toBeCloseTo(1e-3, 9);
  });

  it.each([
    [{ noLoad: { ...readings.noLoad, inputPowerW: 5000 } }, /noLoad.inputPowerW/],
    [{ noLoad: { ...readings.noLoad, inputPowerW: 10 } }, /noLoad.inputPowerW: .* ≥ 32/],
    [{ noLoad: { ...readings.noLoad, currentA: 0 } }, /noLoad.currentA/],
    [{ lockedRotor: { ...readings.lockedRotor, lineVoltageV: 1600 } }, /lockedRotor.lineVoltageV: expected/],
    [{ statorResistanceOhm: 2 }, /statorResistanceOhm: expected less/],
    [{ statorToRotorRatio: 0 }, /statorToRotorRatio/],
  ])('refuses %j', (wrong, message) => {
    expect(() => circuitFromTests({ ...readings, ...wrong })).toThrow(message);
  });
});
