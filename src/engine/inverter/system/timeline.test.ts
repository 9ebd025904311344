import { describe, expect, it } from 'vitest';
import { loads, modelWith, run, story } from '../../../../tests/support/system-story.ts';
import { exampleModel } from '../example-model.ts';
import { settledHeat } from '../heat-target.ts';
import { simulateSystem } from './simulate-system.ts';
import { heatAt, sampleTimeline, timelineEnergy } from './timeline.ts';

describe('input', () => {
  it('is refused when there is no unit, or times are out of order', () => {
    expect(() => simulateSystem({ units: [], untilS: 1, stopsTogether: true })).toThrow('units');
    expect(() => run({ loads: loads([5, 1], [4, 1]) }, 10)).toThrow('units.a.loads');
    expect(() => run({}, Number.POSITIVE_INFINITY)).toThrow('untilS');
    expect(() => run({}, 10, [5, 4])).toThrow('manualResetsS');
  });

  it('is refused when a run would never end in sensible time', () => {
    const model = modelWith({ waitS: 1e-4, reclaimS: 1e-4 });
    expect(() => run({ model, loads: loads([0, 60]) }, 1e9)).toThrow('untilS');
  });

  it('takes the last of several loads at one moment, and those before the start as already there', () => {
    const timeline = run({ loads: loads([-10, 3], [5, 8], [5, 4]) }, 10);
    expect(timeline.segments.map(({ units }) => units[0]?.demandA)).toEqual([3, 4]);
  });

  it('may start hot', () => {
    const timeline = run({ heat: settledHeat(exampleModel, 11.8), loads: loads([0, 11.8]) }, 60);
    expect(story(timeline)).toEqual(['0.00 warning-on']);
  });

  it('gives an empty timeline for no time', () => {
    expect(run({}, 0)).toMatchObject({ segments: [], events: [], endState: 'running' });
  });
});

describe('reading a timeline', () => {
  const timeline = run({ loads: loads([0, 15], [1900, 5]) }, 2400);

  it('samples ends included, each as heatAt', () => {
    const samples = sampleTimeline({ timeline, count: 25 });
    expect(samples).toHaveLength(25);
    expect(samples[0]?.timeS).toBe(0);
    expect(samples[24]?.timeS).toBe(2400);
    expect(samples[7]?.units[0]?.heat).toEqual(heatAt(timeline, 0, 700));
    expect(samples[19]?.state).toBe('warning');
    const part = sampleTimeline({ timeline, count: 2, fromS: 1801, toS: 1802 });
    expect(part.map(({ state }) => state)).toEqual(['stopped', 'stopped']);
  });

  it('reads a border as the start of what follows', () => {
    const samples = sampleTimeline({ timeline: run({ loads: loads([0, 8], [600, 11]) }, 1200), count: 3 });
    expect(samples.map(({ units }) => units[0]?.currentA)).toEqual([8, 11, 11]);
  });

  it('adds up energy from efficiency', () => {
    const steady = timelineEnergy(run({ loads: loads([0, 12]) }, 3600), 0);
    expect(steady.outputJ).toBeCloseTo(2760 * 3600, 3);
    expect(steady.inputJ).toBeCloseTo((2760 / 0.92) * 3600, 3);
  });

  it('refuses moments outside', () => {
    expect(() => heatAt(timeline, 0, 2401)).toThrow('timeS');
    expect(() => heatAt(timeline, 1, 0)).toThrow('unitIndex');
    expect(() => sampleTimeline({ timeline, count: 1 })).toThrow('count');
    expect(() => sampleTimeline({ timeline, count: 2, toS: 9999 })).toThrow('fromS');
    expect(() => timelineEnergy(timeline, 3)).toThrow('unitIndex');
  });
});
