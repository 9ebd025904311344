import { describe, expect, it } from 'vitest';
import { allowedHeat, continuousCurrentA } from './allowed-heat.ts';
import { altitudeRatio } from './altitude-ratio.ts';
import { currentForTime } from './current-for-time.ts';
import { dutyHeat } from './duty-heat.ts';
import { exampleModel as model } from './example-model.ts';
import { heatAfter, peakHeat } from './heat-after.ts';
import { currentForHeatTargetA, heatTarget, settledHeat } from './heat-target.ts';
import { historyHeat } from './history-heat.ts';
import { currentForLossA, lossesW } from './losses.ts';
import { ratedCurrentA } from './rated-current.ts';
import { timeToHeat, timeToStop } from './time-to-heat.ts';

describe('ratedCurrentA', () => {
  it('divides watts by power factor, and leaves volt-amperes alone', () => {
    expect(ratedCurrentA({ value: 2400, unit: 'W', powerFactor: 0.8 }, 120)).toBeCloseTo(25, 12);
    expect(ratedCurrentA({ value: 2400, unit: 'VA', powerFactor: 0.8 }, 120)).toBe(20);
  });

  it.each([
    [{ value: 0, unit: 'VA', powerFactor: 1 }, 230],
    [{ value: 1000, unit: 'W', powerFactor: 0 }, 230],
    [{ value: 1000, unit: 'W', powerFactor: 1.01 }, 230],
    [{ value: 1000, unit: 'VA', powerFactor: 1 }, 0],
  ] as const)('refuses %j at %d V', (power, voltageV) => {
    expect(() => ratedCurrentA(power, voltageV)).toThrow(RangeError);
  });
});

describe('losses', () => {
  it('are none when off and idle loss at no load', () => {
    expect(lossesW(model.losses, null)).toBe(0);
    expect(lossesW(model.losses, 0)).toBe(20);
  });

  it('give their current back, also without a square part', () => {
    for (const currentA of [0, 1, 7, 30]) {
      expect(currentForLossA(model.losses, lossesW(model.losses, currentA))).toBeCloseTo(currentA, 10);
    }
    expect(currentForLossA({ constantW: 5, linearWPerA: 2, squareWPerA2: 0 }, 25)).toBe(10);
    expect(currentForLossA(model.losses, 10)).toBe(0);
  });
});

describe('surroundings', () => {
  it('allow the full heat at the reference ambient, none at the internal limit, more when cooler', () => {
    expect(allowedHeat({ model, ambientC: 25 })).toBe(1);
    expect(allowedHeat({ model, ambientC: model.limitC })).toBe(0);
    expect(allowedHeat({ model, ambientC: model.limitC + 10 })).toBe(0);
    expect(allowedHeat({ model, ambientC: 0 })).toBeGreaterThan(1);
    expect(continuousCurrentA({ model, ambientC: 40 })).toBeCloseTo(model.hotA, 10);
    expect(continuousCurrentA({ model, ambientC: 99 })).toBe(0);
  });

  it('take exactly the stated share of the current with height, and multiply with ambient', () => {
    expect(continuousCurrentA({ model, ambientC: 25, altitudeM: 2000 })).toBeCloseTo(12 * 0.9, 10);
    const both = allowedHeat({ model, ambientC: 40, altitudeM: 2000 });
    expect(both).toBeCloseTo(allowedHeat({ model, ambientC: 40 }) * heatTarget(model, 10.8), 12);
  });

  it('take nothing up to the height stated, and refuse beyond the greatest', () => {
    const altitude = { fromM: 1000, lossPer100mRatio: 0.01, maxM: 4000 };
    expect(altitudeRatio({ altitude, altitudeM: 1000 })).toBe(1);
    expect(altitudeRatio({ altitude, altitudeM: -20 })).toBe(1);
    expect(altitudeRatio({ altitude, altitudeM: 4000 })).toBeCloseTo(0.7, 12);
    expect(() => altitudeRatio({ altitude, altitudeM: 4000.1 })).toThrow('altitudeM');
    expect(() => allowedHeat({ model, ambientC: Number.NaN })).toThrow('ambientC');
  });
});

describe('heat after a time', () => {
  it('stays where it is settled, and goes to the target in the end', () => {
    const settled = settledHeat(model, 9);
    const after = heatAfter({ model, heat: settled, currentA: 9, durationS: 5000 });
    expect(after.fast).toBeCloseTo(settled.fast, 14);
    const end = heatAfter({ model, heat: settled, currentA: null, durationS: 1e7 });
    expect(end.fast + end.slow).toBeCloseTo(0, 12);
    expect(currentForHeatTargetA(model, settled.fast + settled.slow)).toBeCloseTo(9, 10);
  });

  it('peaks inside when the fast node heats while the slow one cools', () => {
    const start = { model, heat: { fast: 0, slow: 0.7 }, currentA: 11, durationS: 3600 };
    const peak = peakHeat(start);
    for (const nearS of [peak.atS - 5, peak.atS + 5]) {
      const near = heatAfter({ ...start, durationS: nearS });
      expect(near.fast + near.slow).toBeLessThan(peak.heatRatio);
    }
    const at = heatAfter({ ...start, durationS: peak.atS });
    expect(at.fast + at.slow).toBeCloseTo(peak.heatRatio, 13);
    expect(peak.atS).toBeGreaterThan(0);
    expect(peak.atS).toBeLessThan(3600);
  });
});

describe('time to stop', () => {
  it('is never on and below the continuous current, a time just above', () => {
    expect(timeToStop({ model, currentA: 12, ambientC: 25 }).timeS).toBeNull();
    expect(timeToStop({ model, currentA: 12 - 1e-6, ambientC: 25 }).timeS).toBeNull();
    expect(timeToStop({ model, currentA: 12 + 1e-6, ambientC: 25 }).timeS).toBeGreaterThan(10 * 3600);
    const hotA = continuousCurrentA({ model, ambientC: 47 });
    expect(timeToStop({ model, currentA: hotA, ambientC: 47 }).timeS).toBeNull();
  });

  it('is never for a unit already settled at its rating', () => {
    expect(timeToStop({ model, currentA: 12, ambientC: 25, heat: settledHeat(model, 12) }).timeS).toBeNull();
  });

  it('is 0 where even no load is too hot', () => {
    expect(timeToStop({ model, currentA: 0, ambientC: 99 }).timeS).toBe(0);
  });

  it('counts previous load', () => {
    const cold = timeToStop({ model, currentA: 15, ambientC: 25 }).timeS ?? 0;
    const warm = timeToStop({ model, currentA: 15, ambientC: 25, heat: settledHeat(model, 10) }).timeS ?? 0;
    expect(cold).toBeCloseTo(1800, 6);
    expect(warm).toBeLessThan(cold / 2);
    expect(timeToHeat({ model, heat: settledHeat(model, 0), currentA: null, levelRatio: 0.9 })).toBeNull();
  });
});

describe('currentForTime', () => {
  it('gives the datasheet’s points back, and the continuous current for ever', () => {
    expect(currentForTime({ model, timeS: 60, ambientC: 25 })).toBeCloseTo(24, 9);
    expect(currentForTime({ model, timeS: 1800, ambientC: 25 })).toBeCloseTo(15, 9);
    expect(currentForTime({ model, timeS: Number.POSITIVE_INFINITY, ambientC: 25 })).toBeCloseTo(12, 9);
  });

  it('heeds an inner peak after a rest', () => {
    const heat = { fast: 0, slow: 0.62 };
    const currentA = currentForTime({ model, timeS: 7200, ambientC: 25, heat });
    expect(peakHeat({ model, heat, currentA, durationS: 7200 }).heatRatio).toBeCloseTo(1, 9);
  });

  it('is 0 where not even no load lasts, and refuses no time', () => {
    expect(currentForTime({ model, timeS: 60, ambientC: 99 })).toBe(0);
    expect(currentForTime({ model, timeS: 60, ambientC: 25, heat: { fast: 0.5, slow: 0.6 } })).toBe(0);
    expect(() => currentForTime({ model, timeS: 0, ambientC: 25 })).toThrow('timeS');
  });
});

describe('historyHeat', () => {
  const run = (durations: number[], currents: number[], allowedHeatRatio = 1) =>
    historyHeat({
      model,
      durationsS: Float64Array.from(durations),
      currentsA: Float64Array.from(currents),
      allowedHeatRatio,
    });

  it('tells warning and stop apart, in clock time', () => {
    const result = run([100, 600], [0, 24]);
    expect(result.firstStopS).toBeCloseTo(160, 6);
    const warnS = timeToHeat({ model, heat: settledHeat(model, 0), currentA: 24, levelRatio: 0.9 }) ?? 0;
    expect(result.firstWarningS).toBeCloseTo(100 + warnS, 6);
    expect(result.peakAtS).toBe(700);
  });

  it('takes negative and NaN for off', () => {
    expect(run([600], [-1])).toEqual(run([600], [Number.NaN]));
    expect(run([600], [-1]).heat.fast).toBeLessThan(run([600], [0]).heat.fast);
  });

  it('keeps an inner peak that neither end shows', () => {
    const heat = { fast: 0, slow: 0.7 };
    const history = { model, heat, durationsS: Float64Array.of(0, 3600), currentsA: Float64Array.of(5, 11) };
    const inner = peakHeat({ model, heat, currentA: 11, durationS: 3600 });
    const result = historyHeat(history);
    expect(result.peakHeatRatio).toBeCloseTo(inner.heatRatio, 13);
    expect(result.peakAtS).toBeCloseTo(inner.atS, 9);
    expect(result.peakHeatRatio).toBeGreaterThan(result.heat.fast + result.heat.slow + 0.01);
    const touching = inner.heatRatio - 1e-9;
    expect(historyHeat({ ...history, allowedHeatRatio: touching }).firstStopS).toBeLessThan(inner.atS);
    expect(historyHeat({ ...history, allowedHeatRatio: inner.heatRatio + 1e-9 }).firstStopS).toBeNull();
  });

  it('warns and stops at once when it starts too hot, and handles nothing', () => {
    const result = run([10], [0], 0.05);
    expect(result.firstWarningS).toBe(0);
    expect(result.firstStopS).toBe(0);
    expect(run([], []).firstWarningS).toBeNull();
    expect(() => run([1, 2], [1])).toThrow('currentsA');
  });
});

describe('dutyHeat', () => {
  it('is the plain settled heat for a duty that never changes', () => {
    const duty = dutyHeat({
      model,
      segments: [
        { durationS: 30, currentA: 10 },
        { durationS: 70, currentA: 10 },
      ],
    });
    expect(duty.peakHeatRatio).toBeCloseTo(heatTarget(model, 10), 12);
    expect(duty.troughHeatRatio).toBeCloseTo(heatTarget(model, 10), 12);
    expect(duty.meanHeatRatio).toBeCloseTo(heatTarget(model, 10), 12);
  });

  it('peaks at the end of the load and is lowest at the end of the rest', () => {
    const duty = dutyHeat({
      model,
      segments: [
        { durationS: 300, currentA: 16 },
        { durationS: 600, currentA: null },
      ],
    });
    expect(duty.peakAtS).toBe(300);
    expect(duty.troughHeatRatio).toBeCloseTo(duty.startHeat.fast + duty.startHeat.slow, 12);
    expect(duty.meanHeatRatio).toBeCloseTo(heatTarget(model, 16) / 3, 12);
  });

  it('counts the time of its peak from the start of the cycle', () => {
    const rest = { durationS: 600, currentA: null };
    const duty = dutyHeat({ model, segments: [rest, { durationS: 300, currentA: 16 }] });
    expect(duty.peakAtS).toBe(900);
    expect(duty.troughAtS).toBe(600);
  });
});
