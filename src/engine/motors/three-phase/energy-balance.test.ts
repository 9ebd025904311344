import { describe, expect, it } from 'vitest';
import { energyBalance } from './energy-balance.ts';
import { torqueOfPower } from './synchronous-speed.ts';

describe('energyBalance and torqueOfPower', () => {
  it('leave the rotational loss over, and refuse losses that are more than there is', () => {
    const given = { shaftPowerW: 900, efficiencyRatio: 0.9, statorLossW: 40, coreLossW: 20, rotorLossW: 30 };
    const balance = energyBalance(given);
    expect(balance.inputPowerW).toBeCloseTo(1000, 9);
    expect(balance.airGapPowerW).toBeCloseTo(940, 9);
    expect(balance.slipRatio).toBeCloseTo(30 / 940, 12);
    expect(balance.rotationalLossW).toBeCloseTo(10, 9);
    expect(() => energyBalance({ ...given, rotorLossW: 41 })).toThrow(/rotorLossW/);
  });

  it('refuse a shaft that stands still', () => {
    expect(() => torqueOfPower({ powerW: 100, speedRpm: 0 })).toThrow(/speedRpm/);
  });
});
