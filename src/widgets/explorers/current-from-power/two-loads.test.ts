import { describe, expect, it } from 'vitest';
import { firstPowerSetting, powerAnswer, squareVa } from './two-loads.ts';

describe('powerAnswer', () => {
  it('returns the same watts, and heat as the square of the current ratio', () => {
    const answer = powerAnswer({ ...firstPowerSetting, powerFactorB: 0.5 });
    expect(answer.a.currentA).toBeCloseTo(1000 / 230, 9);
    expect(answer.b.realPowerW).toBe(1000);
    expect(answer.currentRatio).toBeCloseTo(2, 9);
    expect(answer.heatRatio).toBeCloseTo(4, 9);
  });
});

describe('squareVa', () => {
  it('returns a round size in which both triangles fit', () => {
    const squares = { across: 8, up: 9 };
    for (const realPowerW of [100, 730, 1000, 3000]) {
      for (const powerFactorB of [0.3, 0.6, 0.95, 1]) {
        const answer = powerAnswer({ ...firstPowerSetting, realPowerW, powerFactorB });
        const size = squareVa(answer, squares);
        expect(answer.b.realPowerW / size).toBeLessThanOrEqual(squares.across * (1 + 1e-9));
        expect(answer.b.reactivePowerVar / size).toBeLessThanOrEqual(squares.up * (1 + 1e-9));
        expect(Number(size.toPrecision(2))).toBe(size);
      }
    }
  });
});
