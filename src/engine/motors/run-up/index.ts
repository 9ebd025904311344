export { type DqStart, type DqStartSetup, dqStart } from './dq-start.ts';
export { inverterSource, stiffSource } from './inverter-source.ts';
export { type NetworkDip, networkDip } from './network-dip.ts';
export { runUp } from './run-up.ts';
export type { MachineAnswer, RunUpMachine } from './run-up-machine.ts';
export type * from './run-up-types.ts';
export { singlePhaseRunUpMachine } from './single-phase-run-up-machine.ts';
export { threePhaseRunUpMachine } from './three-phase-run-up-machine.ts';
