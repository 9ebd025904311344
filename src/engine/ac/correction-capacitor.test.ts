import { describe, expect, it } from 'vitest';
import { correctionCapacitor } from './correction-capacitor.ts';
import { reactivePowerCapacitor } from './reactive-power-capacitor.ts';

const load = {
  realPowerW: 3000,
  powerFactor: 0.6,
  targetPowerFactor: 1,
  voltageV: 400,
  frequencyHz: 50,
  connection: 'delta',
} as const;

describe('correctionCapacitor', () => {
  it('supplies the whole reactive power for a target of 1, and none for the power factor it has', () => {
    expect(correctionCapacitor(load).reactivePowerVar).toBeCloseTo(4000, 9);
    expect(correctionCapacitor({ ...load, targetPowerFactor: 0.6 })).toEqual({
      reactivePowerVar: 0,
      capacitanceF: 0,
      lineCurrentA: 0,
    });
  });

  it('rejects a target below the power factor it has, or above 1', () => {
    expect(() => correctionCapacitor({ ...load, targetPowerFactor: 0.599 })).toThrow(/targetPowerFactor/);
    expect(() => correctionCapacitor({ ...load, targetPowerFactor: 1.001 })).toThrow(/targetPowerFactor/);
  });
});

describe('reactivePowerCapacitor', () => {
  const given = { reactivePowerVar: 3000, voltageV: 400, frequencyHz: 50 };

  it('needs three times the capacitance in star that it needs in delta, for the same line current', () => {
    const star = reactivePowerCapacitor({ ...given, connection: 'star' });
    const delta = reactivePowerCapacitor({ ...given, connection: 'delta' });
    expect(star.capacitanceF / delta.capacitanceF).toBeCloseTo(3, 12);
    expect(star.lineCurrentA).toBe(delta.lineCurrentA);
    // One branch in delta: 1000 var at 400 V are 2.5 A, and √3 times that in the line.
    expect(delta.lineCurrentA).toBeCloseTo(2.5 * Math.sqrt(3), 12);
    expect(2 * Math.PI * 50 * delta.capacitanceF * 400).toBeCloseTo(2.5, 12);
  });

  it('gives the current of a single capacitor', () => {
    const single = reactivePowerCapacitor({ ...given, connection: 'single-phase' });
    expect(single.lineCurrentA).toBe(7.5);
    expect(2 * Math.PI * 50 * single.capacitanceF * 400).toBeCloseTo(7.5, 12);
  });

  it('rejects values outside their limits', () => {
    expect(() => reactivePowerCapacitor({ ...given, reactivePowerVar: -1, connection: 'star' })).toThrow(
      /reactivePowerVar/,
    );
    expect(() => reactivePowerCapacitor({ ...given, voltageV: 0, connection: 'star' })).toThrow(/voltageV/);
    expect(() => reactivePowerCapacitor({ ...given, frequencyHz: 0, connection: 'star' })).toThrow(
      /frequencyHz/,
    );
  });
});
