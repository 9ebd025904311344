import { expect, it } from 'vitest';
import { exampleModel, noLoad, simulateSystem } from '../../../engine/index.ts';
import { solveWorksheet } from '../step-graph.ts';
import { whichPhase } from './which-phase.ts';

const loads = [
  { phase: 'L1', realPowerW: 2900, powerFactor: 0.96 },
  { phase: 'L2', realPowerW: 2700, powerFactor: 0.75 },
  { phase: 'L3', realPowerW: 1200, powerFactor: 0.6 },
] as const;

it('names the phase and the moment at which the simulated system stops, and that all stop', () => {
  const { firstPhase, currentL2A, rowA, stopAfterS, others } = solveWorksheet(whichPhase, {
    inverter: exampleModel,
    loads,
  });
  expect(firstPhase).toBe('L2');
  expect(rowA).toBeGreaterThan(Number(currentL2A));
  // The time is that of the row, which stands for a little more load than hangs on the phase.
  const toRow = Number(rowA) / Number(currentL2A);
  const asRead = loads.map((load) => ({
    ...load,
    realPowerW: load.phase === 'L2' ? load.realPowerW * toRow : load.realPowerW,
  }));
  const { events, segments } = simulateSystem({
    units: asRead.map(({ phase, realPowerW, powerFactor }) => ({
      id: `unit-${phase}`,
      phase,
      model: exampleModel,
      ambientC: 25,
      loads: [
        {
          startS: 0,
          load: {
            ...noLoad,
            impedance: { realW: realPowerW, reactiveVar: realPowerW * Math.tan(Math.acos(powerFactor)) },
          },
        },
      ],
    })),
    untilS: 7200,
  });
  const stop = events.find((event) => event.kind === 'stop');
  expect(firstPhase).toBe(stop?.phase);
  expect(stopAfterS).toBeCloseTo(stop?.timeS ?? 0, 6);
  expect(others).toBe('all-stop');
  const standing = segments.find((segment) => segment.state === 'stopped');
  expect(standing?.units.map((unit) => unit.currentA)).toEqual([0, 0, 0]);
});
