import { complexAngleDeg } from '../../src/engine/ac/index.ts';
import { bracketedRoot } from '../../src/engine/inverter/bracketed-root.ts';
import {
  breakdown,
  circuitFromTests,
  type EquivalentCircuit,
  energyBalance,
  horsepowerOfWatts,
  klossBreakdownSlip,
  klossTorque,
  lockedRotor,
  machineState,
  slipForTorque,
  startAtSupply,
  synchronousSpeed,
  torqueFromStartingCurrent,
  torqueOfPower,
} from '../../src/engine/motors/index.ts';
import { need } from './ac-solvers.ts';
import type { Solver } from './expect-printed.ts';

type Given = Readonly<Record<string, number>>;

const POUND_FOOT_NM = 1.3558179483;
const MECHANICAL_HORSEPOWER_W = 745.699872;

/** Torque of a shaft in the books' units: horsepower by speed. */
export const ratedLbFt = (horsepower: number, speedRpm: number): number =>
  torqueOfPower({ powerW: horsepower * MECHANICAL_HORSEPOWER_W, speedRpm }) / POUND_FOOT_NM;

function starCircuit(given: Given): EquivalentCircuit {
  const lossSlip = given['rotationalLossW'] === undefined ? 0 : need(given, 'slipRatio');
  return {
    connection: 'star',
    polePairs: need(given, 'polePairs'),
    referenceFrequencyHz: need(given, 'frequencyHz'),
    statorResistanceOhm: need(given, 'statorResistanceOhm'),
    statorReactanceOhm: need(given, 'statorReactanceOhm'),
    magnetisingReactanceOhm: given['magnetisingReactanceOhm'] ?? null,
    coreLossResistanceOhm: given['coreLossResistanceOhm'] ?? null,
    rotorResistanceOhm: need(given, 'rotorResistanceOhm'),
    rotorReactanceOhm: need(given, 'rotorReactanceOhm'),
    // The books state the loss at the speed of the example.
    rotationalLossW: (given['rotationalLossW'] ?? 0) / (1 - lossSlip) ** 2,
  };
}

export const circuitSolver: Solver = (given) => {
  const supply = {
    circuit: starCircuit(given),
    lineVoltageV: need(given, 'lineVoltageV'),
    frequencyHz: need(given, 'frequencyHz'),
  };
  const { phaseCurrent, ...state } = machineState({ ...supply, slipRatio: need(given, 'slipRatio') });
  const top = breakdown(supply);
  const start = lockedRotor(supply);
  const held = machineState({ ...supply, slipRatio: 1 });
  return {
    ...state,
    currentAngleDeg: complexAngleDeg(phaseCurrent),
    phaseInputW: state.inputPowerW / 3,
    efficiencyPercent: 100 * state.efficiencyRatio,
    shaftHp: horsepowerOfWatts(Math.max(0, state.shaftPowerW)),
    breakdownTorqueNm: top.torqueNm,
    breakdownSlipRatio: top.slipRatio,
    breakdownRpm: top.speedRpm,
    startA: start.lineCurrentA,
    startTorqueNm: start.torqueNm,
    startTorqueLbFt: start.torqueNm / POUND_FOOT_NM,
    startPowerFactor: start.powerFactor,
    startRotorA: held.rotorCurrentA,
    startAngleDeg: complexAngleDeg(held.phaseCurrent),
  };
};

export const mostPower: Solver = (given) => {
  const supply = {
    circuit: starCircuit(given),
    lineVoltageV: need(given, 'phaseVoltageV') * Math.sqrt(3),
    frequencyHz: need(given, 'frequencyHz'),
  };
  const at = (slipRatio: number) => machineState({ ...supply, slipRatio });
  const slopeAt = (slip: number): number =>
    at(slip + 1e-6).mechanicalPowerW - at(slip - 1e-6).mechanicalPowerW;
  const slip = bracketedRoot({ lower: 0.01, upper: 0.9, valueAt: slopeAt });
  const top = breakdown(supply);
  return {
    mostPowerSlipRatio: slip,
    mostPowerW: at(slip).mechanicalPowerW,
    mostPowerTorqueNm: at(slip).electromagneticTorqueNm,
    breakdownSlipRatio: top.slipRatio,
    breakdownTorqueNm: top.torqueNm,
    breakdownPowerW: at(top.slipRatio).mechanicalPowerW,
  };
};

export const fromTests: Solver = (given) => {
  const readings = (name: string) => ({
    lineVoltageV: need(given, `${name}V`),
    currentA: need(given, `${name}A`),
    inputPowerW: need(given, `${name}W`),
  });
  const field = { polePairs: need(given, 'polePairs'), frequencyHz: need(given, 'frequencyHz') };
  const circuit = circuitFromTests({
    ...field,
    statorResistanceOhm: need(given, 'statorResistanceOhm'),
    statorToRotorRatio: need(given, 'statorToRotorRatio'),
    noLoad: readings('free'),
    lockedRotor: { ...readings('held'), frequencyHz: need(given, 'heldHz') },
  });
  const gapW = need(given, 'startW') - 3 * need(given, 'startA') ** 2 * circuit.statorResistanceOhm;
  return {
    rotationalLossW: circuit.rotationalLossW ?? Number.NaN,
    rotorResistanceOhm: circuit.rotorResistanceOhm,
    statorReactanceOhm: circuit.statorReactanceOhm,
    rotorReactanceOhm: circuit.rotorReactanceOhm,
    magnetisingReactanceOhm: circuit.magnetisingReactanceOhm ?? Number.NaN,
    startTorqueNm: gapW / synchronousSpeed(field).speedRadPerS,
  };
};

export const fromLosses: Solver = (given) => {
  const balance = energyBalance({
    shaftPowerW: need(given, 'shaftPowerW'),
    efficiencyRatio: need(given, 'efficiencyRatio'),
    statorLossW: need(given, 'statorLossW'),
    coreLossW: need(given, 'coreLossW'),
    rotorLossW: need(given, 'rotorLossW'),
  });
  const speedRpm = need(given, 'synchronousRpm') * (1 - balance.slipRatio);
  return {
    ...balance,
    speedRpm,
    powerFactor: balance.inputPowerW / (Math.sqrt(3) * need(given, 'voltageV') * need(given, 'currentA')),
    shaftTorqueLbFt: ratedLbFt(need(given, 'horsepower'), speedRpm),
  };
};

export const klossPoints: Solver = (given) => {
  const top = {
    breakdownTorqueNm: need(given, 'breakdownTorque'),
    breakdownSlipRatio: need(given, 'breakdownSlipRatio'),
  };
  return {
    runningTorqueLbFt: klossTorque({ ...top, slipRatio: need(given, 'runningSlipRatio') }),
    startTorqueLbFt: klossTorque({ ...top, slipRatio: 1 }),
  };
};

export const klossFromCurrent: Solver = (given) =>
  torqueFromStartingCurrent({
    startingCurrentRatio: need(given, 'startingCurrentRatio'),
    ratedSlipRatio: need(given, 'ratedSlipRatio'),
  });

export const klossFromRatios: Solver = (given) => {
  const breakdownSlipRatio = klossBreakdownSlip({
    breakdownTorqueRatio: need(given, 'breakdownByStartRatio'),
    slipRatio: 1,
    isRunning: false,
  });
  // Where pull-out lies at s_b for a rated point of slip 1, the rated point of this machine has s_b times that slip.
  const ratedSlipRatio =
    breakdownSlipRatio /
    klossBreakdownSlip({
      breakdownTorqueRatio: need(given, 'breakdownByRatedRatio'),
      slipRatio: 1,
      isRunning: true,
    });
  const startByRated = need(given, 'breakdownByRatedRatio') / need(given, 'breakdownByStartRatio');
  // The current whose start torque is the wanted one.
  const startingCurrentRatio = bracketedRoot({
    lower: 1.01,
    upper: 10,
    valueAt: (ratio) =>
      torqueFromStartingCurrent({ startingCurrentRatio: ratio, ratedSlipRatio }).startingTorqueRatio -
      startByRated,
  });
  return { breakdownSlipRatio, ratedSlipRatio, startingCurrentRatio };
};

export const otherSupply: Solver = (given) => {
  const voltageRatio = need(given, 'toV') / need(given, 'fromV');
  const frequencyRatio = (given['toHz'] ?? 1) / (given['fromHz'] ?? 1);
  const horsepower = given['horsepower'];
  if (horsepower !== undefined) {
    const rated = ratedLbFt(horsepower, need(given, 'speedRpm'));
    const startTorque = rated * need(given, 'startTorqueRatio');
    return {
      fallLbFt: rated - startAtSupply({ currentA: 0, torqueNm: rated, voltageRatio }).torqueNm,
      startTorqueLbFt: startAtSupply({ currentA: 0, torqueNm: startTorque, voltageRatio }).torqueNm,
    };
  }
  const { currentA, torqueNm } = startAtSupply({
    currentA: given['currentA'] ?? 0,
    torqueNm: need(given, 'torque'),
    voltageRatio,
    frequencyRatio,
  });
  return { currentA, torqueNm, torqueLbFt: torqueNm };
};

/** No stator resistance and one reactance of 1 Ω, so that the slip of pull-out is the rotor resistance. */
export const otherFrequency: Solver = (given) => {
  const circuit = starCircuit({
    polePairs: 2,
    frequencyHz: need(given, 'fromHz'),
    statorResistanceOhm: 0,
    statorReactanceOhm: 0.5,
    rotorReactanceOhm: 0.5,
    rotorResistanceOhm: need(given, 'breakdownSlipRatio'),
  });
  const [before, after] = [need(given, 'fromHz'), need(given, 'toHz')].map((frequencyHz) => {
    const supply = { circuit, lineVoltageV: 400, frequencyHz };
    return { start: lockedRotor(supply), top: breakdown(supply) };
  });
  return {
    startCurrentRatio: (after?.start.lineCurrentA ?? 0) / (before?.start.lineCurrentA ?? 0),
    breakdownTorqueRatio: (after?.top.torqueNm ?? 0) / (before?.top.torqueNm ?? 0),
  };
};

export const starAndDeltaStart: Solver = (given) => {
  const half = need(given, 'reactanceOhm') / 2;
  const star = starCircuit({ ...given, statorReactanceOhm: half, rotorReactanceOhm: half });
  const start = (circuit: EquivalentCircuit, lineVoltageV: number, frequencyHz: number) =>
    lockedRotor({ circuit, lineVoltageV, frequencyHz });
  const lineVoltageV = need(given, 'lineVoltageV');
  const frequencyHz = need(given, 'frequencyHz');
  const inStar = start(star, lineVoltageV, frequencyHz);
  const inDelta = start({ ...star, connection: 'delta' }, lineVoltageV, frequencyHz);
  const low = start(star, need(given, 'lowV'), need(given, 'lowHz'));
  return {
    starA: inStar.lineCurrentA,
    starTorqueNm: inStar.torqueNm,
    deltaA: inDelta.lineCurrentA,
    deltaTorqueNm: inDelta.torqueNm,
    lowA: low.lineCurrentA,
    lowTorqueNm: low.torqueNm,
  };
};

/** The book takes slip for small, that is a rotor of resistance alone. */
export const sameTorqueLessVoltage: Solver = (given) => {
  const circuit = starCircuit({
    ...given,
    slipRatio: 0,
    statorResistanceOhm: 0,
    statorReactanceOhm: 0,
    rotorReactanceOhm: 1e-6,
    rotorResistanceOhm: 1,
  });
  const frequencyHz = need(given, 'frequencyHz');
  const before = machineState({
    circuit,
    lineVoltageV: 400,
    frequencyHz,
    slipRatio: need(given, 'slipRatio'),
  });
  const lower = { circuit, lineVoltageV: 400 * need(given, 'voltageRatio'), frequencyHz };
  const slipRatio = slipForTorque({ ...lower, torqueNm: before.shaftTorqueNm });
  const after = machineState({ ...lower, slipRatio });
  return {
    slipFactor: slipRatio / before.slipRatio,
    rotorCurrentFactor: after.rotorCurrentA / before.rotorCurrentA,
    rotorLossFactor: after.rotorLossW / before.rotorLossW,
    speedRpm: after.speedRpm,
  };
};
