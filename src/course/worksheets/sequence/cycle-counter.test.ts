import { describe, expect, it } from 'vitest';
import { exampleModel, noLoad, simulateSystem, type TimedLoad } from '../../../engine/index.ts';
import { solveWorksheet } from '../step-graph.ts';
import { cycleCounter } from './cycle-counter.ts';

/** A heater so large that the current limit leaves it a share of the nominal voltage. */
const heaterFor = (voltageRatio: number) => ({
  ...noLoad,
  impedance: { realW: (exampleModel.limitA * 230) / voltageRatio, reactiveVar: 0 },
});

const run = (loads: readonly TimedLoad[]) =>
  simulateSystem({
    units: [{ id: 'unit', phase: 'L1', model: exampleModel, ambientC: 25, loads }],
    untilS: 600,
  }).events;

const solve = (dipV: number, dipS: number) =>
  solveWorksheet(cycleCounter, { inverter: exampleModel, dipV, dipS, dips: 3 });

const dips = (voltageRatio: number, dipS: number): TimedLoad[] =>
  [0, 3, 6].flatMap((startS) => [
    { startS, load: heaterFor(voltageRatio) },
    { startS: startS + dipS, load: noLoad },
  ]);

describe('cycle-counter', () => {
  it('locks out when the simulated unit does', () => {
    const lockout = run([{ startS: 0, load: heaterFor(0.7) }]).find((event) => event.kind === 'lockout');
    const { lockoutS } = solve(161, 1);
    expect(lockoutS).toBeCloseTo(lockout?.timeS ?? 0, 9);
  });

  it('judges dips as the simulated unit does', () => {
    const stops = (voltageRatio: number, dipS: number): number =>
      run(dips(voltageRatio, dipS)).filter((event) => event.kind === 'stop').length;
    expect(solve(0.7 * 230, 0.3)).toHaveProperty('outcome', 'recovers-in-time');
    expect(stops(0.7, 0.3)).toBe(0);
    expect(solve(0.7 * 230, 0.7)).toHaveProperty('outcome', 'stops-in-first');
    expect(stops(0.7, 0.7)).toBeGreaterThan(0);
    expect(solve(0.95 * 230, 0.7)).toHaveProperty('outcome', 'counter-idle');
    expect(stops(0.95, 0.7)).toBe(0);
  });
});
