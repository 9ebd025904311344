import { describe } from 'vitest';
import {
  autotransformerStarter,
  directStarter,
  networkDip,
  type RunUpMachine,
  runUp,
  type Starter,
  seriesStarter,
  starDeltaStarter,
  stiffSource,
  threePhaseRunUpMachine,
  torqueFromStartingCurrent,
} from '../../src/engine/motors/index.ts';
import { DQ_SIZE, dqMachine, SHAFT } from '../../src/engine/motors/run-up/dq-machine.ts';
import { eigenvalues, solveLinear } from '../support/eigenvalues.ts';
import {
  type KrauseName,
  klossMachine,
  krauseCircuit,
  krauseMachines,
  starCircuit,
  unchangingMachine,
} from '../support/run-up-machines.ts';
import { need } from './ac-solvers.ts';
import { type Solver, testRows } from './expect-printed.ts';
import { krauseRows, runUpRows } from './rows/motors-run-up.ts';

type Given = Readonly<Record<string, number>>;

const sampleEveryS = 0.0005;
const free = (inertiaKgM2: number) => ({
  motorInertiaKgM2: inertiaKgM2,
  load: { torqueNm: () => 0, inertiaKgM2: 0 },
});

/** Time to a share of synchronous speed, unloaded on a stiff supply. */
const timeTo = (given: Given, machine: RunUpMachine, speedRatio: number): number => {
  const frequencyHz = need(given, 'frequencyHz');
  const source = stiffSource({ nominalV: need(given, 'lineVoltageV') / Math.sqrt(3), frequencyHz });
  const { samples } = runUp({
    machine,
    ...free(need(given, 'inertiaKgM2')),
    source,
    sampleEveryS,
    untilS: 20,
  });
  const goal = (speedRatio * 2 * Math.PI * frequencyHz) / machine.polePairs;
  return (samples?.speedRadPerS.findIndex((speed) => speed >= goal) ?? Number.NaN) * sampleEveryS;
};

const switchOver = { afterS: 1 };

/** What flows and turns at the moment of switching on. */
const firstMoment = (machine: RunUpMachine, phaseV: number, starter: Starter) => {
  const source = stiffSource({ nominalV: phaseV, frequencyHz: 50 });
  const run = runUp({ machine, ...free(1e6), source, starter, untilS: 0.01, sampleEveryS: 0.01 });
  return {
    motorA: run.peakMotorA,
    lineA: run.peakOutputA,
    torque: run.samples?.motorTorqueNm[0] ?? Number.NaN,
  };
};

const machineOf = (given: Given): RunUpMachine =>
  unchangingMachine({
    phaseV: need(given, 'phaseV'),
    currentA: given['currentA'] ?? need(given, 'startingCurrentRatio'),
    torqueNm:
      given['torque'] ??
      torqueFromStartingCurrent({
        startingCurrentRatio: need(given, 'startingCurrentRatio'),
        ratedSlipRatio: need(given, 'ratedSlipRatio'),
      }).startingTorqueRatio,
  });

const solvers: Record<string, Solver> = {
  'A-2': (given) => {
    const [r1, x] = [need(given, 'r1'), need(given, 'x1') + need(given, 'x2')];
    const r2 = need(given, 'r2');
    const phaseV = need(given, 'lineVoltageV') / Math.sqrt(3);
    const field = (2 * Math.PI * need(given, 'frequencyHz')) / need(given, 'polePairs');
    const reach = Math.hypot(r1, x);
    const polePairs = need(given, 'polePairs');
    const kloss = klossMachine({
      phaseV,
      breakdownTorqueNm: (1.5 * phaseV ** 2) / field / (r1 + reach),
      breakdownSlip: r2 / reach,
      polePairs,
    });
    const circuit = starCircuit({
      polePairs,
      frequencyHz: need(given, 'frequencyHz'),
      r1,
      x1: need(given, 'x1'),
      r2,
      x2: need(given, 'x2'),
      xm: null,
    });
    const run = runUp({
      machine: threePhaseRunUpMachine(circuit),
      ...free(need(given, 'inertiaKgM2')),
      source: stiffSource({ nominalV: phaseV, frequencyHz: need(given, 'frequencyHz') }),
    });
    return {
      // The book counts to a slip of 5 %.
      durationS: timeTo(given, kloss, 0.95),
      lossKj: (run.rotorLossJ + 3 * r1 * run.motorSquareA2S) / 1000,
    };
  },
  'A-3': (given) => {
    const x = need(given, 'reactanceOhm') / 2;
    const [polePairs, frequencyHz, r2] = [
      need(given, 'polePairs'),
      need(given, 'frequencyHz'),
      need(given, 'r2'),
    ];
    const circuit = starCircuit({ polePairs, frequencyHz, r1: 0, x1: x, r2, x2: x, xm: null });
    return { durationS: timeTo(given, threePhaseRunUpMachine(circuit), need(given, 'speedRatio')) };
  },
  'V-2': (given) =>
    firstMoment(
      machineOf(given),
      need(given, 'phaseV'),
      autotransformerStarter({ tapRatio: need(given, 'tapRatio'), switchOver }),
    ),
  'V-4': (given) => firstMoment(machineOf(given), need(given, 'phaseV'), starDeltaStarter({ switchOver })),
  'V-5': (given) => {
    const at = (starter: Starter) =>
      100 * firstMoment(machineOf(given), need(given, 'phaseV'), starter).torque;
    return {
      starTorquePercent: at(starDeltaStarter({ switchOver })),
      tapTorquePercent: at(autotransformerStarter({ tapRatio: need(given, 'tapPercent') / 100, switchOver })),
    };
  },
  'V-7': (given) => {
    const phaseV = need(given, 'phaseV');
    // Purely resistive machine, so that the resistor for 2 pu is easily told: V/2 − V/6.
    const startA = need(given, 'startingCurrentRatio');
    const torque = firstMoment(machineOf(given), phaseV, directStarter).torque;
    const machine = unchangingMachine({ phaseV, currentA: startA, torqueNm: torque, powerFactor: 1 });
    const resistanceOhm = phaseV / need(given, 'limitRatio') - phaseV / startA;
    const series = firstMoment(
      machine,
      phaseV,
      seriesStarter({ resistanceOhm, reactanceOhm: 0, switchOver }),
    );
    const star = firstMoment(machine, phaseV, starDeltaStarter({ switchOver }));
    const tapRatio = need(given, 'tapRatio');
    return {
      seriesTorque: series.torque,
      starLine: star.lineA,
      starTorque: star.torque,
      tapTorque: firstMoment(machine, phaseV, autotransformerStarter({ tapRatio, switchOver })).torque,
    };
  },
  'V-10': (given) => {
    const phaseV = need(given, 'lineVoltageV') / Math.sqrt(3);
    const currentA = (Math.sqrt(3) * need(given, 'lineVoltageV')) / need(given, 'windingOhm');
    const machine = unchangingMachine({ phaseV, currentA, torqueNm: need(given, 'torque') });
    const star = firstMoment(machine, phaseV, starDeltaStarter({ switchOver }));
    const tapRatio = need(given, 'tapRatio');
    const tap = firstMoment(machine, phaseV, autotransformerStarter({ tapRatio, switchOver }));
    return {
      directA: firstMoment(machine, phaseV, directStarter).lineA,
      starA: star.lineA,
      starTorque: star.torque,
      tapLineA: tap.lineA,
      tapTorque: tap.torque,
    };
  },
  'P-1': (given) => {
    // The book's current times voltage, without √3: its motor stands between line and neutral.
    const shortCircuitVa = need(given, 'faultA') * need(given, 'lineV');
    const dip = networkDip({ startVa: need(given, 'startVa'), shortCircuitVa });
    return {
      dipV: dip.constantCurrentRatio * need(given, 'baseV'),
      dipPercent: 100 * dip.constantCurrentRatio,
      impedanceDipV: dip.constantImpedanceRatio * need(given, 'baseV'),
    };
  },
  'P-5': (given) => {
    const shortCircuitVa = need(given, 'ratedVa') / need(given, 'transientRatio');
    const dip = networkDip({ startVa: need(given, 'startVa'), shortCircuitVa });
    return { dipPercent: 100 * dip.constantImpedanceRatio };
  },
};

const unit = (place: number, size: number): Float64Array =>
  Float64Array.from({ length: DQ_SIZE }, (_, n) => (n === place ? size : 0));

/** Eigenvalues of the engine's own equations, linearised about the steady currents at standstill. */
const atStall = (name: KrauseName): Readonly<Record<string, number>> => {
  const { lineVoltageV, inertiaKgM2 } = krauseMachines[name];
  const rates = dqMachine(krauseCircuit(name)).rates({
    supplyRadPerS: 120 * Math.PI,
    voltageQ: lineVoltageV * Math.sqrt(2 / 3),
    voltageD: 0,
    inertiaKgM2,
    loadTorqueNm: () => 0,
  });
  const rateAt = (state: Float64Array): Float64Array => {
    const rate = new Float64Array(DQ_SIZE);
    rates(0, state, rate);
    return rate;
  };
  // The equations are at most quadratic: central differences are exact.
  const slopes = (about: Float64Array): number[][] => {
    const columns = Array.from(about, (_, place) => {
      const ahead = rateAt(about.map((value, n) => value + (unit(place, 1)[n] ?? 0)));
      const behind = rateAt(about.map((value, n) => value - (unit(place, 1)[n] ?? 0)));
      return ahead.map((value, n) => (value - (behind[n] ?? 0)) / 2);
    });
    return Array.from(about, (_, row) => columns.map((column) => column[row] ?? Number.NaN));
  };
  const nought = new Float64Array(DQ_SIZE);
  const fluxes = solveLinear(
    slopes(nought)
      .slice(0, SHAFT)
      .map((row) => row.slice(0, SHAFT)),
    Array.from(rateAt(nought).slice(0, SHAFT), (value) => -value),
  );
  const found = eigenvalues(slopes(Float64Array.from([...fluxes, 0])));
  const pairs = found.filter(({ im }) => im > 1).sort((a, b) => b.re - a.re);
  const [stator = { re: Number.NaN, im: 0 }, rotor = { re: Number.NaN, im: 0 }] = pairs;
  const real = found.find(({ im }) => Math.abs(im) < 1e-3)?.re ?? Number.NaN;
  return { statorRe: stator.re, statorIm: stator.im, rotorRe: rotor.re, rotorIm: rotor.im, real };
};

describe('published run-ups, starters and dips', () => {
  testRows(runUpRows, solvers);
});

describe('Krause’s machines at standstill', () => {
  const names = ['3 hp', '50 hp', '500 hp', '2250 hp'] as const;
  testRows(krauseRows, Object.fromEntries(names.map((name) => [name, () => atStall(name)])));
});
