import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  dutyAfterCycles,
  dutyHeat,
  heatAfter,
  peakHeat,
  solveHeatNetwork,
} from '../../src/engine/inverter/index.ts';
import { heatState, knownInverter } from '../support/arbitraries.ts';

const model = knownInverter.map(({ datasheet }) => solveHeatNetwork(datasheet));
const sum = (heat: { fast: number; slow: number }): number => heat.fast + heat.slow;

describe('a repeating duty', () => {
  const duty = fc.array(
    fc.record({
      durationS: fc.double({ min: 1, max: 1500, noNaN: true }),
      loadRatio: fc.double({ min: -0.3, max: 2, noNaN: true }),
    }),
    { minLength: 1, maxLength: 5 },
  );

  it('settles where repeating it for ever leads', () => {
    fc.assert(
      fc.property(model, duty, heatState, (unit, parts, heat) => {
        const segments = parts.map(({ durationS, loadRatio: ratio }) => ({
          durationS,
          currentA: ratio < 0 ? null : ratio * unit.continuousA,
        }));
        const settled = dutyHeat({ model: unit, segments });
        const cycleS = segments.reduce((total, { durationS }) => total + durationS, 0);
        const cycles = 3 + Math.ceil((32 * unit.network.slowTimeConstantS) / cycleS);
        fc.pre(cycles < 20_000);
        let state = heat;
        let peak = 0;
        let trough = Number.POSITIVE_INFINITY;
        let afterThree = heat;
        for (let cycle = 0; cycle < cycles; cycle++) {
          peak = sum(state);
          trough = peak;
          for (const segment of segments) {
            const before = { model: unit, heat: state, ...segment };
            peak = Math.max(peak, peakHeat(before).heatRatio);
            state = heatAfter(before);
            trough = Math.min(trough, sum(state));
          }
          if (cycle === 2) afterThree = state;
        }
        expect(settled.startHeat.fast).toBeCloseTo(state.fast, 9);
        expect(settled.startHeat.slow).toBeCloseTo(state.slow, 9);
        expect(settled.peakHeatRatio).toBeCloseTo(peak, 9);
        expect(settled.troughHeatRatio).toBeLessThanOrEqual(trough + 1e-9);
        if (cycles > 2) {
          const closed = dutyAfterCycles({ model: unit, segments, heat, cycles: 3 });
          expect(closed.slow).toBeCloseTo(afterThree.slow, 10);
          expect(closed.fast).toBeCloseTo(afterThree.fast, 10);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('has the mean heat of its mean loss', () => {
    fc.assert(
      fc.property(model, duty, (unit, parts) => {
        const segments = parts.map(({ durationS, loadRatio: ratio }) => ({
          durationS,
          currentA: ratio < 0 ? null : ratio * unit.continuousA,
        }));
        const settled = dutyHeat({ model: unit, segments });
        // Mean of the curve itself by Simpson's rule over each stretch.
        let heat = settled.startHeat;
        let area = 0;
        let cycleS = 0;
        for (const segment of segments) {
          const steps = 400;
          for (let i = 0; i <= steps; i++) {
            const weight = i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2;
            const durationS = (segment.durationS * i) / steps;
            area +=
              (weight *
                (segment.durationS / steps) *
                sum(heatAfter({ model: unit, heat, ...segment, durationS }))) /
              3;
          }
          heat = heatAfter({ model: unit, heat, ...segment });
          cycleS += segment.durationS;
        }
        expect(area / cycleS).toBeCloseTo(settled.meanHeatRatio, 6);
      }),
      { numRuns: 30 },
    );
  });
});
