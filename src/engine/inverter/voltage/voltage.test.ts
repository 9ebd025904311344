import { describe, expect, it } from 'vitest';
import { continuousCurrentA } from '../allowed-heat.ts';
import { bracketedRoot } from '../bracketed-root.ts';
import { currentForTime } from '../current-for-time.ts';
import { exampleModel as model } from '../example-model.ts';
import { overloadLevel } from '../overload-level.ts';
import { largestRoot } from './largest-root.ts';
import { voltageUnderLimit } from './voltage-under-limit.ts';
import { noLoad, type ZipLoad, zipPowerW } from './zip-load.ts';

const watts = (realW: number, reactiveVar = 0) => ({ realW, reactiveVar });
const load = (parts: Partial<ZipLoad>): ZipLoad => ({ ...noLoad, ...parts });
const at = (parts: Partial<ZipLoad>, limitA = 10) =>
  voltageUnderLimit({ load: load(parts), nominalV: 200, limitA });

describe('voltageUnderLimit', () => {
  it('holds the voltage on the limit, and not just above it', () => {
    expect(at({ impedance: watts(2000) })).toEqual({
      held: true,
      voltageRatio: 1,
      voltageV: 200,
      currentA: 10,
      demandA: 10,
      collapsed: false,
    });
    expect(at({ impedance: watts(1999) }).held).toBe(true);
    const above = at({ impedance: watts(2001) });
    expect(above.held).toBe(false);
    expect(above.voltageRatio).toBeCloseTo(2000 / 2001, 12);
  });

  it('gives limit over admittance for impedances, whatever their angle', () => {
    expect(at({ impedance: watts(2500) }).voltageV).toBe(160);
    expect(at({ impedance: watts(1500, 2000) }).voltageV).toBe(160);
    expect(at({ impedance: watts(2500) }).currentA).toBe(10);
  });

  it('solves impedance with constant current in the open', () => {
    // 10 = 10·v + 4
    expect(at({ impedance: watts(2000), current: watts(800) }).voltageRatio).toBeCloseTo(0.6, 12);
  });

  it('takes the upper of two voltages with constant power', () => {
    // 10 = 8·v + 3/v: v = (10 ± 2)/16
    expect(at({ impedance: watts(1600), power: watts(600) }).voltageRatio).toBeCloseTo(0.75, 12);
  });

  it('adds shares as phasors, not as magnitudes', () => {
    expect(at({ impedance: watts(1200), current: watts(0, 1600) }).demandA).toBeCloseTo(10, 12);
    const both = at({ impedance: watts(2000), current: watts(0, 1200) });
    expect(both.voltageRatio).toBeCloseTo(0.8, 12);
  });

  it('collapses when no voltage is low enough', () => {
    const gone = at({ power: watts(2100) });
    expect(gone).toMatchObject({ held: false, collapsed: true, voltageRatio: 0, voltageV: 0, currentA: 10 });
    expect(at({ current: watts(2001) }).collapsed).toBe(true);
    // 10 = 8·v + p/v has its two solutions meet at p = 25/8 A
    expect(at({ impedance: watts(1600), power: watts(624.9) }).collapsed).toBe(false);
    expect(at({ impedance: watts(1600), power: watts(625.1) }).collapsed).toBe(true);
  });

  it('copes with lagging and leading shares that cancel in part', () => {
    const mixed = at({ impedance: watts(100, 2600), current: watts(0, -300), power: watts(200, -200) });
    const v = mixed.voltageRatio;
    expect(Math.hypot(100 * v + 200 / v, 2600 * v - 300 - 200 / v) / 200).toBeCloseTo(10, 9);
  });

  it('refuses no voltage and no limit', () => {
    expect(() => voltageUnderLimit({ load: noLoad, nominalV: 0, limitA: 1 })).toThrow('nominalV');
    expect(() => voltageUnderLimit({ load: noLoad, nominalV: 230, limitA: 0 })).toThrow('limitA');
  });

  it('lets real power fall with the square, the first power, and not at all', () => {
    const mixed = load({ impedance: watts(1000), current: watts(100), power: watts(10) });
    expect(zipPowerW(mixed, 0.5)).toBe(250 + 50 + 10);
  });
});

describe('root finding', () => {
  it('finds the largest of several roots, and none where the sign stays', () => {
    // (x − 0.2)(x − 0.5)(x − 0.9)
    expect(largestRoot([1, -1.6, 0.73, -0.09])).toBeCloseTo(0.9, 12);
    expect(largestRoot([1, 0, 1])).toBeNull();
    expect(largestRoot([1, -1, 0.26])).toBeNull();
  });

  it('needs a bracket', () => {
    expect(() => bracketedRoot({ lower: 1, upper: 2, valueAt: (x) => x })).toThrow('opposite signs');
    expect(bracketedRoot({ lower: 0, upper: 9, valueAt: (x) => x ** 9 - 1e-9 })).toBeCloseTo(0.1, 12);
    expect(bracketedRoot({ lower: 0, upper: 9, valueAt: (x) => x })).toBe(0);
  });
});

describe('overloadLevel', () => {
  it.each([
    [25, 12, 'none'],
    [25, 12.001, 'heat'],
    [25, 15, 'heat'],
    [25, 15.001, 'surge'],
    [25, 25, 'surge'],
    [25, 25.001, 'voltage-lost'],
  ] as const)('at %d °C calls %d A %s', (ambientC, demandA, level) => {
    expect(overloadLevel({ model, demandA, ambientC })).toBe(level);
  });

  it('moves its heat bounds with the ambient, not the limit', () => {
    const continuousA = continuousCurrentA({ model, ambientC: 40 });
    const longA = currentForTime({ model, timeS: 1800, ambientC: 40 });
    expect(overloadLevel({ model, demandA: continuousA, ambientC: 40 })).toBe('none');
    expect(overloadLevel({ model, demandA: longA, ambientC: 40 })).toBe('heat');
    expect(overloadLevel({ model, demandA: 14.5, ambientC: 40 })).toBe('surge');
    expect(longA).toBeLessThan(14.5);
    expect(overloadLevel({ model, demandA: 25, ambientC: 40 })).toBe('surge');
    expect(overloadLevel({ model, demandA: 1, ambientC: 99 })).toBe('surge');
  });
});
