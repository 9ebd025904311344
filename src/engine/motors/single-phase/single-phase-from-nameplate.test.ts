import { describe, expect, it } from 'vitest';
import { exampleSinglePhasePlate } from './example-single-phase-motor.ts';
import { singlePhaseFromNameplate } from './single-phase-from-nameplate.ts';
import { singlePhaseMotorState } from './single-phase-motor-state.ts';
import type { SinglePhaseNameplate } from './single-phase-nameplate.ts';

const kinds = ['split-phase', 'capacitor-start', 'capacitor-run', 'permanent-capacitor'] as const;

describe('a motor made from its plate', () => {
  it.each(kinds)('has every figure of the plate: %s', (kind) => {
    const plate = exampleSinglePhasePlate(kind);
    const motor = singlePhaseFromNameplate(plate);
    const synchronousRpm = 3000 / motor.circuit.polePairs;
    const running = singlePhaseMotorState(motor, {
      voltageV: 230,
      slipRatio: 1 - plate.ratedSpeedRpm / synchronousRpm,
    });
    const locked = singlePhaseMotorState(motor, { voltageV: 230, slipRatio: 1 });
    expect(running.shaftPowerW).toBeCloseTo(plate.ratedPowerW, 2);
    expect(running.efficiencyRatio).toBeCloseTo(plate.efficiencyRatio, 5);
    expect(running.powerFactor).toBeCloseTo(plate.powerFactor, 5);
    expect(running.reactivePowerVar).toBeGreaterThan(0);
    expect(locked.currentA / running.currentA).toBeCloseTo(plate.lockedRotorCurrentRatio, 4);
    expect(locked.torqueNm / running.shaftTorqueNm).toBeCloseTo(plate.lockedRotorTorqueRatio, 4);
  });

  it.each(kinds)('pulls more than rated torque somewhere on its running side: %s', (kind) => {
    const plate = exampleSinglePhasePlate(kind);
    const motor = singlePhaseFromNameplate(plate);
    const ratedNm = plate.ratedPowerW / ((plate.ratedSpeedRpm * Math.PI) / 30);
    const torques = [0.05, 0.1, 0.15, 0.2, 0.25].map(
      (slipRatio) => singlePhaseMotorState(motor, { voltageV: 230, slipRatio }).torqueNm,
    );
    expect(Math.max(...torques)).toBeGreaterThan(1.4 * ratedNm);
  });

  it('says what is assumed', () => {
    expect(singlePhaseFromNameplate(exampleSinglePhasePlate('split-phase')).assumed).not.toContain(
      'fitted-capacitors',
    );
    expect(singlePhaseFromNameplate(exampleSinglePhasePlate('permanent-capacitor')).assumed).not.toContain(
      'switch-speed',
    );
    expect(singlePhaseFromNameplate(exampleSinglePhasePlate('capacitor-run')).assumed).toContain(
      'fitted-capacitors',
    );
  });
});

describe('a plate that cannot be', () => {
  const plate = exampleSinglePhasePlate('capacitor-start');
  const refusal = (change: Partial<SinglePhaseNameplate>) => () =>
    singlePhaseFromNameplate({ ...plate, ...change });

  it.each([
    ['ratedPowerW', 0],
    ['ratedPowerW', -750],
    ['voltageV', 0],
    ['frequencyHz', -50],
    ['efficiencyRatio', 1],
    ['efficiencyRatio', 1.1],
    ['powerFactor', 1.2],
    ['ratedSpeedRpm', 3000],
    ['ratedSpeedRpm', 1500],
    ['ratedSpeedRpm', 1100],
    ['lockedRotorCurrentRatio', 0.8],
    ['lockedRotorTorqueRatio', 0],
    ['lockedRotorTorqueRatio', -1],
  ] as const)('is refused by the name of its field: %s %f', (field, value) => {
    expect(refusal({ [field]: value })).toThrow(new RegExp(`^${field}: expected .* found ${value}`));
  });

  it('is refused when the slip alone costs more than all losses', () => {
    // By hand: at 1350 rpm the slip is 0.1, the rotor loses 750·0.1/0.9 = 83.3 W; η ≤ 750/833.3 = 0.900.
    expect(refusal({ ratedSpeedRpm: 1350, efficiencyRatio: 0.91 })).toThrow(
      /^efficiencyRatio: expected below 0\.900/,
    );
  });

  it('is refused when the starting torque needs more power than the locked-rotor current carries', () => {
    // By hand: 230 V·29.11 A = 6696 VA over 157.1 rad/s = 42.63 N·m, by 5.008 N·m rated.
    expect(refusal({ lockedRotorTorqueRatio: 9 })).toThrow(/^lockedRotorTorqueRatio: expected below 8\.51/);
  });

  it('is refused when no motor of its kind has it, with the figure that does not fit', () => {
    expect(refusal({ kind: 'split-phase', lockedRotorTorqueRatio: 7 })).toThrow(
      /^lockedRotorTorqueRatio: expected a value that a split-phase motor .* which is lower, found 7/,
    );
    expect(refusal({ powerFactor: 1 })).toThrow(/^powerFactor: .* which is lower, found 1/);
  });
});
