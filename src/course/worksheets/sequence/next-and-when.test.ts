import { describe, expect, it } from 'vitest';
import { exampleModel, noLoad, simulateSystem } from '../../../engine/index.ts';
import { solveWorksheet } from '../step-graph.ts';
import { nextAndWhen } from './next-and-when.ts';

/** A heater: its current is that of its watts while the voltage is held. */
const heater = (currentA: number) => ({ ...noLoad, impedance: { realW: currentA * 230, reactiveVar: 0 } });

describe('next-and-when', () => {
  it('gives the times of stops, restart and lockout that the simulated unit shows', () => {
    for (const loadA of [20, 22, 24]) {
      const { rowA, firstStopS, restartS, secondStopS, lockoutS, lockoutStop } = solveWorksheet(nextAndWhen, {
        inverter: exampleModel,
        loadA,
      });
      expect(rowA).toBe(loadA);
      const { events } = simulateSystem({
        units: [
          {
            id: 'unit',
            phase: 'L1',
            model: exampleModel,
            ambientC: 25,
            loads: [{ startS: 0, load: heater(loadA) }],
          },
        ],
        untilS: 3600,
      });
      const timesOf = (kind: string): number[] =>
        events.filter((event) => event.kind === kind).map((event) => event.timeS);
      const stops = timesOf('stop');
      expect(stops).toHaveLength(3);
      expect(firstStopS).toBeCloseTo(stops[0] ?? 0, 6);
      expect(restartS).toBeCloseTo(timesOf('restart')[0] ?? 0, 6);
      expect(secondStopS).toBeCloseTo(stops[1] ?? 0, 6);
      expect(lockoutS).toBeCloseTo(timesOf('lockout')[0] ?? 0, 6);
      expect(lockoutStop).toBe('third');
    }
  });

  it('never locks out at a load whose second run outlasts the reclaim time', () => {
    const { lockoutStop } = solveWorksheet(nextAndWhen, { inverter: exampleModel, loadA: 14 });
    expect(lockoutStop).toBe('never');
  });
});
