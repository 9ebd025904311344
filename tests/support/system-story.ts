import {
  exampleDatasheet,
  exampleModel,
  type InverterDatasheet,
  noLoad,
  type SystemUnit,
  simulateSystem,
  solveHeatNetwork,
  type TimedLoad,
  type Timeline,
  type ZipLoad,
} from '../../src/engine/inverter/index.ts';

/** A resistive load by its current at nominal voltage. */
export const amperes = (currentA: number): ZipLoad => ({
  ...noLoad,
  impedance: { realW: currentA * 230, reactiveVar: 0 },
});
export const constantA = (currentA: number): ZipLoad => ({
  ...noLoad,
  current: { realW: currentA * 230, reactiveVar: 0 },
});
export const loads = (...steps: [startS: number, currentA: number][]): TimedLoad[] =>
  steps.map(([startS, currentA]) => ({ startS, load: amperes(currentA) }));
export const unit = (part: Partial<SystemUnit>): SystemUnit => ({
  id: 'a',
  phase: 'L1',
  model: exampleModel,
  ambientC: 25,
  loads: [],
  ...part,
});
export const modelWith = (change: Partial<InverterDatasheet>) =>
  solveHeatNetwork({ ...exampleDatasheet, ...change });
export const run = (part: Partial<SystemUnit>, untilS: number, manualResetsS: number[] = []): Timeline =>
  simulateSystem({ units: [unit(part)], untilS, manualResetsS, stopsTogether: true });
export const story = ({ events }: Timeline): string[] =>
  events.map(({ kind, timeS, cause, count }) =>
    [timeS.toFixed(2), kind, cause, count].filter((word) => word !== undefined).join(' '),
  );
export const timesOf = ({ events }: Timeline, kind: string): number[] =>
  events.filter((event) => event.kind === kind).map((event) => event.timeS);
