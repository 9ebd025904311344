import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  mainWindingState,
  type SinglePhaseCircuit,
  type SinglePhaseMotor,
  type SinglePhaseState,
  singlePhaseFromNameplate,
  singlePhaseMotorState,
  twoWindingState,
} from '../../src/engine/motors/single-phase/index.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const anyCircuit: fc.Arbitrary<SinglePhaseCircuit> = fc.record({
  mainResistanceOhm: between(0.3, 10),
  mainReactanceOhm: between(0.3, 10),
  magnetizingReactanceOhm: between(30, 200),
  rotorResistanceOhm: between(0.5, 12),
  rotorReactanceOhm: between(0.3, 10),
  frequencyHz: fc.constantFrom(50, 60),
  polePairs: fc.constantFrom(1, 2, 3),
  rotationalLossW: between(0, 60),
  rotationalLossSpeedRpm: fc.constant(900),
});
const anyBranch = fc.record({
  auxiliary: fc.record({
    turnsRatio: between(0.5, 2),
    resistanceOhm: between(1, 30),
    reactanceOhm: between(0.5, 20),
  }),
  series: fc.record({ re: between(0, 5), im: between(-60, 0) }),
});
const anyPoint = fc.record({ voltageV: between(50, 250), slipRatio: between(-0.2, 2) });

const closeTo = (value: number, expected: number, size: number) =>
  expect(Math.abs(value - expected)).toBeLessThan(1e-10 * (1 + Math.abs(size)));

const holdsBalance = (state: SinglePhaseState) => {
  const size = state.apparentPowerVa;
  closeTo(state.inputPowerW, state.statorLossW + state.rotorLossW + state.mechanicalPowerW, size);
  closeTo(state.mechanicalPowerW, state.shaftPowerW + state.rotationalLossW, size);
  closeTo(
    state.forwardAirGapPowerW + state.backwardAirGapPowerW,
    state.rotorLossW + state.mechanicalPowerW,
    size,
  );
  closeTo(state.torqueNm, state.forwardTorqueNm + state.backwardTorqueNm, state.forwardTorqueNm);
};

describe('the main winding alone', () => {
  it('has no starting torque', () => {
    fc.assert(
      fc.property(anyCircuit, between(50, 250), (circuit, voltageV) => {
        const state = mainWindingState(circuit, { voltageV, slipRatio: 1 });
        expect(Math.abs(state.torqueNm)).toBeLessThan(1e-12 * state.forwardTorqueNm);
      }),
    );
  });

  it('pulls the same either way, in the way it turns', () => {
    fc.assert(
      fc.property(anyCircuit, anyPoint, (circuit, point) => {
        const there = mainWindingState(circuit, point);
        const back = mainWindingState(circuit, { ...point, slipRatio: 2 - point.slipRatio });
        closeTo(there.torqueNm, -back.torqueNm, there.forwardTorqueNm);
        closeTo(there.currentA, back.currentA, there.currentA);
      }),
    );
  });

  it('turns all power it takes into losses and shaft power', () => {
    fc.assert(
      fc.property(anyCircuit, anyPoint, (circuit, point) => holdsBalance(mainWindingState(circuit, point))),
    );
  });
});

describe('main and auxiliary winding', () => {
  it('turn all power they take into losses and shaft power', () => {
    fc.assert(
      fc.property(anyCircuit, anyBranch, anyPoint, (circuit, branch, point) =>
        holdsBalance(twoWindingState(circuit, branch, point)),
      ),
      { numRuns: 500 },
    );
  });

  it('start the other way with the auxiliary winding reversed', () => {
    fc.assert(
      fc.property(anyCircuit, anyBranch, anyPoint, (circuit, branch, point) => {
        const there = twoWindingState(circuit, branch, point);
        const back = twoWindingState(
          circuit,
          { ...branch, isReversed: true },
          { ...point, slipRatio: 2 - point.slipRatio },
        );
        closeTo(there.torqueNm, -back.torqueNm, there.forwardTorqueNm);
        closeTo(there.currentA, back.currentA, there.currentA);
      }),
    );
  });

  it('start in the direction from the leading current to the lagging one', () => {
    fc.assert(
      fc.property(anyCircuit, anyBranch, (circuit, branch) => {
        const {
          mainCurrent: main,
          auxiliaryCurrent: aux,
          torqueNm,
        } = twoWindingState(circuit, branch, {
          voltageV: 230,
          slipRatio: 1,
        });
        const lead = main.re * aux.im - main.im * aux.re;
        fc.pre(Math.abs(lead) > 1e-6);
        expect(Math.sign(torqueNm)).toBe(Math.sign(lead));
      }),
    );
  });

  it('draw current with voltage, pull with its square', () => {
    fc.assert(
      fc.property(anyCircuit, anyBranch, anyPoint, between(0.2, 1), (circuit, branch, point, dip) => {
        const full = twoWindingState(circuit, branch, point);
        const dipped = twoWindingState(circuit, branch, { ...point, voltageV: point.voltageV * dip });
        closeTo(dipped.currentA, dip * full.currentA, full.currentA);
        closeTo(dipped.torqueNm, dip * dip * full.torqueNm, full.forwardTorqueNm);
        closeTo(dipped.capacitorVoltageV, dip * full.capacitorVoltageV, full.capacitorVoltageV);
      }),
    );
  });
});

/** Motors of ordinary build, of which plates are read: so a motor with such a plate is known to exist. */
const builtMotor: fc.Arbitrary<SinglePhaseMotor> = fc
  .record({
    kind: fc.constantFrom('split-phase', 'capacitor-start', 'permanent-capacitor', 'capacitor-run'),
    size: between(0.2, 3),
    main: between(0.7, 1.4),
    rotor: between(0.7, 1.4),
    leakage: between(0.7, 1.4),
    turns: between(0.8, 1.6),
    capacitor: between(0.8, 1.25),
  })
  .map(({ kind, size, main, rotor, leakage, turns, capacitor }) => ({
    kind,
    circuit: {
      mainResistanceOhm: (3 * main) / size,
      mainReactanceOhm: (3.5 * leakage) / size,
      magnetizingReactanceOhm: 90 / size,
      rotorResistanceOhm: (3.7 * rotor) / size,
      rotorReactanceOhm: (3.5 * leakage) / size,
      frequencyHz: 50,
      polePairs: 2,
      rotationalLossW: 60 * size,
      rotationalLossSpeedRpm: 1430,
    },
    auxiliary: {
      turnsRatio: turns,
      resistanceOhm: ((kind === 'split-phase' ? 12 : 5) * turns ** 2) / size,
      reactanceOhm: (3.5 * turns ** 2 * leakage) / size,
    },
    startCapacitorF: (180e-6 * capacitor * size) / turns ** 2,
    runCapacitorF: (45e-6 * capacitor * size) / turns ** 2,
  }));

describe('a plate', () => {
  it('read from a motor leads to a motor that has it', () => {
    fc.assert(
      fc.property(builtMotor, between(0.03, 0.07), (motor, slipRatio) => {
        const running = singlePhaseMotorState(motor, { voltageV: 230, slipRatio });
        const locked = singlePhaseMotorState(motor, { voltageV: 230, slipRatio: 1 });
        fc.pre(running.efficiencyRatio > 0.4 && running.reactivePowerVar > 0);
        const made = singlePhaseFromNameplate({
          ratedPowerW: running.shaftPowerW,
          voltageV: 230,
          frequencyHz: 50,
          efficiencyRatio: running.efficiencyRatio,
          powerFactor: running.powerFactor,
          ratedSpeedRpm: 1500 * (1 - slipRatio),
          lockedRotorCurrentRatio: locked.currentA / running.currentA,
          lockedRotorTorqueRatio: locked.torqueNm / running.shaftTorqueNm,
          kind: motor.kind,
        });
        const again = singlePhaseMotorState(made, { voltageV: 230, slipRatio });
        const start = singlePhaseMotorState(made, { voltageV: 230, slipRatio: 1 });
        expect(again.shaftPowerW / running.shaftPowerW).toBeCloseTo(1, 5);
        expect(again.currentA / running.currentA).toBeCloseTo(1, 5);
        expect(start.currentA / locked.currentA).toBeCloseTo(1, 5);
        expect(start.torqueNm / locked.torqueNm).toBeCloseTo(1, 5);
      }),
      { numRuns: 200 },
    );
  });
});
