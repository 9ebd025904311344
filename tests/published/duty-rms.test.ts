import { describe, expect, it } from 'vitest';
import { type RmsSegment, rmsOfSegments } from '../../src/engine/ac/index.ts';
import { type Solver, testRows } from './expect-printed.ts';
import { dutyRmsRows } from './rows/duty-rms.ts';

const level = (durationS: number, from: number): RmsSegment => ({ durationS, from });
const ramp = (durationS: number, from: number, to: number): RmsSegment => ({ durationS, from, to });
const minutes = (count: number) => count * 60;

const solvers: Record<string, Solver> = {
  'TH-22': () => ({
    rms: rmsOfSegments([level(20, 50), level(20, 100), level(10, 150), level(20, 120), level(15, 0)]),
  }),
  'TH-24': () => ({
    rms: rmsOfSegments([
      level(minutes(10), 100),
      level(minutes(5), 0),
      level(minutes(8), 60),
      level(minutes(4), 0),
    ]),
  }),
  'TH-25': () => ({
    rms: rmsOfSegments([ramp(minutes(5), 0, 100), level(minutes(10), 50), level(minutes(3), 0)]),
  }),
  'TH-27': () => ({
    // Braking power counts like any other: the current heats whichever way it flows.
    rms: rmsOfSegments([
      ramp(minutes(5), 0, 400e3),
      level(minutes(5), 500e3),
      level(minutes(4), -400e3),
      level(minutes(2), 0),
    ]),
  }),
  'TH-29': () => ({
    rms: rmsOfSegments([
      level(minutes(5), 30),
      level(minutes(4), 0),
      level(minutes(3), 45),
      level(minutes(3), 0),
    ]),
  }),
  'TH-30': ({ inertiaKgM2 = Number.NaN, speedRpm = Number.NaN, reversalS = Number.NaN }) => {
    const speedRadPerS = (2 * Math.PI * speedRpm) / 60;
    const reversalNm = (inertiaKgM2 * 2 * speedRadPerS) / reversalS;
    const rms = rmsOfSegments([
      level(10, 25_000),
      level(reversalS, -reversalNm),
      level(15, 20_000),
      level(reversalS, reversalNm),
      level(4, 0),
    ]);
    return { reversalNm, rms, ratingW: rms * speedRadPerS };
  },
  'TH-31': ({ idleShare = Number.NaN }) => {
    const loaded = [level(minutes(10), 100e3), level(minutes(10), 75e3), level(minutes(20), 50e3)];
    return {
      rms: rmsOfSegments([...loaded, level(minutes(20) * idleShare, 0)]),
      plainRms: rmsOfSegments([...loaded, level(minutes(20), 0)]),
    };
  },
  'TH-32': ({ idleShare = Number.NaN }) => {
    const loaded = [ramp(minutes(10), 0, 200e3), level(minutes(10), 200e3)];
    const flattened = [level(minutes(10), 100e3), level(minutes(10), 200e3)];
    return {
      rms: rmsOfSegments([...loaded, level(minutes(15) * idleShare, 0)]),
      flatMeanRms: rmsOfSegments([...flattened, level(minutes(15) * idleShare, 0)]),
      plainRms: rmsOfSegments([...loaded, level(minutes(15), 0)]),
    };
  },
};

describe('published r.m.s. values of cyclic duty', () => {
  testRows(dutyRmsRows, solvers);

  it('TH-27 keeps its peak below twice the r.m.s. value, as the book checks', () => {
    expect(500e3).toBeLessThan(2 * (solvers['TH-27']?.({})['rms'] ?? 0));
  });
});
