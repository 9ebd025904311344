import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  heatAt,
  inputPowerW,
  type SystemRun,
  simulateSystem,
  solveHeatNetwork,
  type TimedLoad,
  timelineEnergy,
} from '../../src/engine/inverter/index.ts';
import { type KnownInverter, knownInverter } from '../support/arbitraries.ts';
import { type StepwiseUnit, simulateStepwise } from '../support/stepwise-inverter.ts';

type Drawn<A> = A extends fc.Arbitrary<infer T> ? T : never;

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const drawnLoad = fc.record({
  gapS: between(20, 900),
  size: fc.oneof(between(0, 1), between(0.9, 2.2), between(2, 3)),
  shares: fc.tuple(between(0.2, 1), between(0, 0.5), between(0, 0.4)),
  reactive: between(0, 0.8),
});

/** Loads in proportion to the unit's own rating. */
const loadsFor = (known: KnownInverter, drawn: readonly Drawn<typeof drawnLoad>[]): TimedLoad[] => {
  const ratedVa = known.datasheet.continuous.power.value;
  let startS = -100;
  return drawn.map(({ gapS, size, shares, reactive }) => {
    startS += gapS;
    const whole = shares[0] + shares[1] + shares[2];
    const [impedance, current, power] = shares.map((share) => {
      const realW = (size * ratedVa * share) / whole;
      return { realW, reactiveVar: realW * reactive };
    }) as [TimedLoad['load']['impedance'], TimedLoad['load']['current'], TimedLoad['load']['power']];
    return { startS, load: { impedance, current, power } };
  });
};

const drawnUnit = fc.record({
  known: knownInverter,
  warmerC: between(-15, 15),
  drawn: fc.array(drawnLoad, { minLength: 1, maxLength: 12 }),
});

const drawnSystem = fc.record({
  units: fc.array(drawnUnit, { minLength: 1, maxLength: 3 }),
  untilS: between(1000, 9000),
  resets: fc.array(between(0, 9000), { maxLength: 2 }).map((times) => times.toSorted((a, b) => a - b)),
});

const bothWays = ({ units, untilS, resets }: Drawn<typeof drawnSystem>) => {
  const told: StepwiseUnit[] = units.map(({ known, warmerC, drawn }, i) => ({
    id: `unit-${i + 1}`,
    known,
    ambientC: known.datasheet.referenceAmbientC + warmerC,
    loads: loadsFor(known, drawn),
  }));
  const run: SystemRun = {
    units: told.map(({ known, ...unit }, i) => ({
      ...unit,
      phase: `L${i + 1}`,
      model: solveHeatNetwork(known.datasheet),
    })),
    untilS,
    manualResetsS: resets,
    stopsTogether: true,
  };
  return { run, told };
};

describe('a simulated system', () => {
  it('agrees with a plain stepwise simulation on events, their times, peaks and energy', () => {
    let stops = 0;
    fc.assert(
      fc.property(drawnSystem, (system) => {
        const { run, told } = bothWays(system);
        const timeline = simulateSystem(run);
        const plain = simulateStepwise({
          units: told,
          untilS: run.untilS,
          stepS: 2,
          manualResetsS: system.resets,
        });
        const named = (event: { kind: string; unitId?: string; cause?: string }) =>
          `${event.kind} ${event.unitId ?? ''} ${event.cause ?? ''}`;
        expect(timeline.events.map(named)).toEqual(plain.events.map(named));
        timeline.events.forEach((event, i) => {
          const theirs = plain.events[i]?.timeS ?? Number.NaN;
          expect(Math.abs(event.timeS - theirs)).toBeLessThanOrEqual(1e-3 * theirs + 1e-3);
          if (event.kind === 'stop') stops++;
        });
        timeline.units.forEach((unit, i) => {
          const theirs = plain.units[i];
          if (!theirs) throw new Error('no such unit');
          expect(Math.abs(unit.peakHeatRatio / theirs.peak - 1)).toBeLessThan(1e-3);
          expect(unit.heatEnd.fast + unit.heatEnd.slow).toBeCloseTo(theirs.fast + theirs.slow, 3);
          expect(Math.abs(timelineEnergy(timeline, i).inputJ - theirs.inputJ)).toBeLessThan(
            1e-3 * theirs.inputJ + 1,
          );
        });
      }),
      { numRuns: 150 },
    );
    // The draw must really reach the protection, else agreement means little.
    expect(stops).toBeGreaterThan(100);
  });

  it('takes in what it gives out and loses, and its heat is that of its losses', () => {
    fc.assert(
      fc.property(drawnSystem, (system) => {
        const { run } = bothWays(system);
        const timeline = simulateSystem(run);
        timeline.units.forEach((unit, i) => {
          const { inputJ, outputJ, lossJ } = timelineEnergy(timeline, i);
          expect(inputJ).toBeGreaterThanOrEqual(0);
          expect(Math.abs(inputJ - outputJ - lossJ)).toBeLessThanOrEqual(1e-9 * inputJ);
          // A node gains in heat what flows in less what flows out: τ·Δx = share·(loss/rated)·t − ∫x dt, by Simpson's rule.
          const { fastTimeConstantS: tau, fastShareRatio: share } = unit.model.network;
          let area = 0;
          for (const { startS, endS } of timeline.segments) {
            const steps = 2 * Math.ceil((endS - startS) / tau / 0.1 + 1);
            const width = (endS - startS) / steps;
            for (let k = 0; k <= steps; k++) {
              const weight = k === 0 || k === steps ? 1 : k % 2 === 1 ? 4 : 2;
              const at = Math.min(endS, k === steps ? endS * (1 - 1e-15) : startS + k * width);
              area += (weight * width * heatAt(timeline, i, at).fast) / 3;
            }
          }
          const first = heatAt(timeline, i, 0).fast;
          const gained = tau * (unit.heatEnd.fast - first);
          const flowedIn = (share * lossJ) / unit.model.continuousLossW;
          expect(Math.abs(gained - (flowedIn - area))).toBeLessThan(1e-5 * (flowedIn + 1));
        });
      }),
      { numRuns: 40 },
    );
  });

  it('draws from the battery what efficiency at half and full rating says', () => {
    fc.assert(
      fc.property(knownInverter, ({ datasheet }) => {
        const model = solveHeatNetwork(datasheet);
        const ratedVa = datasheet.continuous.power.value;
        const full = inputPowerW({ model, currentA: model.continuousA, outputW: ratedVa });
        const half = inputPowerW({ model, currentA: model.continuousA / 2, outputW: ratedVa / 2 });
        expect(ratedVa / full).toBeCloseTo(datasheet.efficiencyFullRatio, 10);
        expect(ratedVa / 2 / half).toBeCloseTo(datasheet.efficiencyHalfRatio, 10);
      }),
    );
  });

  it('covers the whole time with segments that join, and ends at the end', () => {
    fc.assert(
      fc.property(drawnSystem, (system) => {
        const { run } = bothWays(system);
        const timeline = simulateSystem(run);
        let clockS = 0;
        for (const segment of timeline.segments) {
          expect(segment.startS).toBe(clockS);
          expect(segment.endS).toBeGreaterThan(segment.startS);
          clockS = segment.endS;
        }
        expect(clockS).toBe(run.untilS);
        for (const [i, unit] of timeline.units.entries()) {
          const start = heatAt(timeline, i, 0);
          const most = Math.max(unit.allowedHeatRatio, start.fast + start.slow);
          expect(unit.peakHeatRatio).toBeLessThanOrEqual(most * (1 + 1e-9));
        }
      }),
    );
  });
});
