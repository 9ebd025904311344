import { describe, expect, it } from 'vitest';
import { auxiliaryFor } from './auxiliary-for.ts';
import { exampleSinglePhaseMotor } from './example-single-phase-motor.ts';
import { singlePhaseMotorState } from './single-phase-motor-state.ts';

const inCircuit = (kind: Parameters<typeof auxiliaryFor>[0]['kind'], slipRatio: number) => {
  const { isConnected, hasStartCapacitor, hasRunCapacitor } = auxiliaryFor({ kind, slipRatio });
  return [isConnected, hasStartCapacitor, hasRunCapacitor];
};

describe('the centrifugal switch', () => {
  it.each([
    ['split-phase', [true, false, false], [false, false, false]],
    ['capacitor-start', [true, true, false], [false, false, false]],
    ['capacitor-run', [true, true, true], [true, false, true]],
    ['permanent-capacitor', [true, false, true], [true, false, true]],
  ] as const)('leaves the right parts in circuit before and after for %s', (kind, before, after) => {
    expect(inCircuit(kind, 0.3)).toEqual(before);
    expect(inCircuit(kind, 0.2)).toEqual(after);
  });

  it('stays open down to its closing speed once it has opened', () => {
    const at = (slipRatio: number, wasSwitchOpen: boolean) =>
      auxiliaryFor({ kind: 'split-phase', slipRatio, wasSwitchOpen }).isSwitchOpen;
    expect([at(0.4, false), at(0.4, true), at(0.6, true)]).toEqual([false, true, false]);
  });

  it('moves at the speeds it is given', () => {
    const at = (slipRatio: number, wasSwitchOpen: boolean) =>
      auxiliaryFor({
        kind: 'split-phase',
        slipRatio,
        wasSwitchOpen,
        switchSlipRatio: 0.1,
        recloseSlipRatio: 0.2,
      }).isSwitchOpen;
    expect([at(0.15, false), at(0.15, true), at(0.25, true), at(0.1, false)]).toEqual([
      false,
      true,
      false,
      true,
    ]);
  });

  it('refuses to close below the speed where it opens', () => {
    expect(() =>
      auxiliaryFor({ kind: 'split-phase', slipRatio: 1, switchSlipRatio: 0.3, recloseSlipRatio: 0.2 }),
    ).toThrow(/recloseSlipRatio/);
  });
});

describe('a motor with its switch', () => {
  it('gives up starting torque and current at once when the switch opens', () => {
    const motor = exampleSinglePhaseMotor('capacitor-start');
    const closed = singlePhaseMotorState(motor, { voltageV: 230, slipRatio: 0.251 });
    const open = singlePhaseMotorState(motor, { voltageV: 230, slipRatio: 0.25 });
    expect([closed.isSwitchOpen, open.isSwitchOpen]).toEqual([false, true]);
    expect(open.auxiliaryCurrent).toEqual({ re: 0, im: 0 });
    expect(open.torqueNm).toBeLessThan(closed.torqueNm);
    expect(open.currentA).toBeLessThan(closed.currentA);
  });

  it('puts the start capacitor beside the run capacitor until then', () => {
    const motor = exampleSinglePhaseMotor('capacitor-run');
    const { startCapacitorF = 0, runCapacitorF = 0 } = motor;
    const state = singlePhaseMotorState(motor, { voltageV: 230, slipRatio: 1 });
    const reactance = 1 / (2 * Math.PI * 50 * (startCapacitorF + runCapacitorF));
    const auxiliaryA = Math.hypot(state.auxiliaryCurrent.re, state.auxiliaryCurrent.im);
    expect(state.capacitorVoltageV).toBeCloseTo(auxiliaryA * reactance, 9);
  });

  it('starts harder with a start capacitor added to a permanent one', () => {
    const permanent = exampleSinglePhaseMotor('permanent-capacitor');
    const helped = { ...permanent, kind: 'capacitor-run', startCapacitorF: 40e-6 } as const;
    const at = { voltageV: 230, slipRatio: 1 };
    expect(singlePhaseMotorState(helped, at).torqueNm).toBeGreaterThan(
      1.5 * singlePhaseMotorState(permanent, at).torqueNm,
    );
  });

  it('says which capacitor is missing', () => {
    const bare = { ...exampleSinglePhaseMotor('split-phase'), kind: 'capacitor-start' } as const;
    expect(() => singlePhaseMotorState(bare, { voltageV: 230, slipRatio: 1 })).toThrow(/startCapacitorF/);
  });
});
