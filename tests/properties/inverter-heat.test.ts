import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  allowedHeat,
  currentForTime,
  heatAfter,
  historyHeat,
  peakHeat,
  settledHeat,
  solveHeatNetwork,
  timeToHeat,
  timeToStop,
} from '../../src/engine/inverter/index.ts';
import { heatState, knownInverter, loadStretch } from '../support/arbitraries.ts';

const model = knownInverter.map(({ datasheet }) => solveHeatNetwork(datasheet));
const loadRatio = fc.double({ min: 0, max: 2.2, noNaN: true });
const ambientC = fc.double({ min: -20, max: 60, noNaN: true });
const stretches = fc.array(loadStretch, { minLength: 1, maxLength: 8 });

const orForEver = (timeS: number | null): number => timeS ?? Number.POSITIVE_INFINITY;
const sum = (heat: { fast: number; slow: number }): number => heat.fast + heat.slow;

describe('the heat network', () => {
  it('is found again from the points of a known network', () => {
    fc.assert(
      fc.property(knownInverter, (known) => {
        const solved = solveHeatNetwork(known.datasheet);
        expect(solved.network.fastShareRatio).toBeCloseTo(known.fastShareRatio, 6);
        expect(solved.network.fastTimeConstantS / known.fastTimeConstantS).toBeCloseTo(1, 6);
        expect(solved.limitC).toBeCloseTo(known.limitC, 6);
      }),
    );
  });

  it('reproduces the datasheet’s own points', () => {
    fc.assert(
      fc.property(model, (unit) => {
        const { longDuration, surge, hot, referenceAmbientC } = unit.datasheet;
        const heat = settledHeat(unit, 0);
        const heatIn = (currentA: number, durationS: number) =>
          sum(heatAfter({ model: unit, heat, currentA, durationS }));
        expect(heatIn(unit.longDurationA, longDuration.durationS)).toBeCloseTo(1, 10);
        expect(heatIn(unit.surgeA, surge.durationS)).toBeCloseTo(1, 10);
        expect(sum(settledHeat(unit, unit.continuousA))).toBeCloseTo(1, 10);
        expect(sum(settledHeat(unit, unit.hotA))).toBeCloseTo(
          allowedHeat({ model: unit, ambientC: hot.ambientC }),
          10,
        );
        expect(allowedHeat({ model: unit, ambientC: referenceAmbientC })).toBe(1);
      }),
    );
  });
});

describe('the time to stop', () => {
  it('never grows with load', () => {
    fc.assert(
      fc.property(model, heatState, ambientC, loadRatio, loadRatio, (unit, heat, atC, one, other) => {
        const timeFor = (ratio: number) =>
          orForEver(
            timeToStop({ model: unit, currentA: ratio * unit.continuousA, ambientC: atC, heat }).timeS,
          );
        const light = timeFor(Math.min(one, other));
        const heavy = timeFor(Math.max(one, other));
        expect(heavy).toBeLessThanOrEqual(light * (1 + 1e-9) + 1e-6);
      }),
    );
  });

  it('never grows with ambient or height', () => {
    fc.assert(
      fc.property(
        model,
        loadRatio,
        ambientC,
        ambientC,
        fc.integer({ min: 0, max: 4000 }),
        (unit, ratio, one, other, altitudeM) => {
          const currentA = ratio * unit.continuousA;
          const cool = orForEver(timeToStop({ model: unit, currentA, ambientC: Math.min(one, other) }).timeS);
          const hot = orForEver(timeToStop({ model: unit, currentA, ambientC: Math.max(one, other) }).timeS);
          const high = orForEver(
            timeToStop({ model: unit, currentA, ambientC: Math.max(one, other), altitudeM }).timeS,
          );
          expect(hot).toBeLessThanOrEqual(cool * (1 + 1e-9));
          expect(high).toBeLessThanOrEqual(hot * (1 + 1e-9));
        },
      ),
    );
  });

  it('never shrinks with a longer rest before', () => {
    fc.assert(
      fc.property(model, heatState, loadRatio, loadStretch, loadStretch, (unit, heat, ratio, one, other) => {
        const timeAfterRest = (restS: number) => {
          const rested = heatAfter({ model: unit, heat, currentA: null, durationS: restS });
          const currentA = ratio * unit.continuousA;
          return orForEver(timeToHeat({ model: unit, heat: rested, currentA, levelRatio: 1 }));
        };
        const short = timeAfterRest(Math.min(one.durationS, other.durationS));
        const long = timeAfterRest(Math.max(one.durationS, other.durationS));
        expect(long).toBeGreaterThanOrEqual(short * (1 - 1e-9) - 1e-6);
      }),
    );
  });

  it('is what the largest current for that time lasts', () => {
    fc.assert(
      fc.property(
        model,
        heatState,
        fc.double({ min: 5, max: 7200, noNaN: true }),
        ambientC,
        (unit, heat, timeS, atC) => {
          const currentA = currentForTime({ model: unit, timeS, ambientC: atC, heat });
          fc.pre(currentA > 0);
          const lasts = (factor: number) =>
            orForEver(timeToStop({ model: unit, currentA: currentA * factor, ambientC: atC, heat }).timeS);
          expect(lasts(1 - 1e-7)).toBeGreaterThanOrEqual(timeS * (1 - 1e-9));
          expect(lasts(1 + 1e-5)).toBeLessThanOrEqual(timeS);
        },
      ),
    );
  });
});

describe('a history', () => {
  const run = (
    unit: ReturnType<typeof solveHeatNetwork>,
    parts: { durationS: number; loadRatio: number }[],
  ) =>
    historyHeat({
      model: unit,
      durationsS: Float64Array.from(parts, (part) => part.durationS),
      currentsA: Float64Array.from(parts, (part) => part.loadRatio * unit.continuousA),
    });

  it('does not change when a stretch is split in two', () => {
    fc.assert(
      fc.property(
        model,
        stretches,
        fc.nat(7),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (unit, parts, place, share) => {
          const at = place % parts.length;
          const split = parts.flatMap((part, i) =>
            i === at
              ? [
                  { ...part, durationS: part.durationS * share },
                  { ...part, durationS: part.durationS * (1 - share) },
                ]
              : [part],
          );
          const whole = run(unit, parts);
          const halves = run(unit, split);
          expect(halves.heat.fast).toBeCloseTo(whole.heat.fast, 10);
          expect(halves.heat.slow).toBeCloseTo(whole.heat.slow, 10);
          expect(halves.peakHeatRatio).toBeCloseTo(whole.peakHeatRatio, 10);
          const clear = Math.abs(whole.peakHeatRatio - 1) > 1e-6;
          if (clear)
            expect(orForEver(halves.firstStopS) / orForEver(whole.firstStopS) || 1).toBeCloseTo(1, 6);
        },
      ),
    );
  });

  it('agrees with stretch-by-stretch heat, peaks and crossings', () => {
    fc.assert(
      fc.property(model, stretches, (unit, parts) => {
        let heat = settledHeat(unit, 0);
        let clockS = 0;
        let peak = sum(heat);
        let stopS: number | null = null;
        for (const { durationS, loadRatio: ratio } of parts) {
          const currentA = ratio < 0 ? null : ratio * unit.continuousA;
          const inS = timeToHeat({ model: unit, heat, currentA, levelRatio: 1 });
          if (stopS === null && inS !== null && inS <= durationS) stopS = clockS + inS;
          peak = Math.max(peak, peakHeat({ model: unit, heat, currentA, durationS }).heatRatio);
          heat = heatAfter({ model: unit, heat, currentA, durationS });
          clockS += durationS;
        }
        const history = run(unit, parts);
        expect(history.peakHeatRatio).toBeCloseTo(peak, 10);
        expect(history.heat.slow).toBeCloseTo(heat.slow, 10);
        if (stopS === null) expect(history.firstStopS).toBeNull();
        else expect(history.firstStopS).toBeCloseTo(stopS, 6);
      }),
    );
  });
});
