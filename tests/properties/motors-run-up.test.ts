import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { noLoad } from '../../src/engine/inverter/index.ts';
import {
  autotransformerStarter,
  constantLoad,
  directStarter,
  type EquivalentCircuit,
  freeLoad,
  inverterSource,
  networkDip,
  phaseCutWave,
  quadraticLoad,
  type RunUp,
  runUp,
  type Starter,
  softStarter,
  starDeltaStarter,
  stiffSource,
  threePhaseRunUpMachine,
} from '../../src/engine/motors/index.ts';
import { scaledUnit } from '../support/scaled-unit.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const nominalV = 230;
const field = 50 * Math.PI;

/** Motors of a few kilowatts with everyday ratios between their constants; no friction. */
const circuit: fc.Arbitrary<EquivalentCircuit> = fc
  .record({
    baseOhm: between(8, 60),
    stator: between(0.02, 0.07),
    leakage: between(0.06, 0.12),
    shunt: between(1.5, 3.5),
    rotor: between(0.02, 0.06),
    deep: between(1, 1.8),
    connection: fc.constantFrom('star' as const, 'delta' as const),
  })
  .map(({ baseOhm, stator, leakage, shunt, rotor, deep, connection }) => ({
    connection,
    polePairs: 2,
    referenceFrequencyHz: 50,
    statorResistanceOhm: stator * baseOhm,
    statorReactanceOhm: leakage * baseOhm,
    magnetisingReactanceOhm: shunt * baseOhm,
    coreLossResistanceOhm: null,
    rotorResistanceOhm: rotor * baseOhm,
    rotorReactanceOhm: leakage * baseOhm,
    atStandstill: {
      rotorResistanceOhm: rotor * deep * baseOhm,
      rotorReactanceOhm: (leakage / deep ** 0.5) * baseOhm,
    },
  }));

const lockedA = (of: EquivalentCircuit): number =>
  runUp({
    machine: threePhaseRunUpMachine(of),
    motorInertiaKgM2: 1,
    load: constantLoad({ torqueNm: 1e9, inertiaKgM2: 0 }),
    source: stiffSource({ nominalV, frequencyHz: 50 }),
  }).peakMotorA;

const others = fc
  .record({ z: between(0, 0.1), i: between(0, 0.1), p: between(0, 0.1), q: between(-0.3, 0.6) })
  .map(({ z, i, p, q }) => {
    const share = (ratio: number) => ({ realW: ratio, reactiveVar: ratio * q });
    return { impedance: share(z), current: share(i), power: share(p) };
  });
const timesW = (load: typeof noLoad, baseW: number): typeof noLoad => {
  const scale = ({ realW, reactiveVar }: typeof noLoad.power) => ({
    realW: realW * baseW,
    reactiveVar: reactiveVar * baseW,
  });
  return { impedance: scale(load.impedance), current: scale(load.current), power: scale(load.power) };
};

const starter: fc.Arbitrary<Starter> = fc.oneof(
  fc.constant(directStarter),
  between(0.5, 3).map((afterS) => starDeltaStarter({ switchOver: { afterS } })),
  between(0.5, 0.9).map((tapRatio) => autotransformerStarter({ tapRatio, switchOver: { afterS: 2 } })),
  between(0.3, 0.8).map((startVoltageRatio) => softStarter({ startVoltageRatio, rampS: 4 })),
);

/** A fan that the motor could carry, in parts of a torque at standstill of V²/(ω·Z). */
const fanFor = (of: EquivalentCircuit, torqueRatio: number, inertiaKgM2: number) => {
  const torqueNm = (torqueRatio * 3 * nominalV * lockedA(of)) / field;
  return quadraticLoad({ ratedTorqueNm: torqueNm, ratedSpeedRadPerS: field, inertiaKgM2 });
};

const isSuccess = (run: RunUp): boolean => run.outcome === 'started';

describe('laws of the run-up', () => {
  it('an unloaded start leaves in the rotor what it puts into the flywheel', () => {
    fc.assert(
      fc.property(circuit, between(0.05, 2), between(0.4, 1.3), starter, (of, inertia, limit, by) => {
        const source = { ...stiffSource({ nominalV, frequencyHz: 50 }), limitA: limit * lockedA(of) };
        const load = freeLoad({ inertiaKgM2: inertia });
        const machine = threePhaseRunUpMachine(of);
        const run = runUp({ machine, motorInertiaKgM2: 0.01, load, source, starter: by, untilS: 500 });
        const end = run.endSpeedRadPerS;
        // By hand: ∫(ω_s − ω)·J·dω. At synchronous speed J·ω_s²/2; without slip left to go the gap adds no more.
        expect(run.rotorLossJ / ((inertia + 0.01) * end * (field - end / 2))).toBeCloseTo(1, 5);
        expect(end / field).toBeCloseTo(1, 3);
      }),
      { numRuns: 60 },
    );
  });

  it('a lower limit never shortens it: at every moment the motor turns no faster', () => {
    fc.assert(
      fc.property(
        circuit,
        others,
        starter,
        between(0.3, 1.2),
        between(0.3, 1.2),
        between(0.02, 0.12),
        (of, beside, by, one, other, torqueRatio) => {
          const base = lockedA(of);
          const load = fanFor(of, torqueRatio, 0.3);
          const at = (limit: number) =>
            runUp({
              machine: threePhaseRunUpMachine(of),
              motorInertiaKgM2: 0.02,
              load,
              source: {
                nominalV,
                frequencyHz: 50,
                limitA: limit * base,
                others: timesW(beside, base * nominalV),
              },
              starter: by,
              untilS: 10,
              sampleEveryS: 0.05,
            });
          const [low, high] = [at(Math.min(one, other)), at(Math.max(one, other))];
          const [slow = [], fast = []] = [low.samples?.speedRadPerS, high.samples?.speedRadPerS];
          for (let n = 0; n < Math.min(slow.length, fast.length); n++) {
            expect(slow[n] ?? 0).toBeLessThanOrEqual((fast[n] ?? 0) + 1e-3);
          }
          const haveSameGoal =
            Math.abs((low.runningSpeedRadPerS ?? 0) - (high.runningSpeedRadPerS ?? 0)) < 1e-6 * field;
          if (isSuccess(low) && isSuccess(high) && haveSameGoal) {
            expect(low.runUpTimeS ?? 0).toBeGreaterThanOrEqual((high.runUpTimeS ?? 0) - 1e-4);
          }
        },
      ),
      { numRuns: 80 },
    );
  });

  it('a bigger unit never turns a start into a failure', () => {
    fc.assert(
      fc.property(
        circuit,
        others,
        starter,
        between(0.3, 1.5),
        between(1, 2),
        between(0.02, 0.12),
        between(0.05, 3),
        (of, beside, by, size, more, torqueRatio, inertia) => {
          const base = lockedA(of);
          const load = fanFor(of, torqueRatio, inertia);
          const at = (factor: number) =>
            runUp({
              machine: threePhaseRunUpMachine(of),
              motorInertiaKgM2: 0.02,
              load,
              source: inverterSource({
                // 25 A is the limit of the unit that is scaled.
                model: scaledUnit((factor * base) / 25),
                ambientC: 35,
                others: timesW(beside, 0.5 * base * nominalV),
              }),
              starter: by,
              untilS: 60,
            });
          if (isSuccess(at(size))) expect(at(size * more).outcome).toBe('started');
        },
      ),
      { numRuns: 80 },
    );
  });

  it('torque goes with the square of the voltage, current with its first power', () => {
    fc.assert(
      fc.property(circuit, between(0.3, 1), (of, ratio) => {
        const at = (voltageV: number) =>
          runUp({
            machine: threePhaseRunUpMachine(of),
            motorInertiaKgM2: 0.1,
            load: freeLoad({ inertiaKgM2: 0 }),
            source: stiffSource({ nominalV: voltageV, frequencyHz: 50 }),
            sampleEveryS: 1,
          });
        const [full, part] = [at(nominalV), at(ratio * nominalV)];
        expect(part.peakMotorA / full.peakMotorA).toBeCloseTo(ratio, 9);
        const torque = (run: RunUp): number => run.samples?.motorTorqueNm[0] ?? Number.NaN;
        expect(torque(part) / torque(full)).toBeCloseTo(ratio ** 2, 9);
        // And so the time without load goes with its inverse square.
        expect(((part.runUpTimeS ?? 0) / (full.runUpTimeS ?? 1)) * ratio ** 2).toBeCloseTo(1, 4);
      }),
      { numRuns: 60 },
    );
  });
});

describe('laws beside it', () => {
  it('later firing lets less through', () => {
    fc.assert(
      fc.property(between(0, 85), between(0, 179), between(0, 179), (loadAngleDeg, one, other) => {
        const at = (firingDeg: number) => phaseCutWave({ firingDeg, loadAngleDeg });
        const [early, late] = [at(Math.min(one, other)), at(Math.max(one, other))];
        expect(late.voltageRmsRatio).toBeLessThanOrEqual(early.voltageRmsRatio + 1e-9);
        expect(late.currentRmsRatio).toBeLessThanOrEqual(early.currentRmsRatio + 1e-9);
        expect(late.voltageFundamentalRatio).toBeLessThanOrEqual(late.voltageRmsRatio + 1e-9);
      }),
    );
  });

  it('the dip of an impedance is smaller than that of a constant current, and below 1', () => {
    fc.assert(
      fc.property(between(1, 1e6), between(1, 1e6), (startVa, shortCircuitVa) => {
        const { constantCurrentRatio, constantImpedanceRatio } = networkDip({ startVa, shortCircuitVa });
        expect(constantImpedanceRatio).toBeLessThan(constantCurrentRatio);
        expect(constantImpedanceRatio).toBeLessThan(1);
        // 1/dip differs by one: S_sc/S and 1 + S_sc/S.
        expect(1 / constantImpedanceRatio - 1 / constantCurrentRatio).toBeCloseTo(1, 6);
      }),
    );
  });
});
