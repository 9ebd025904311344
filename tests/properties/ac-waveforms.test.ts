import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  complexMagnitude,
  distortion,
  factorsOfSamples,
  harmonicOfSamples,
  neutralCurrent,
  rmsOfSamples,
  rmsOfSegments,
  threePhaseLoad,
  twoWattmeter,
  type WaveShape,
  waveformFactors,
} from '../../src/engine/ac/index.ts';
import { angleDeg, between, currentA, expectSame, voltageV } from '../support/ac-arbitraries.ts';

describe('threePhaseLoad', () => {
  it('keeps S = √3·V·I and draws three times as much in delta', () => {
    const impedance = fc.record({ re: between(0.1, 100), im: between(-100, 100) });
    fc.assert(
      fc.property(impedance, voltageV, (branch, lineVoltageV) => {
        const star = threePhaseLoad({ connection: 'star', impedance: branch, lineVoltageV });
        const delta = threePhaseLoad({ connection: 'delta', impedance: branch, lineVoltageV });
        for (const load of [star, delta]) {
          expectSame(load.apparentPowerVa, Math.sqrt(3) * lineVoltageV * load.lineCurrentA);
          expectSame(Math.hypot(load.realPowerW, load.reactivePowerVar), load.apparentPowerVa);
          expectSame(load.powerFactor, load.realPowerW / load.apparentPowerVa);
        }
        expectSame(delta.realPowerW, 3 * star.realPowerW);
        expectSame(delta.lineCurrentA, 3 * star.lineCurrentA);
      }),
    );
  });

  it('is read rightly by two wattmeters', () => {
    fc.assert(
      fc.property(voltageV, between(0.1, 100), between(-90, 90), (lineVoltageV, lineA, lagDeg) => {
        // Each meter's own definition: line-to-line voltage times line current times the cosine between them.
        const reading = (shiftDeg: number) =>
          lineVoltageV * lineA * Math.cos(((lagDeg + shiftDeg) * Math.PI) / 180);
        const readings = { firstW: reading(30), secondW: reading(-30) };
        fc.pre(readings.firstW + readings.secondW >= 0);
        const apparentPowerVa = Math.sqrt(3) * lineVoltageV * lineA;
        const found = twoWattmeter(readings);
        expectSame(found.apparentPowerVa, apparentPowerVa);
        expectSame(
          found.reactivePowerVar,
          apparentPowerVa * Math.sin((lagDeg * Math.PI) / 180),
          apparentPowerVa,
        );
      }),
    );
  });
});

describe('neutralCurrent', () => {
  const phase = fc.record({ currentA, lagDeg: angleDeg });

  it('is nought for a balanced load, save for orders divisible by three', () => {
    fc.assert(
      fc.property(phase, fc.integer({ min: 1, max: 50 }), (each, harmonicOrder) => {
        const found = neutralCurrent({ phases: [each, each, each], harmonicOrder }).currentA;
        expectSame(found, harmonicOrder % 3 === 0 ? 3 * each.currentA : 0, 3 * each.currentA);
      }),
    );
  });

  it('does not change when the phases are named anew in the same sequence', () => {
    fc.assert(
      fc.property(phase, phase, phase, fc.integer({ min: 1, max: 50 }), (a, b, c, harmonicOrder) => {
        const sizes = (
          [
            [a, b, c],
            [b, c, a],
            [c, a, b],
          ] as const
        ).map((phases) => neutralCurrent({ phases, harmonicOrder }).currentA);
        const scale = a.currentA + b.currentA + c.currentA;
        for (const size of sizes) expectSame(size, sizes[0] ?? Number.NaN, scale);
      }),
    );
  });

  it('does not change in any order of loads that do not shift the current', () => {
    fc.assert(
      fc.property(currentA, currentA, currentA, (a, b, c) => {
        const size = (x: number, y: number, z: number) =>
          neutralCurrent({ phases: [{ currentA: x }, { currentA: y }, { currentA: z }] }).currentA;
        for (const other of [size(b, a, c), size(a, c, b), size(c, b, a)])
          expectSame(other, size(a, b, c), a + b + c);
        // The neutral of in-phase loads never carries more than the largest of them.
        expect(size(a, b, c)).toBeLessThanOrEqual(Math.max(a, b, c) * (1 + 1e-12));
      }),
    );
  });
});

describe('r.m.s. values', () => {
  // Steps of a thousandth: squares of far smaller figures vanish, which is no matter of this law.
  const value = fc.integer({ min: -1_000_000, max: 1_000_000 }).map((steps) => steps / 1000);
  const segment = fc.record({ durationS: between(0.001, 1e5), from: value, to: value });
  const samples = fc.array(value, { minLength: 1, maxLength: 50 });

  it('of a cycle do not change when a segment is cut in two', () => {
    fc.assert(
      fc.property(
        fc.array(segment, { minLength: 1, maxLength: 6 }),
        fc.nat(),
        between(0, 1),
        (cycle, pick, share) => {
          const index = pick % cycle.length;
          const whole = cycle[index];
          if (!whole) return;
          const middle = whole.from + share * (whole.to - whole.from);
          const pieces = [
            { durationS: whole.durationS * share, from: whole.from, to: middle },
            { durationS: whole.durationS * (1 - share), from: middle, to: whole.to },
          ];
          expectSame(rmsOfSegments(cycle.toSpliced(index, 1, ...pieces)), rmsOfSegments(cycle));
        },
      ),
    );
  });

  it('of a cycle do not depend on the order or direction of its segments, and scale with its values', () => {
    fc.assert(
      fc.property(fc.array(segment, { minLength: 1, maxLength: 6 }), between(0.01, 100), (cycle, factor) => {
        const plain = rmsOfSegments(cycle);
        const reversed = cycle
          .toReversed()
          .map(({ durationS, from, to }) => ({ durationS, from: to, to: from }));
        expectSame(rmsOfSegments(reversed), plain);
        const scaled = cycle.map(({ durationS, from, to }) => ({
          durationS,
          from: from * factor,
          to: to * factor,
        }));
        expectSame(rmsOfSegments(scaled), plain * factor);
      }),
    );
  });

  it('of a cycle lie between its mean and its largest value', () => {
    fc.assert(
      fc.property(fc.array(segment, { minLength: 1, maxLength: 6 }), (cycle) => {
        const time = cycle.reduce((sum, { durationS }) => sum + durationS, 0);
        const mean =
          cycle.reduce((sum, { durationS, from, to }) => sum + (durationS * (from + to)) / 2, 0) / time;
        const peak = Math.max(...cycle.map(({ from, to }) => Math.max(Math.abs(from), Math.abs(to))));
        const rms = rmsOfSegments(cycle);
        expect(rms).toBeGreaterThanOrEqual(Math.abs(mean) * (1 - 1e-12));
        expect(rms).toBeLessThanOrEqual(peak * (1 + 1e-12));
      }),
    );
  });

  it('of samples are at least the size of their mean, with crest and form factor at least 1', () => {
    fc.assert(
      fc.property(samples, (list) => {
        fc.pre(list.some((sample) => Math.abs(sample) > 1e-6));
        const factors = factorsOfSamples(list);
        expect(factors.rms).toBeGreaterThanOrEqual(Math.abs(factors.mean) * (1 - 1e-12));
        expect(factors.crestFactor).toBeGreaterThanOrEqual(1 - 1e-12);
        expect(factors.formFactor).toBeGreaterThanOrEqual(1 - 1e-12);
        expectSame(factors.averagingMeterRatio * factors.formFactor, Math.PI / Math.sqrt(8));
      }),
    );
  });

  it('of samples are those of their parts: mean, fundamental and the rest', () => {
    fc.assert(
      fc.property(fc.array(value, { minLength: 9, maxLength: 9 }), (list) => {
        const mean = list.reduce((sum, sample) => sum + sample, 0) / 9;
        const parts = [1, 2, 3, 4].map((order) => complexMagnitude(harmonicOfSamples(list, order)));
        const total = rmsOfSamples(list);
        expectSame(Math.hypot(mean, ...parts), total);
        const [fundamental = 0] = parts;
        fc.pre(fundamental > 1e-3);
        const { thdRatio, distortionFactorRatio } = distortion({ fundamental, total });
        expectSame(distortionFactorRatio, 1 / Math.sqrt(1 + thdRatio ** 2));
      }),
    );
  });
});

describe('waveformFactors', () => {
  const shape: fc.Arbitrary<WaveShape> = fc.oneof(
    fc.record({
      kind: fc.constantFrom(
        'sine' as const,
        'square' as const,
        'triangle' as const,
        'half-wave' as const,
        'full-wave' as const,
      ),
    }),
    fc.record({ kind: fc.constant('pulse' as const), dutyRatio: between(0.001, 0.999) }),
    fc.record({ kind: fc.constant('truncated-cosine' as const), widthRatio: between(0.001, 1) }),
  );

  it('keep rms ≥ mean size, crest ≥ 1 and form ≥ 1, and blocking the mean takes its square off', () => {
    fc.assert(
      fc.property(shape, (wave) => {
        const plain = waveformFactors(wave);
        const coupled = waveformFactors(wave, { acCoupled: true });
        for (const { rms, mean, crestFactor, formFactor } of [plain, coupled]) {
          expect(rms).toBeGreaterThanOrEqual(Math.abs(mean));
          expect(crestFactor).toBeGreaterThanOrEqual(1 - 1e-12);
          expect(formFactor).toBeGreaterThanOrEqual(1 - 1e-12);
        }
        expect(coupled.mean).toBe(0);
        expectSame(coupled.rms ** 2 + plain.mean ** 2, plain.rms ** 2);
      }),
    );
  });
});
