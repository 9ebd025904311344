import { describe, expect, it } from 'vitest';
import { loadCurrent } from './load-current.ts';

describe('loadCurrent', () => {
  it('divides apparent power by voltage, and by √3 more for three phases', () => {
    expect(loadCurrent({ apparentPowerVa: 2300, voltageV: 230, phases: 1 })).toEqual({
      currentA: 10,
      apparentPowerVa: 2300,
    });
    const three = loadCurrent({ apparentPowerVa: 400 * 10 * Math.sqrt(3), voltageV: 400, phases: 3 });
    expect(three.currentA).toBeCloseTo(10, 12);
  });

  it('divides real power by power factor and efficiency', () => {
    const load = { realPowerW: 920, voltageV: 230, phases: 1 } as const;
    expect(loadCurrent(load).currentA).toBeCloseTo(4, 12);
    expect(loadCurrent({ ...load, powerFactor: 0.8 }).currentA).toBeCloseTo(5, 12);
    expect(loadCurrent({ ...load, powerFactor: 0.8, efficiencyRatio: 0.5 })).toEqual({
      currentA: 10,
      apparentPowerVa: 2300,
    });
  });

  it('rejects limits overstepped and accepts the limits themselves', () => {
    const load = { realPowerW: 920, voltageV: 230, phases: 1 } as const;
    expect(loadCurrent({ ...load, realPowerW: 0 }).currentA).toBe(0);
    expect(() => loadCurrent({ ...load, realPowerW: -1 })).toThrow(/realPowerW/);
    expect(() => loadCurrent({ ...load, voltageV: 0 })).toThrow(/voltageV/);
    expect(() => loadCurrent({ ...load, powerFactor: 0 })).toThrow(/powerFactor/);
    expect(() => loadCurrent({ ...load, powerFactor: 1.001 })).toThrow(/powerFactor/);
    expect(() => loadCurrent({ ...load, efficiencyRatio: 1.001 })).toThrow(/efficiencyRatio/);
    expect(() => loadCurrent({ apparentPowerVa: -1, voltageV: 230, phases: 1 })).toThrow(/apparentPowerVa/);
    // @ts-expect-error two phases are not a case of this function
    expect(() => loadCurrent({ ...load, phases: 2 })).toThrow(/phases/);
    // @ts-expect-error either kind of power, not both
    expect(() => loadCurrent({ ...load, apparentPowerVa: 5 })).toThrow(/either/);
  });
});
