import { describe, expect, it } from 'vitest';
import { neutralCurrent } from './neutral-current.ts';
import { threePhaseLoad } from './three-phase-load.ts';
import { twoWattmeter } from './two-wattmeter.ts';

describe('threePhaseLoad', () => {
  const impedance = { re: 3, im: -4 };

  it('draws three times as much in delta as in star', () => {
    const star = threePhaseLoad({ connection: 'star', impedance, lineVoltageV: 300 });
    const delta = threePhaseLoad({ connection: 'delta', impedance, lineVoltageV: 300 });
    expect(delta).toMatchObject({
      phaseVoltageV: 300,
      phaseCurrentA: 60,
      realPowerW: 32_400,
      reactivePowerVar: -43_200,
    });
    expect(delta.lineCurrentA).toBeCloseTo(60 * Math.sqrt(3), 9);
    expect(delta.lineCurrentA / star.lineCurrentA).toBeCloseTo(3, 12);
    expect(delta.realPowerW / star.realPowerW).toBeCloseTo(3, 12);
    expect(star.lineCurrentA).toBe(star.phaseCurrentA);
    expect(star.apparentPowerVa).toBeCloseTo(Math.sqrt(3) * 300 * star.lineCurrentA, 9);
  });

  it('rejects a short circuit and no voltage', () => {
    expect(() =>
      threePhaseLoad({ connection: 'star', impedance: { re: 0, im: 0 }, lineVoltageV: 300 }),
    ).toThrow(/impedance/);
    expect(() => threePhaseLoad({ connection: 'star', impedance, lineVoltageV: 0 })).toThrow(/lineVoltageV/);
  });
});

describe('twoWattmeter', () => {
  it('reads one meter as nought at a power factor of one half, lagging if it is the first', () => {
    expect(twoWattmeter({ firstW: 0, secondW: 100 })).toMatchObject({
      realPowerW: 100,
      direction: 'lagging',
    });
    expect(twoWattmeter({ firstW: 0, secondW: 100 }).powerFactor).toBeCloseTo(0.5, 12);
    expect(twoWattmeter({ firstW: 100, secondW: 0 }).direction).toBe('leading');
    expect(twoWattmeter({ firstW: 50, secondW: 50 }).powerFactor).toBe(1);
  });

  it('takes a reading below nought, but not a sum below nought', () => {
    expect(twoWattmeter({ firstW: -50, secondW: 50 }).powerFactor).toBe(0);
    expect(() => twoWattmeter({ firstW: -51, secondW: 50 })).toThrow(/firstW/);
  });
});

describe('neutralCurrent', () => {
  it('is the whole current of one loaded phase, at that phase’s angle', () => {
    const { currentA, angleDeg } = neutralCurrent({
      phases: [{ currentA: 0 }, { currentA: 10, lagDeg: 30 }, { currentA: 0 }],
    });
    expect(currentA).toBeCloseTo(10, 12);
    expect(angleDeg).toBeCloseTo(-150, 12);
  });

  it('adds third and ninth harmonics in full and cancels the others when balanced', () => {
    const phases = [{ currentA: 2 }, { currentA: 2 }, { currentA: 2 }] as const;
    for (const harmonicOrder of [1, 2, 5, 7, 11, 13])
      expect(neutralCurrent({ phases, harmonicOrder }).currentA).toBeCloseTo(0, 12);
    for (const harmonicOrder of [3, 9, 15, 21])
      expect(neutralCurrent({ phases, harmonicOrder }).currentA).toBe(6);
  });

  it('rejects a negative current and an order that is not whole', () => {
    const phases = [{ currentA: 2 }, { currentA: -2 }, { currentA: 2 }] as const;
    expect(() => neutralCurrent({ phases })).toThrow(/phases\[1\]/);
    const good = [{ currentA: 2 }, { currentA: 2 }, { currentA: 2 }] as const;
    for (const harmonicOrder of [0, 1.5, Number.NaN])
      expect(() => neutralCurrent({ phases: good, harmonicOrder })).toThrow(/harmonicOrder/);
  });
});
