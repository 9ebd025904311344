import { describe } from 'vitest';
import {
  lockedRotorSplit,
  mainWindingState,
  singlePhaseFromNameplate,
  singlePhaseMotorState,
  startingCapacitor,
  startingResistor,
} from '../../src/engine/motors/single-phase/index.ts';
import { need } from './ac-solvers.ts';
import { type Solver, testRows } from './expect-printed.ts';
import { singlePhaseMotorRows } from './rows/motors-single-phase.ts';

const windingsOf = (given: Readonly<Record<string, number>>) => ({
  main: { re: need(given, 'mainOhm'), im: need(given, 'mainReactanceOhm') },
  auxiliary: { re: need(given, 'auxiliaryOhm'), im: need(given, 'auxiliaryReactanceOhm') },
});

const splitBy = (given: Readonly<Record<string, number>>, splitDeg: number) => {
  const { main, auxiliary } = windingsOf(given);
  const { resistanceOhm } = startingResistor({ main, auxiliary, splitDeg });
  const withResistor = { re: auxiliary.re + resistanceOhm, im: auxiliary.im };
  const voltageV = need(given, 'voltageV');
  return { resistanceOhm, start: lockedRotorSplit({ voltageV, main, auxiliary: withResistor }) };
};

const quadrature = (given: Readonly<Record<string, number>>) =>
  startingCapacitor({ ...windingsOf(given), frequencyHz: need(given, 'frequencyHz'), aim: 'quadrature' });

const solvers: Record<string, Solver> = {
  'Y-1': (given) => {
    const speedRpm =
      ((60 * need(given, 'frequencyHz')) / need(given, 'polePairs')) * (1 - need(given, 'slipRatio'));
    const circuit = {
      mainResistanceOhm: need(given, 'mainResistanceOhm'),
      mainReactanceOhm: need(given, 'mainReactanceOhm'),
      magnetizingReactanceOhm: need(given, 'magnetizingReactanceOhm'),
      rotorResistanceOhm: need(given, 'rotorResistanceOhm'),
      rotorReactanceOhm: need(given, 'rotorReactanceOhm'),
      frequencyHz: need(given, 'frequencyHz'),
      polePairs: need(given, 'polePairs'),
      rotationalLossW: need(given, 'coreLossW') + need(given, 'frictionLossW'),
      rotationalLossSpeedRpm: speedRpm,
    };
    const voltageV = need(given, 'voltageV');
    const running = mainWindingState(circuit, { voltageV, slipRatio: need(given, 'slipRatio') });
    return {
      currentA: running.currentA,
      powerFactor: running.powerFactor,
      shaftPowerW: running.shaftPowerW,
      speedRpm: (running.speedRadPerS * 30) / Math.PI,
      shaftTorqueNm: running.shaftTorqueNm,
      efficiencyPercent: running.efficiencyRatio * 100,
      lockedRotorA: mainWindingState(circuit, { voltageV, slipRatio: 1 }).currentA,
    };
  },
  'Y-3': (given) => {
    const { resistanceOhm, start } = splitBy(given, need(given, 'splitDeg'));
    return {
      ...lockedRotorSplit({ voltageV: need(given, 'voltageV'), ...windingsOf(given) }),
      addedOhm: resistanceOhm,
      torqueFactorSplitA2: start.torqueFactorA2,
    };
  },
  'Y-4': (given) => {
    const { main, auxiliary } = windingsOf(given);
    const { reactanceOhm, capacitanceF } = quadrature(given);
    const start = lockedRotorSplit({
      voltageV: need(given, 'voltageV'),
      main,
      auxiliary: { re: auxiliary.re, im: auxiliary.im - reactanceOhm },
    });
    const byResistor = splitBy(given, 30).start.torqueFactorA2;
    return {
      ...start,
      capacitorOhm: reactanceOhm,
      capacitanceF,
      risePercent: (start.torqueFactorA2 / byResistor - 1) * 100,
    };
  },
  'Y-6': (given) => ({ capacitanceF: quadrature(given).capacitanceF }),
  'P-7': (given) => {
    const ratedPowerW = need(given, 'shaftPowerW');
    const voltageV = need(given, 'voltageV');
    const motor = singlePhaseFromNameplate({
      ratedPowerW,
      voltageV,
      frequencyHz: need(given, 'frequencyHz'),
      efficiencyRatio: ratedPowerW / need(given, 'inputPowerW'),
      powerFactor: need(given, 'inputPowerW') / (voltageV * need(given, 'currentA')),
      ratedSpeedRpm: ((ratedPowerW / need(given, 'shaftTorqueNm')) * 30) / Math.PI,
      lockedRotorCurrentRatio: need(given, 'lockedRotorCurrentRatio'),
      lockedRotorTorqueRatio: need(given, 'lockedRotorTorqueRatio'),
      kind: 'capacitor-start',
    });
    const ratedSlip = 1 - motor.circuit.rotationalLossSpeedRpm / 1800;
    const running = singlePhaseMotorState(motor, { voltageV, slipRatio: ratedSlip });
    return {
      efficiencyPercent: running.efficiencyRatio * 100,
      powerFactor: running.powerFactor,
      startTorqueRatio:
        singlePhaseMotorState(motor, { voltageV, slipRatio: 1 }).torqueNm / running.shaftTorqueNm,
    };
  },
};

describe('published single-phase motors', () => {
  testRows(singlePhaseMotorRows, solvers);
});
