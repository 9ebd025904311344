import { describe, expect, it } from 'vitest';
import { scaledUnit } from '../../../../tests/support/scaled-unit.ts';
import { runUpByWalking } from '../../../../tests/support/stepwise-run-up.ts';
import { noLoad, timeToStop, voltageUnderLimit } from '../../inverter/index.ts';
import { constantLoad, freeLoad, quadraticLoad } from '../shaft-loads/index.ts';
import { softStarter } from '../starters/index.ts';
import { exampleCircuit, lockedRotor, machineAdmittance, machineState } from '../three-phase/index.ts';
import { inverterSource, stiffSource } from './inverter-source.ts';
import { runUp } from './run-up.ts';
import { emptyAnswer } from './run-up-machine.ts';
import type { RunUpSetup } from './run-up-types.ts';
import { threePhaseRunUpMachine } from './three-phase-run-up-machine.ts';

const machine = threePhaseRunUpMachine(exampleCircuit);
const nominalV = 230;
const fan = (inertiaKgM2: number) =>
  quadraticLoad({ ratedTorqueNm: 30, ratedSpeedRadPerS: 150, standstillTorqueNm: 3, inertiaKgM2 });
const unit = (factor: number) => inverterSource({ model: scaledUnit(factor), ambientC: 25 });
const run = (changed: Partial<RunUpSetup> = {}) =>
  runUp({ machine, motorInertiaKgM2: 0.02, load: fan(0.2), source: unit(3), ...changed });
const others = {
  impedance: { realW: 900, reactiveVar: 100 },
  current: { realW: 400, reactiveVar: -50 },
  power: { realW: 600, reactiveVar: 200 },
};

describe('the machine of a run-up', () => {
  it('answers as the equivalent circuit does, at any slip and frequency', () => {
    const answer = emptyAnswer();
    for (const circuit of [exampleCircuit, { ...exampleCircuit, connection: 'star' as const }]) {
      for (const slipRatio of [1.2, 1, 0.5, 0.03, 0, -0.02]) {
        for (const frequencyHz of [50, 20]) {
          threePhaseRunUpMachine(circuit).answer(slipRatio, frequencyHz, false, answer);
          const lineVoltageV = 230 * Math.sqrt(3);
          const state = machineState({ circuit, lineVoltageV, frequencyHz, slipRatio });
          const admittance = machineAdmittance({ circuit, frequencyHz, slipRatio });
          expect(answer.conductanceS).toBeCloseTo(admittance.re, 12);
          expect(answer.susceptanceS).toBeCloseTo(admittance.im, 12);
          expect(answer.torqueNmPerV2 * 230 ** 2).toBeCloseTo(state.electromagneticTorqueNm, 8);
          expect(answer.rotorLossWPerV2 * 230 ** 2).toBeCloseTo(state.rotorLossW, 8);
        }
      }
    }
  });
});

describe('runUp against small fixed steps', () => {
  it.each([
    ['a stiff supply', Number.POSITIVE_INFINITY, noLoad],
    ['a limit', 60, noLoad],
    ['a limit with loads of all three kinds beside', 70, others],
  ])('agrees to a millionth on %s', (_, limitA, beside) => {
    const source = { nominalV, frequencyHz: 50, limitA, others: beside };
    const load = fan(0.2);
    const found = run({ source, load, sampleEveryS: 0.01, untilS: 1.2, toleranceRatio: 1e-10 });
    const walked = runUpByWalking({
      circuit: exampleCircuit,
      inertiaKgM2: 0.22,
      torqueNm: load.torqueNm,
      nominalV,
      frequencyHz: 50,
      limitA: Math.min(limitA, 1e9),
      others: beside,
      stepS: 1e-4,
      stepsPerSample: 100,
      samples: 120,
    });
    const { speedRadPerS = [], voltageV = [] } = found.samples ?? {};
    expect(speedRadPerS.length).toBeGreaterThan(40);
    for (let n = 0; n < speedRadPerS.length; n++) {
      expect(Math.abs((speedRadPerS[n] ?? 0) - (walked.speeds[n] ?? 0))).toBeLessThan(1e-6 * 157);
      expect(Math.abs((voltageV[n] ?? 0) - (walked.volts[n] ?? 0))).toBeLessThan(1e-4 * nominalV);
    }
  });

  it('keeps to a thousandth of a radian per second as it is normally used', () => {
    const at = (toleranceRatio: number) =>
      run({ sampleEveryS: 0.001, source: unit(2.6), toleranceRatio }).samples?.speedRadPerS ?? [];
    const [usual, fine] = [at(1e-7), at(1e-11)];
    for (let n = 0; n < Math.min(usual.length, fine.length); n++) {
      expect(Math.abs((usual[n] ?? 0) - (fine[n] ?? 0))).toBeLessThan(1e-3);
    }
  });
});

describe('the voltage while the limit acts', () => {
  it('is limit over admittance: the motor is an impedance, not a current', () => {
    const { lineCurrentA } = lockedRotor({
      circuit: exampleCircuit,
      lineVoltageV: nominalV * Math.sqrt(3),
      frequencyHz: 50,
    });
    const source = { ...stiffSource({ nominalV, frequencyHz: 50 }), limitA: lineCurrentA / 1.1 };
    const found = run({ source });
    // 10 % too much current: 9.1 % less voltage, not 10 %.
    expect(found.minimumVoltageRatio).toBeCloseTo(1 / 1.1, 10);
    expect(found.minimumVoltageV).toBeCloseTo(nominalV / 1.1, 8);
    expect(found.peakOutputA).toBeCloseTo(lineCurrentA / 1.1, 8);
    expect(found.peakMotorA).toBeCloseTo(lineCurrentA / 1.1, 8);
  });

  it('is that of the inverter’s own calculation with other loads beside', () => {
    const source = { nominalV, frequencyHz: 50, limitA: 70, others };
    const found = run({ source });
    const { re, im } = machineAdmittance({ circuit: exampleCircuit, frequencyHz: 50, slipRatio: 1 });
    const impedance = {
      realW: others.impedance.realW + nominalV ** 2 * re,
      reactiveVar: others.impedance.reactiveVar - nominalV ** 2 * im,
    };
    const { voltageRatio } = voltageUnderLimit({ load: { ...others, impedance }, nominalV, limitA: 70 });
    expect(found.minimumVoltageRatio).toBeCloseTo(voltageRatio, 10);
  });

  it('counts a constant-current share beside the motor as a phasor', () => {
    const beside = { ...noLoad, current: { realW: 2000, reactiveVar: 300 } };
    const found = run({ source: { nominalV, frequencyHz: 50, limitA: 60, others: beside } });
    const { re, im } = machineAdmittance({ circuit: exampleCircuit, frequencyHz: 50, slipRatio: 1 });
    const v = found.minimumVoltageRatio;
    const amps = Math.hypot(nominalV * re * v + 2000 / nominalV, -nominalV * im * v + 300 / nominalV);
    expect(amps).toBeCloseTo(60, 8);
  });

  it('gives way the moment a rising soft start reaches the limit, never above it', () => {
    const starter = softStarter({ startVoltageRatio: 0.4, rampS: 3 });
    const load = constantLoad({ torqueNm: 200, inertiaKgM2: 1 });
    const source = { ...stiffSource({ nominalV, frequencyHz: 50 }), limitA: 60 };
    const found = run({ source, load, starter, untilS: 3, sampleEveryS: 0.01 });
    expect(found.peakOutputA).toBeLessThanOrEqual(60 * (1 + 1e-9));
    expect(Math.max(...(found.samples?.outputA ?? []))).toBeLessThanOrEqual(60 * (1 + 1e-9));
    expect(found.minimumVoltageRatio).toBeLessThan(0.75);
  });

  it('is full again just when the demand has fallen to the limit', () => {
    const limitA = 60;
    const source = { nominalV, frequencyHz: 50, limitA, others: noLoad };
    const { limitEndsS } = run({ source, toleranceRatio: 1e-11 });
    const there = run({ source, toleranceRatio: 1e-11, untilS: limitEndsS ?? Number.NaN });
    const slipRatio = 1 - there.endSpeedRadPerS / (50 * Math.PI);
    const { re, im } = machineAdmittance({ circuit: exampleCircuit, frequencyHz: 50, slipRatio });
    expect((nominalV * Math.hypot(re, im)) / limitA).toBeCloseTo(1, 9);
  });

  it('is nought when the other loads leave no voltage, and the counter ends it', () => {
    const power = { realW: 16_000, reactiveVar: 0 };
    const found = run({ source: { ...unit(3), others: { ...noLoad, power } } });
    expect(found).toMatchObject({
      outcome: 'tripped-by-cycle-counter',
      minimumVoltageRatio: 0,
      endSpeedRadPerS: 0,
    });
    expect(found.peakOutputA).toBeCloseTo(75, 9);
  });
});

describe('how a run-up ends', () => {
  it('at speed, when all goes well', () => {
    const found = run();
    expect(found.outcome).toBe('started');
    expect(found.reason).toEqual({ kind: 'at-speed' });
    const speed = found.runningSpeedRadPerS ?? 0;
    expect(found.endSpeedRadPerS).toBeCloseTo(speed, 3);
    // There the motor's torque is that of the load.
    const slipRatio = 1 - speed / (50 * Math.PI);
    const lineVoltageV = nominalV * Math.sqrt(3);
    const state = machineState({ circuit: exampleCircuit, lineVoltageV, frequencyHz: 50, slipRatio });
    expect(state.shaftTorqueNm).toBeCloseTo(fan(0).torqueNm(speed), 6);
    expect(run({ untilS: found.runUpTimeS ?? 0 }).endSpeedRadPerS).toBeCloseTo(0.98 * speed, 4);
  });

  it('by the cycle counter, just after its cycles; saved when the voltage comes back before', () => {
    const tripped = run({ source: unit(2.5), load: fan(2) });
    expect(tripped.outcome).toBe('tripped-by-cycle-counter');
    expect(tripped.endS).toBe(0.5);
    expect(tripped.voltageLostCycles).toBe(25);
    expect(tripped.runUpTimeS).toBeNull();
    expect(tripped.reason).toMatchObject({ kind: 'voltage-not-held', cycles: 25 });
    const saved = run({ source: unit(2.5), load: fan(0.2) });
    expect(saved.outcome).toBe('started');
    expect(saved.voltageLostCycles).toBeGreaterThan(10);
    expect(saved.voltageLostCycles).toBeLessThan(25);
    expect(saved.limitEndsS).toBeGreaterThan(saved.voltageLostS);
  });

  it('by heat, at the time the inverter’s own curve gives for a current that hardly changes', () => {
    // 100 N·m against 108.8 N·m at standstill, a huge flywheel: the motor hardly turns.
    const load = constantLoad({ torqueNm: 100, inertiaKgM2: 300 });
    const found = run({ load, source: unit(3.5), untilS: 600 });
    expect(found.outcome).toBe('tripped-by-heat');
    expect(found.reason).toEqual({ kind: 'too-hot', allowedHeatRatio: 1 });
    const model = scaledUnit(3.5);
    const { timeS } = timeToStop({ model, currentA: found.peakOutputA, ambientC: 25 });
    expect(Math.abs(found.endS / (timeS ?? 0) - 1)).toBeLessThan(0.01);
    expect(found.heatStopS).toBe(found.endS);
    expect((found.heatEnd?.fast ?? 0) + (found.heatEnd?.slow ?? 0)).toBeCloseTo(1, 9);
  });

  it('by heat at once, where the air leaves no room', () => {
    const source = inverterSource({ model: scaledUnit(3), ambientC: 98 });
    expect(run({ source })).toMatchObject({ outcome: 'tripped-by-heat', endS: 0, runUpTimeS: null });
  });

  it('stalled where it stands, when the load is stronger from the beginning', () => {
    const found = run({ load: constantLoad({ torqueNm: 120, inertiaKgM2: 0.2 }), source: unit(4) });
    expect(found.outcome).toBe('stalled');
    expect(found.reason).toMatchObject({ kind: 'torque-too-small', neverMoved: true, loadTorqueNm: 120 });
    expect(found.endSpeedRadPerS).toBe(0);
    // Locked, it heats on: the inverter's own inverse-time curve says how long.
    const { timeS } = timeToStop({ model: scaledUnit(4), currentA: found.peakOutputA, ambientC: 25 });
    expect(found.heatStopS).toBeCloseTo(timeS ?? 0, 6);
  });

  it('stalled half-way, where the load catches up with the motor', () => {
    const load = quadraticLoad({ ratedTorqueNm: 400, ratedSpeedRadPerS: 150, inertiaKgM2: 0.2 });
    const crawling = run({ load, source: stiffSource({ nominalV, frequencyHz: 50 }) });
    expect(crawling.outcome).toBe('stalled');
    expect(crawling.runningSpeedRadPerS).toBeNull();
    expect(load.torqueNm(crawling.endSpeedRadPerS)).toBeGreaterThan(100);
    const torqueNm = (speed: number): number => 10 + 140 * Math.exp(-(((speed - 75) / 10) ** 2));
    const bump = { inertiaKgM2: 0.2, torqueNm };
    const caught = run({ load: bump, source: stiffSource({ nominalV, frequencyHz: 50 }) });
    expect(caught.outcome).toBe('stalled');
    expect(caught.reason).toMatchObject({ neverMoved: false });
    expect(caught.endSpeedRadPerS).toBeGreaterThan(55);
    expect(caught.endSpeedRadPerS).toBeLessThan(90);
  });

  it('out of time', () => {
    const found = run({ load: fan(50), source: unit(4), untilS: 1 });
    expect(found.outcome).toBe('stalled');
    expect(found.reason).toEqual({ kind: 'out-of-time', untilS: 1 });
    expect(found.endS).toBe(1);
  });
});

describe('samples', () => {
  it('are evenly spaced from standstill to the end', () => {
    const found = run({ sampleEveryS: 0.01 });
    const { speedRadPerS, heatRatio, voltageV } = found.samples ?? {};
    expect(speedRadPerS?.length).toBe(Math.floor(found.endS / 0.01) + 1);
    expect(speedRadPerS?.[0]).toBe(0);
    expect(speedRadPerS?.at(-1)).toBeCloseTo(found.endSpeedRadPerS, 1);
    expect(heatRatio?.at(-1)).toBeLessThanOrEqual(found.peakHeatRatio ?? 0);
    expect(heatRatio?.[0]).toBeCloseTo(20 / 240, 2);
    expect(voltageV?.at(-1)).toBe(nominalV);
    expect(run().samples).toBeNull();
  });
});

describe('impossible inputs', () => {
  it.each([
    ['motorInertiaKgM2', { motorInertiaKgM2: 0 }],
    ['load.inertiaKgM2', { load: { torqueNm: () => 0, inertiaKgM2: -1 } }],
    ['source.nominalV', { source: stiffSource({ nominalV: -1, frequencyHz: 50 }) }],
    ['source.limitA', { source: { ...stiffSource({ nominalV, frequencyHz: 50 }), limitA: 0 } }],
    ['untilS', { untilS: 0 }],
    ['sampleEveryS', { sampleEveryS: 0 }],
    ['toleranceRatio', { toleranceRatio: 0 }],
  ])('name %s', (field, changed) => {
    expect(() => run({ load: freeLoad({ inertiaKgM2: 0 }), ...changed })).toThrow(field);
  });
});
