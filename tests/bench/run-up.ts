import { noLoad } from '../../src/engine/inverter/index.ts';
import {
  dqStart,
  exampleCircuit,
  quadraticLoad,
  type RunUpSetup,
  runUp,
  threePhaseRunUpMachine,
} from '../../src/engine/motors/index.ts';
import { krauseCircuit, krauseMachines } from '../support/run-up-machines.ts';
import { dqByWalking, runUpByWalking } from '../support/stepwise-run-up.ts';
import { medianNs, printFigure } from './measure.ts';

const nominalV = 230;
const frequencyHz = 50;
const limitA = 65;
const load = quadraticLoad({ ratedTorqueNm: 30, ratedSpeedRadPerS: 150, inertiaKgM2: 2.2 });
const source = { nominalV, frequencyHz, limitA, others: noLoad };
const machine = threePhaseRunUpMachine(exampleCircuit);
const setup: RunUpSetup = { machine, motorInertiaKgM2: 0.02, load, source, untilS: 5 };

/** Fixed steps short enough for the same accuracy, in the open. */
const walk = () =>
  runUpByWalking({
    circuit: exampleCircuit,
    inertiaKgM2: load.inertiaKgM2 + 0.02,
    torqueNm: load.torqueNm,
    nominalV,
    frequencyHz,
    limitA,
    others: noLoad,
    stepS: 1e-3,
    stepsPerSample: 1,
    samples: 5000,
  });

const worst = (a: Float64Array | undefined, b: readonly number[] | Float64Array): number =>
  Math.max(...Array.from(a ?? [], (value, n) => Math.abs(value - (b[n] ?? Number.NaN))));

const name = '3 hp';
const dq = {
  circuit: krauseCircuit(name),
  motorInertiaKgM2: krauseMachines[name].inertiaKgM2,
  load: { torqueNm: () => 0, inertiaKgM2: 0 },
  lineVoltageV: krauseMachines[name].lineVoltageV,
  frequencyHz: 60,
  untilS: 1,
  sampleEveryS: 0.001,
};
const dqWalk = () =>
  dqByWalking({
    circuit: dq.circuit,
    inertiaKgM2: dq.motorInertiaKgM2,
    lineVoltageV: dq.lineVoltageV,
    frequencyHz: 60,
    stepS: 1e-4,
    stepsPerSample: 10,
    samples: 1000,
  });

/** A quasi-steady start of about 5 s on a limited source, and the first second of a fifth-order start. */
export function runUpBench(): void {
  const sampled: RunUpSetup = { ...setup, sampleEveryS: 0.001, toleranceRatio: 1e-6 };
  const fine = runUp({ ...sampled, toleranceRatio: 1e-11 }).samples?.speedRadPerS ?? [];
  const found = runUp(sampled);
  const errorRad = worst(found.samples?.speedRadPerS, fine).toExponential(1);
  const walkedRad = worst(found.samples?.speedRadPerS, walk().speeds).toExponential(1);
  console.log(
    `Run-up of ${found.endS.toFixed(2)} s: speed within ${errorRad} rad/s; fixed steps within ${walkedRad}`,
  );
  printFigure({ name: 'Run-up without samples', ns: medianNs(() => runUp(setup).endS, 200) });
  printFigure({
    name: 'Run-up sampled every millisecond (speed, volts, amperes, torque)',
    ns: medianNs(() => runUp(sampled).endS, 100),
    reference: { name: 'fixed steps of 1 ms', ns: medianNs(walk, 3) },
  });
  const tight = dqStart({ ...dq, toleranceRatio: 1e-11 }).speedRadPerS;
  const dqError = worst(dqStart(dq).speedRadPerS, tight).toExponential(1);
  const dqWalked = worst(tight, dqWalk().speeds).toExponential(1);
  console.log(`Fifth-order start: speed within ${dqError} rad/s; fixed steps of 0.1 ms within ${dqWalked}`);
  printFigure({
    name: 'Fifth-order start, 1 s, 1001 samples',
    ns: medianNs(() => dqStart(dq).steps, 100),
    reference: { name: 'fixed steps of 0.1 ms', ns: medianNs(dqWalk, 3) },
  });
}
