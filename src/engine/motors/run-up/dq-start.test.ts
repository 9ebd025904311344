import { describe, expect, it } from 'vitest';
import { type KrauseName, krauseCircuit, krauseMachines } from '../../../../tests/support/run-up-machines.ts';
import { dqByWalking } from '../../../../tests/support/stepwise-run-up.ts';
import { freeLoad } from '../shaft-loads/index.ts';
import { exampleCircuit } from '../three-phase/index.ts';
import { dqStart } from './dq-start.ts';
import { stiffSource } from './inverter-source.ts';
import { runUp } from './run-up.ts';
import { threePhaseRunUpMachine } from './three-phase-run-up-machine.ts';

const start = (name: KrauseName, untilS: number, toleranceRatio = 1e-6) =>
  dqStart({
    circuit: krauseCircuit(name),
    motorInertiaKgM2: krauseMachines[name].inertiaKgM2,
    load: freeLoad({ inertiaKgM2: 0 }),
    lineVoltageV: krauseMachines[name].lineVoltageV,
    frequencyHz: 60,
    untilS,
    sampleEveryS: 0.001,
    toleranceRatio,
  });

describe('dqStart', () => {
  it('agrees to a millionth with small fixed steps in a frame that stands still', () => {
    for (const name of ['3 hp', '500 hp'] as const) {
      const { inertiaKgM2, lineVoltageV } = krauseMachines[name];
      const found = start(name, 0.5, 1e-10);
      const walked = dqByWalking({
        circuit: krauseCircuit(name),
        inertiaKgM2,
        lineVoltageV,
        frequencyHz: 60,
        stepS: 2e-5,
        stepsPerSample: 50,
        samples: 500,
      });
      const worst = (a: Float64Array, b: number[]): number =>
        Math.max(...Array.from(a, (value, n) => Math.abs(value - (b[n] ?? Number.NaN)))) /
        Math.max(...b.map(Math.abs));
      expect(found.speedRadPerS.length).toBe(501);
      expect(worst(found.speedRadPerS, walked.speeds)).toBeLessThan(1e-6);
      expect(worst(found.torqueNm, walked.torques)).toBeLessThan(1e-6);
      expect(worst(found.currentA, walked.phaseA)).toBeLessThan(1e-6);
    }
  });

  // Regression: figures calculated once by a separate program from the same constants, to the digits shown.
  it.each([
    ['3 hp', 132, 97, 0.334, 1],
    ['50 hp', 1654, 608, 0.508, 1],
    ['500 hp', 5066, 854, 1.388, 1831 / 1800],
    ['2250 hp', 26_006, 4622, 2.422, 1844 / 1800],
  ] as const)('%s peaks at %d N·m and %d A', (name, torqueNm, currentA, to95S, topRatio) => {
    const found = start(name, 3);
    expect(Math.abs(found.peakTorqueNm / torqueNm - 1)).toBeLessThan(5e-3);
    expect(Math.abs(found.peakCurrentA / currentA - 1)).toBeLessThan(5e-3);
    const field = 60 * Math.PI;
    const reached = found.speedRadPerS.findIndex((speed) => speed >= 0.95 * field) * 0.001;
    expect(Math.abs(reached - to95S)).toBeLessThan(0.0015);
    expect(Math.max(...found.speedRadPerS) / field).toBeCloseTo(topRatio, 3);
    // No sample lies above the peaks, one lies not far below.
    expect(Math.max(...found.torqueNm)).toBeLessThanOrEqual(found.peakTorqueNm * (1 + 1e-6));
    expect(Math.max(...found.currentA.map(Math.abs))).toBeLessThanOrEqual(found.peakCurrentA * (1 + 1e-6));
    expect(Math.max(...found.torqueNm)).toBeGreaterThan(found.peakTorqueNm * 0.97);
  });

  it('runs into the speed of the quasi-steady model, which has no peaks', () => {
    const load = { torqueNm: () => 20, inertiaKgM2: 0.5 };
    const circuit = { ...exampleCircuit, coreLossResistanceOhm: null };
    const { atStandstill, ...constant } = circuit;
    expect(atStandstill).toBeDefined();
    const found = dqStart({
      circuit: constant,
      motorInertiaKgM2: 0.02,
      load,
      lineVoltageV: 400,
      frequencyHz: 50,
      untilS: 3,
      sampleEveryS: 0.01,
    });
    const quasi = runUp({
      machine: threePhaseRunUpMachine(constant),
      motorInertiaKgM2: 0.02,
      load,
      source: stiffSource({ nominalV: 400 / Math.sqrt(3), frequencyHz: 50 }),
    });
    expect(found.speedRadPerS.at(-1)).toBeCloseTo(quasi.endSpeedRadPerS, 2);
    expect(found.peakCurrentA).toBeGreaterThan(1.4 * quasi.peakMotorA);
  });

  it('depends on the moment of switching on in its current, hardly in its torque', () => {
    const at = (switchOnDeg: number) =>
      dqStart({
        circuit: exampleCircuit,
        motorInertiaKgM2: 0.5,
        load: freeLoad({ inertiaKgM2: 0 }),
        lineVoltageV: 400,
        frequencyHz: 50,
        untilS: 0.1,
        sampleEveryS: 0.001,
        switchOnDeg,
      });
    const [peak, nought] = [at(0), at(90)];
    expect(nought.peakCurrentA).toBeGreaterThan(peak.peakCurrentA * 1.1);
    expect(nought.peakTorqueNm).toBeCloseTo(peak.peakTorqueNm, 1);
  });

  it('refuses a machine without flux, and no inertia', () => {
    const good = {
      circuit: exampleCircuit,
      motorInertiaKgM2: 0.5,
      load: freeLoad({ inertiaKgM2: 0 }),
      lineVoltageV: 400,
      frequencyHz: 50,
      untilS: 0.1,
      sampleEveryS: 0.001,
    };
    expect(() => dqStart({ ...good, motorInertiaKgM2: 0 })).toThrow('motorInertiaKgM2');
    expect(() => dqStart({ ...good, circuit: { ...exampleCircuit, magnetisingReactanceOhm: null } })).toThrow(
      'magnetisingReactanceOhm',
    );
  });
});
