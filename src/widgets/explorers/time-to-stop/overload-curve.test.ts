import { describe, expect, it } from 'vitest';
import { exampleModel as model, settledHeat, timeToStop } from '../../../engine/index.ts';
import { firstSetting, longestS, overloadCurve, stopAnswer, stopTime } from './overload-curve.ts';

describe('overloadCurve', () => {
  it('runs through the datasheet points at the reference ambient', () => {
    const curve = overloadCurve({ model, ambientC: 25 });
    expect(curve[0]?.currentA).toBeCloseTo(model.limitA, 6);
    const after = curve.findIndex(({ timeS }) => timeS > 1800);
    expect(curve[after - 1]?.currentA).toBeGreaterThan(15);
    expect(curve[after]?.currentA).toBeLessThan(15);
    expect(curve.at(-1)?.timeS).toBeCloseTo(longestS, 3);
    expect(curve.at(-1)?.currentA).toBeGreaterThan(12);
  });
  it('falls in current as time grows, and agrees with timeToStop', () => {
    const place = { model, ambientC: 45, heat: settledHeat(model, 6) };
    const curve = overloadCurve(place);
    for (const [i, point] of curve.entries()) {
      if (i > 0) expect(point.currentA).toBeLessThan(curve[i - 1]?.currentA ?? 0);
      expect(timeToStop({ ...place, currentA: point.currentA }).timeS).toBeCloseTo(point.timeS, 3);
    }
  });
  it('has no points where the unit is too hot to start', () => {
    expect(overloadCurve({ model, ambientC: 60, heat: settledHeat(model, 12) })).toEqual([]);
  });
});

describe('stopTime', () => {
  it('returns the cycles of lost voltage above the limit, and never more than heat allows', () => {
    expect(stopTime({ model, ambientC: 25, currentA: model.limitA * 1.2 })).toBe(0.5);
    expect(stopTime({ model, ambientC: 25, currentA: 10 })).toBeNull();
    expect(stopTime({ model, ambientC: 60, heat: settledHeat(model, 12), currentA: 40 })).toBe(0);
  });
});

describe('stopAnswer', () => {
  it('returns the level and its bounds in order, also when hot and high', () => {
    const answer = stopAnswer(model, { ...firstSetting('example', model), ambientC: 50, altitudeM: 2000 });
    expect(answer.level).toBe('surge');
    const { continuousA, longDurationA, limitA } = answer.bounds;
    expect(continuousA).toBeLessThan(12);
    expect(longDurationA).toBeGreaterThan(continuousA);
    expect(limitA).toBeGreaterThan(longDurationA);
    expect(answer.timeS).toBeGreaterThan(0);
  });
});
