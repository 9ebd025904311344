import { describe, expect, it } from 'vitest';
import { rebalance } from './shares.ts';

describe('rebalance', () => {
  it('keeps the sum at 100 and the others in proportion', () => {
    expect(rebalance({ impedance: 60, current: 10, power: 30 }, 'impedance', 20)).toEqual({
      impedance: 20,
      current: 20,
      power: 60,
    });
  });
  it('divides alike when the others were nought', () => {
    expect(rebalance({ impedance: 100, current: 0, power: 0 }, 'impedance', 51)).toEqual({
      impedance: 51,
      current: 25,
      power: 24,
    });
  });
  it('keeps every share between 0 and 100 for all settings', () => {
    for (let power = 0; power <= 100; power++) {
      const shares = rebalance({ impedance: 33, current: 67, power: 0 }, 'power', power);
      expect(shares.impedance + shares.current + shares.power).toBe(100);
      expect(Math.min(shares.impedance, shares.current, shares.power)).toBeGreaterThanOrEqual(0);
    }
  });
});
