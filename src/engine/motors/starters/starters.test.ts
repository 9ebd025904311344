import { describe, expect, it } from 'vitest';
import { scaledUnit } from '../../../../tests/support/scaled-unit.ts';
import { settledHeat } from '../../inverter/index.ts';
import { inverterSource, stiffSource } from '../run-up/inverter-source.ts';
import { runUp } from '../run-up/run-up.ts';
import { singlePhaseRunUpMachine } from '../run-up/single-phase-run-up-machine.ts';
import { threePhaseRunUpMachine } from '../run-up/three-phase-run-up-machine.ts';
import { constantLoad, freeLoad, quadraticLoad } from '../shaft-loads/index.ts';
import { exampleSinglePhaseMotor, singlePhaseMotorState } from '../single-phase/index.ts';
import { exampleCircuit, lockedRotor } from '../three-phase/index.ts';
import { converterRunUp } from './converter-run-up.ts';
import { hardStartKit } from './hard-start-kit.ts';
import { harmonicsOfCut } from './harmonics-of-cut.ts';
import { phaseCutWave } from './phase-cut-wave.ts';
import { rectifierInput, singlePhaseRectifier, threePhaseRectifier } from './rectifier-input.ts';
import { softStarter } from './soft-starter.ts';
import type { Starter } from './starter.ts';
import {
  autotransformerStarter,
  directStarter,
  seriesStarter,
  starDeltaStarter,
} from './stepped-starters.ts';

const machine = threePhaseRunUpMachine(exampleCircuit);
const stiff = stiffSource({ nominalV: 230, frequencyHz: 50 });
const field = 50 * Math.PI;
const fan = (inertiaKgM2: number) =>
  quadraticLoad({ ratedTorqueNm: 30, ratedSpeedRadPerS: 150, standstillTorqueNm: 3, inertiaKgM2 });
const startWith = (starter: Starter, load = fan(0.5)) =>
  runUp({ machine, motorInertiaKgM2: 0.02, load, source: stiff, starter, sampleEveryS: 0.001, untilS: 100 });
const locked = lockedRotor({ circuit: exampleCircuit, lineVoltageV: 230 * Math.sqrt(3), frequencyHz: 50 });

describe('stepped starters', () => {
  it('star-delta: a third in star, no current in the gap, full current after it', () => {
    const run = startWith(starDeltaStarter({ switchOver: { atSpeedRatio: 0.8 }, gapS: 0.02 }));
    const { motorA = new Float64Array(), speedRadPerS = [], motorTorqueNm = [] } = run.samples ?? {};
    expect(motorA[0]).toBeCloseTo(locked.lineCurrentA / 3, 9);
    expect(motorTorqueNm[0]).toBeCloseTo(locked.torqueNm / 3, 9);
    const gap = motorA.indexOf(0);
    expect(speedRadPerS[gap - 1]).toBeLessThanOrEqual(0.8 * field);
    expect(speedRadPerS[gap]).toBeCloseTo(0.8 * field, 0);
    expect(motorA.filter((current: number) => current === 0).length).toBe(20);
    // Without torque the fan slows down in the gap.
    expect(speedRadPerS[gap + 19]).toBeLessThan(speedRadPerS[gap] ?? 0);
    expect(run.outcome).toBe('started');
  });

  it('star-delta by time changes over at that time exactly', () => {
    const run = startWith(starDeltaStarter({ switchOver: { afterS: 0.5 }, gapS: 0 }));
    const { motorA = [] } = run.samples ?? {};
    expect((motorA[502] ?? 0) / (motorA[498] ?? 1)).toBeCloseTo(3, 1);
  });

  it('a star that never reaches its speed stalls in star', () => {
    const load = constantLoad({ torqueNm: 45, inertiaKgM2: 0.5 });
    const run = startWith(starDeltaStarter({ switchOver: { atSpeedRatio: 0.9 } }), load);
    expect(run.outcome).toBe('stalled');
    expect(startWith(starDeltaStarter({ switchOver: { atSpeedRatio: 0.9, afterS: 3 } }), load).outcome).toBe(
      'started',
    );
  });

  it('an autotransformer takes the square of its tap from the line, the tap itself through the motor', () => {
    const run = startWith(autotransformerStarter({ tapRatio: 0.6, switchOver: { afterS: 2 } }));
    expect(run.samples?.motorA[0]).toBeCloseTo(0.6 * locked.lineCurrentA, 9);
    expect(run.samples?.outputA[0]).toBeCloseTo(0.36 * locked.lineCurrentA, 9);
    expect(run.samples?.motorTorqueNm[0]).toBeCloseTo(0.36 * locked.torqueNm, 9);
  });

  it('a series choke divides the voltage with the motor, less so as it speeds up', () => {
    const starter = seriesStarter({ resistanceOhm: 0, reactanceOhm: 2, switchOver: { atSpeedRatio: 0.95 } });
    const { motorA = [], motorTorqueNm = [] } = startWith(starter).samples ?? {};
    const z = 230 / locked.lineCurrentA;
    const cos = locked.powerFactor;
    const share = z / Math.hypot(z * cos, z * Math.sqrt(1 - cos ** 2) + 2);
    expect(motorA[0]).toBeCloseTo(share * locked.lineCurrentA, 6);
    expect(motorTorqueNm[0]).toBeCloseTo(share ** 2 * locked.torqueNm, 6);
  });

  it('refuse what cannot be', () => {
    expect(() => starDeltaStarter({ switchOver: {} })).toThrow('switchOver');
    expect(() => starDeltaStarter({ switchOver: { atSpeedRatio: 1 } })).toThrow('atSpeedRatio');
    expect(() => starDeltaStarter({ switchOver: { afterS: -1 } })).toThrow('afterS');
    expect(() => autotransformerStarter({ tapRatio: 1.2, switchOver: { afterS: 1 } })).toThrow('tapRatio');
    expect(() => softStarter({ startVoltageRatio: 0, rampS: 1 })).toThrow('startVoltageRatio');
  });
});

describe('phaseCutWave', () => {
  it('on a resistor is the textbook’s half sine', () => {
    // By hand, fired at 90°: r.m.s. √½; fundamental √(½² + 1/π²) = 0.5927 behind by atan(2/π) = 32.48°.
    const wave = phaseCutWave({ firingDeg: 90, loadAngleDeg: 0 });
    expect(wave.voltageRmsRatio).toBeCloseTo(Math.SQRT1_2, 9);
    expect(wave.currentRmsRatio).toBeCloseTo(Math.SQRT1_2, 6);
    expect(wave.voltageFundamentalRatio).toBeCloseTo(Math.hypot(0.5, 1 / Math.PI), 9);
    expect(wave.lagDeg).toBeCloseTo((Math.atan(2 / Math.PI) * 180) / Math.PI, 6);
    expect(wave.harmonicRatio).toBeCloseTo(Math.sqrt(0.5 / (0.25 + 1 / Math.PI ** 2) - 1), 5);
  });

  it('cuts nothing before the load’s angle, and everything at 180°', () => {
    expect(phaseCutWave({ firingDeg: 40, loadAngleDeg: 60 })).toMatchObject({
      conductionDeg: 180,
      harmonicRatio: 0,
    });
    expect(phaseCutWave({ firingDeg: 179.9, loadAngleDeg: 60 }).currentRmsRatio).toBeLessThan(1e-3);
  });

  it('on an inductance alone conducts evenly about the voltage’s passage through nought', () => {
    const wave = phaseCutWave({ firingDeg: 120, loadAngleDeg: 89.999 });
    expect(wave.conductionDeg).toBeCloseTo(2 * (180 - 120), 1);
  });

  it('keeps the power: what the line gives the load’s resistance takes', () => {
    for (const [firingDeg, loadAngleDeg] of [
      [80, 40],
      [110, 65],
      [140, 30],
    ] as const) {
      const wave = phaseCutWave({ firingDeg, loadAngleDeg });
      const line = wave.voltageFundamentalRatio * Math.cos((wave.lagDeg * Math.PI) / 180);
      const load = wave.currentRmsRatio ** 2 * Math.cos((loadAngleDeg * Math.PI) / 180);
      expect(line).toBeCloseTo(load, 6);
      // The run-up's approximation leaves the harmonics' heat out.
      const simple = wave.voltageFundamentalRatio ** 2 * Math.cos((loadAngleDeg * Math.PI) / 180);
      expect(load / simple - 1).toBeCloseTo(wave.harmonicRatio ** 2, 6);
    }
  });

  it('is met by the table that the run-up reads', () => {
    for (const [firingDeg, loadAngleDeg] of [
      [85, 40],
      [100, 63],
      [120, 52],
    ] as const) {
      const wave = phaseCutWave({ firingDeg, loadAngleDeg });
      const read = harmonicsOfCut(wave.voltageFundamentalRatio, loadAngleDeg);
      expect(Math.abs(read - wave.harmonicRatio)).toBeLessThan(0.03);
    }
    expect(harmonicsOfCut(1, 45)).toBe(0);
  });
});

describe('a soft starter', () => {
  it('halves the current for a quarter of the torque, and distorts it', () => {
    const run = startWith(softStarter({ startVoltageRatio: 0.5, rampS: 5 }));
    const current = run.samples?.motorA[0] ?? 0;
    expect(run.samples?.motorTorqueNm[0]).toBeCloseTo(0.25 * locked.torqueNm, 6);
    expect(current).toBeGreaterThan(0.5 * locked.lineCurrentA);
    expect(current).toBeLessThan(0.6 * locked.lineCurrentA);
  });

  it('waits until its voltage is enough for the load', () => {
    const load = constantLoad({ torqueNm: 0.49 * locked.torqueNm, inertiaKgM2: 0.2 });
    const { speedRadPerS = [] } =
      startWith(softStarter({ startVoltageRatio: 0.4, rampS: 6 }), load).samples ?? {};
    // By hand: u² = 0.49 at u = 0.7, half-way up the ramp.
    expect(speedRadPerS[2999]).toBe(0);
    expect(speedRadPerS[3050]).toBeGreaterThan(0);
  });

  it('stretches a start beyond what the inverter carries, where a direct start succeeds', () => {
    const model = scaledUnit(3);
    const source = inverterSource({ model, ambientC: 40, heat: settledHeat(model, 0.6 * model.continuousA) });
    const load = constantLoad({ torqueNm: 60, inertiaKgM2: 6 });
    const start = (starter: Starter) =>
      runUp({ machine, motorInertiaKgM2: 0.02, load, source, starter, untilS: 200 });
    const direct = start(directStarter);
    const soft = start(softStarter({ startVoltageRatio: 0.4, rampS: 60 }));
    expect(direct.outcome).toBe('started');
    expect(soft.outcome).toBe('tripped-by-heat');
    expect(soft.endS).toBeGreaterThan(direct.runUpTimeS ?? 0);
    // Its current was lower all the same.
    expect(soft.peakMotorA).toBeLessThan(0.95 * direct.peakMotorA);
  });
});

describe('a frequency converter', () => {
  const common = {
    machine,
    motorInertiaKgM2: 0.02,
    motorPhaseV: 230,
    nominalHz: 50,
    rampS: 10,
    motorLimitA: 18,
  };

  it('makes a small unit enough, where a direct start and a soft starter fail', () => {
    const source = inverterSource({ model: scaledUnit(1), ambientC: 25 });
    const load = fan(1);
    const start = (starter: Starter) => runUp({ machine, motorInertiaKgM2: 0.02, load, source, starter });
    expect(start(directStarter).outcome).toBe('tripped-by-cycle-counter');
    expect(start(softStarter({ startVoltageRatio: 0.4, rampS: 10 })).outcome).toBe(
      'tripped-by-cycle-counter',
    );
    const converter = converterRunUp({ ...common, load, source, input: threePhaseRectifier });
    expect(converter.outcome).toBe('started');
    expect(converter.minimumVoltageRatio).toBe(1);
    expect(converter.peakMotorA).toBeLessThan(locked.lineCurrentA / 4);
    expect(converter.peakInstantA).toBeLessThan(converter.instantLimitA);
  });

  it('draws at the end what the shaft’s power says', () => {
    const load = fan(1);
    const slow = converterRunUp({ ...common, rampS: 1000, load, source: stiff, input: threePhaseRectifier });
    // Shaft about 33 N·m at 157 rad/s; the motor's own losses 10 to 25 %.
    const shaftA = (load.torqueNm(field) * field) / (0.96 * 0.9 * 3 * 230);
    expect(slow.peakInputA / shaftA).toBeGreaterThan(1.1);
    expect(slow.peakInputA / shaftA).toBeLessThan(1.25);
  });

  it('says what was too weak', () => {
    const load = constantLoad({ torqueNm: 60, inertiaKgM2: 1 });
    const source = stiff;
    const input = threePhaseRectifier;
    expect(converterRunUp({ ...common, load, source, input }).reason).toBe('converter-limit');
    const heavy = constantLoad({ torqueNm: 500, inertiaKgM2: 1 });
    expect(converterRunUp({ ...common, load: heavy, source, input }).reason).toBe('motor-too-weak');
    const tiny = inverterSource({ model: scaledUnit(0.2), ambientC: 25 });
    expect(converterRunUp({ ...common, load: fan(1), source: tiny, input }).outcome).toBe(
      'tripped-by-cycle-counter',
    );
    const hot = inverterSource({ model: scaledUnit(0.5), ambientC: 80 });
    expect(converterRunUp({ ...common, rampS: 600, load: fan(1), source: hot, input }).outcome).toBe(
      'tripped-by-heat',
    );
  });

  it('pays its reservoir with a high crest', () => {
    // By hand: 1500/0.95/0.65/230 = 10.56 A, times 2.5.
    const drawn = rectifierInput({ input: singlePhaseRectifier, outputPowerW: 1500, voltageV: 230 });
    expect(drawn.currentA).toBeCloseTo(10.562, 3);
    expect(drawn.peakA).toBeCloseTo(26.404, 3);
    expect(drawn.inputPowerW).toBeCloseTo(1578.95, 2);
  });
});

describe('a single-phase motor', () => {
  const load = constantLoad({ torqueNm: 1, inertiaKgM2: 0.01 });
  const start = (motor: Parameters<typeof singlePhaseRunUpMachine>[0], more = load) =>
    runUp({
      machine: singlePhaseRunUpMachine(motor),
      motorInertiaKgM2: 0.005,
      load: more,
      source: stiff,
      sampleEveryS: 0.001,
      untilS: 20,
    });

  it('runs up with its auxiliary winding and drops it at the switch’s speed', () => {
    const motor = exampleSinglePhaseMotor('capacitor-start');
    const run = start(motor);
    expect(run.outcome).toBe('started');
    const atRest = singlePhaseMotorState(motor, { voltageV: 230, slipRatio: 1 });
    expect(run.samples?.motorA[0]).toBeCloseTo(atRest.currentA, 9);
    expect(run.samples?.motorTorqueNm[0]).toBeCloseTo(atRest.torqueNm, 9);
    const running = singlePhaseMotorState(motor, {
      voltageV: 230,
      slipRatio: 1 - run.endSpeedRadPerS / ((2 * Math.PI * 50) / motor.circuit.polePairs),
      wasSwitchOpen: true,
    });
    expect(running.shaftTorqueNm).toBeCloseTo(1, 3);
  });

  it('starts harder with a hard-start kit', () => {
    const motor = exampleSinglePhaseMotor('permanent-capacitor');
    const kit = hardStartKit(motor, { capacitanceF: 60e-6 });
    const before = start(motor, freeLoad({ inertiaKgM2: 0.01 }));
    const after = start(kit, freeLoad({ inertiaKgM2: 0.01 }));
    expect(after.samples?.motorTorqueNm[0]).toBeGreaterThan(1.3 * (before.samples?.motorTorqueNm[0] ?? 0));
    expect(after.runUpTimeS).toBeLessThan(before.runUpTimeS ?? 0);
    expect(after.endSpeedRadPerS).toBeCloseTo(before.endSpeedRadPerS, 2);
    expect(() => hardStartKit(exampleSinglePhaseMotor('split-phase'), { capacitanceF: 1e-4 })).toThrow(
      'motor.kind',
    );
  });
});
