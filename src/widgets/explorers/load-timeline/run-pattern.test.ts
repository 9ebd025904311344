import { describe, expect, it } from 'vitest';
import { exampleModel as model } from '../../../engine/index.ts';
import { presetParts } from './pattern.ts';
import { patternSeries, runPattern } from './run-pattern.ts';

const setting = (preset: 'cottage' | 'overload', ambientC = 25) => ({
  inverterId: 'example',
  ambientC,
  preset,
  parts: presetParts(preset, model),
});

describe('runPattern', () => {
  it('stops by lost voltage and locks out under far too much load', () => {
    const run = runPattern(model, setting('overload'));
    expect(run.firstStop).toEqual({ timeS: 120.5, cause: 'voltage-lost' });
    const lockout = run.timeline.events.find(({ kind }) => kind === 'lockout');
    expect(lockout?.count).toBe(model.datasheet.stopsToLockout);
    // The first stop was cleared from the count before the second overload.
    expect(run.stops).toBe(model.datasheet.stopsToLockout + 1);
    expect(run.endState).toBe('locked-out');
    expect(run.offS).toBeGreaterThan(60);
  });
  it('returns a peak of exactly what is allowed when heat stops it', () => {
    const run = runPattern(model, setting('cottage', 45));
    expect(run.firstStop?.cause).toBe('heat');
    expect(run.peakRatio).toBeCloseTo(1, 9);
  });
  it('runs a light load through', () => {
    const parts = [{ id: 1, loadVa: 500, minutes: 30 }];
    const run = runPattern(model, { ...setting('cottage'), parts });
    expect([run.stops, run.offS, run.endState, run.lengthS]).toEqual([0, 0, 'running', 1800]);
  });
});

describe('patternSeries', () => {
  it('returns finite points in order of time, whole heat being the sum of both nodes', () => {
    const series = patternSeries(runPattern(model, setting('overload')));
    for (const line of [
      series.whole,
      series.fast,
      series.slow,
      series.delivered,
      series.wanted,
      series.voltage,
    ]) {
      for (const [i, point] of line.entries()) {
        expect(Number.isFinite(point.x) && Number.isFinite(point.y)).toBe(true);
        expect(point.x).toBeGreaterThanOrEqual(line[i - 1]?.x ?? 0);
      }
    }
    series.whole.forEach((point, i) => {
      expect(point.y).toBeCloseTo((series.fast[i]?.y ?? 0) + (series.slow[i]?.y ?? 0), 9);
    });
    expect(series.whole.length).toBeLessThan(700);
  });
  it('runs on without a jump from segment to segment', () => {
    const { whole } = patternSeries(runPattern(model, setting('cottage', 45)));
    whole.forEach((point, i) => {
      const before = whole[i - 1];
      if (before && before.x === point.x) expect(point.y).toBeCloseTo(before.y, 6);
    });
  });
});
