import { describe, expect, it } from 'vitest';
import {
  amperes,
  constantA,
  loads,
  modelWith,
  run,
  story,
  timesOf,
  unit,
} from '../../../../tests/support/system-story.ts';
import { exampleModel } from '../example-model.ts';
import { peakHeat } from '../heat-after.ts';
import { settledHeat } from '../heat-target.ts';
import { timeToStop } from '../time-to-heat.ts';
import { simulateSystem } from './simulate-system.ts';
import type { SystemUnit, TimedLoad } from './system-types.ts';
import { heatAt } from './timeline.ts';

describe('one unit', () => {
  it('runs quietly within its rating', () => {
    const timeline = run({ loads: loads([0, 8], [600, 11]) }, 7200);
    expect(story(timeline)).toEqual(['600.00 load-change']);
    expect(timeline.endState).toBe('running');
    expect(timeline.segments.map(({ startS, endS, state }) => [startS, endS, state])).toEqual([
      [0, 600, 'running'],
      [600, 7200, 'running'],
    ]);
    expect(timeline.segments[0]?.units[0]).toMatchObject({
      demandA: 8,
      currentA: 8,
      voltageRatio: 1,
      outputW: 1840,
    });
  });

  it('warns, then stops when its heat does, and restarts after exactly the fixed wait', () => {
    const timeline = run({ loads: loads([0, 15], [1900, 5]) }, 2400);
    const stopS = timeToStop({ model: exampleModel, currentA: 15, ambientC: 25 }).timeS ?? 0;
    expect(timeline.events.map(({ kind }) => kind)).toEqual([
      'warning-on',
      'stop',
      'restart',
      'warning-on',
      'load-change',
      'warning-off',
      'count-cleared',
    ]);
    expect(timesOf(timeline, 'stop')[0]).toBeCloseTo(stopS, 6);
    expect((timesOf(timeline, 'restart')[0] ?? 0) - (timesOf(timeline, 'stop')[0] ?? 0)).toBeCloseTo(30, 9);
    expect(timeline.events[1]).toMatchObject({ cause: 'heat', unitId: 'a', phase: 'L1', count: 1 });
    expect((timesOf(timeline, 'count-cleared')[0] ?? 0) - (timesOf(timeline, 'restart')[0] ?? 0)).toBeCloseTo(
      120,
      9,
    );
  });

  it('puts the warning off at 95 % of the level that put it on', () => {
    const timeline = run({ loads: loads([0, 15], [1500, 6]) }, 3600);
    const [onS = 0] = timesOf(timeline, 'warning-on');
    const [offS = 0] = timesOf(timeline, 'warning-off');
    const on = heatAt(timeline, 0, onS);
    const off = heatAt(timeline, 0, offS);
    expect(on.fast + on.slow).toBeCloseTo(0.9, 9);
    expect(off.fast + off.slow).toBeCloseTo(0.9 * 0.95, 9);
  });

  it('locks out at the counted stop, and a person’s reset starts it at once', () => {
    const timeline = run({ loads: loads([0, 24]) }, 900, [800]);
    const kinds = timeline.events.filter(({ kind }) => !kind.startsWith('warning')).map(({ kind }) => kind);
    expect(kinds.slice(0, 7)).toEqual([
      'stop',
      'restart',
      'stop',
      'restart',
      'stop',
      'lockout',
      'manual-reset',
    ]);
    expect(timeline.events.find(({ kind }) => kind === 'lockout')?.count).toBe(3);
    const afterReset = timeline.segments.find(({ startS }) => startS === 800);
    expect(afterReset?.state).toBe('running');
    const first = timeline.events.filter(({ kind }) => kind === 'stop')[3];
    expect(first?.count).toBe(1);
  });

  it('keeps its heat through a reset', () => {
    const timeline = run({ loads: loads([0, 24]) }, 500, [70]);
    const [stopS = 0] = timesOf(timeline, 'stop');
    expect(stopS).toBeCloseTo(60, 6);
    const before = heatAt(timeline, 0, 70 - 1e-9);
    const after = heatAt(timeline, 0, 70);
    expect(after.fast).toBeCloseTo(before.fast, 8);
    expect((timesOf(timeline, 'stop')[1] ?? 0) - 70).toBeLessThan(60);
  });

  it('starts the count anew after running for the reclaim time', () => {
    const timeline = run({ loads: loads([0, 24], [80, 4], [600, 24], [680, 4]) }, 1200);
    const counts = timeline.events.filter(({ kind }) => kind === 'stop').map(({ count }) => count);
    expect(counts).toEqual([1, 1]);
    expect(timeline.endCount).toBe(0);
  });

  it('takes a stop on the instant of reclaim as the first of a new count, one just before as the second', () => {
    // Voltage lost from 230 s on: stops 0.5 s later. Restart at 110.5 s: reclaim ends at 230.5 s.
    const seconds = (lostS: number) => {
      const steps: TimedLoad[] = [
        { startS: 80, load: constantA(40) },
        { startS: 81, load: amperes(1) },
        { startS: lostS, load: constantA(40) },
      ];
      const timeline = run({ loads: steps }, 240);
      return timeline.events.filter(({ kind }) => kind === 'stop').map(({ timeS, count }) => [timeS, count]);
    };
    expect(seconds(230)).toEqual([
      [80.5, 1],
      [230.5, 1],
    ]);
    expect(seconds(229.75)).toEqual([
      [80.5, 1],
      [230.25, 2],
    ]);
    expect(seconds(230.25)).toEqual([
      [80.5, 1],
      [230.75, 1],
    ]);
  });
});

describe('details of one unit', () => {
  it('keeps the inner peak of a segment', () => {
    const heat = { fast: 0, slow: 0.6 };
    const summary = run({ heat, loads: loads([0, 8]) }, 3600).units[0];
    const peak = peakHeat({ model: exampleModel, heat, currentA: 8, durationS: 3600 });
    expect(summary?.peakHeatRatio).toBeCloseTo(peak.heatRatio, 13);
    expect(summary?.peakAtS).toBeCloseTo(peak.atS, 9);
    expect(peak.atS).toBeLessThan(3600);
  });

  it('lets a warning go off before it rises again to a stop, all under one load', () => {
    const timeline = run({ heat: { fast: 0.86, slow: 0.05 }, loads: loads([0, 15]) }, 2400);
    expect(timeline.events.map(({ kind }) => kind).slice(0, 4)).toEqual([
      'warning-on',
      'warning-off',
      'warning-on',
      'stop',
    ]);
  });

  it('takes a reset while running as clearing the count and nothing else', () => {
    const timeline = run({ loads: loads([0, 24], [60.5, 11]) }, 300, [150]);
    expect(timeline.events.filter(({ timeS }) => timeS >= 91)).toEqual([
      { timeS: 150, kind: 'manual-reset' },
    ]);
    expect(timesOf(timeline, 'restart')).toHaveLength(1);
    expect(timeline.endCount).toBe(0);
    const warned = run({ heat: settledHeat(exampleModel, 11.8), loads: loads([0, 11.8]) }, 60, [30]);
    expect(story(warned)).toEqual(['0.00 warning-on', '30.00 manual-reset']);
  });
});

describe('lost voltage', () => {
  const lost = (backS: number) =>
    story(
      run(
        {
          loads: [
            { startS: 10, load: amperes(30) },
            { startS: backS, load: amperes(2) },
          ],
        },
        12,
      ),
    );

  it('stops after the stated cycles, is saved before them and on the last instant', () => {
    // 25 cycles at 50 Hz: 0.5 s. 30 A on a limit of 25 A: 83 % of nominal, held from 90 %.
    expect(lost(10.25)).toEqual([
      '10.00 load-change',
      '10.00 voltage-lost-begins',
      '10.25 load-change',
      '10.25 voltage-recovers',
    ]);
    expect(lost(10.5).at(-1)).toBe('10.50 voltage-recovers');
    expect(lost(10.75)).toContain('10.50 stop voltage-lost 1');
  });

  it('does not begin while the voltage sags but counts as held', () => {
    expect(story(run({ loads: loads([10, 27]) }, 12))).toEqual(['10.00 load-change']);
    const sagging = run({ loads: loads([10, 27]) }, 12).segments[1]?.units[0];
    expect(sagging?.voltageRatio).toBeCloseTo(25 / 27, 12);
    expect(sagging?.currentForHeatA).toBe(25);
  });

  it('goes on counting through a change that does not bring the voltage back', () => {
    const timeline = run({ loads: loads([10, 30], [10.3, 40]) }, 12);
    expect(story(timeline)).toContain('10.50 stop voltage-lost 1');
  });

  it('ends in lockout when the load never goes away', () => {
    const timeline = run({ loads: loads([0, 60]) }, 86_400);
    expect(timesOf(timeline, 'stop')).toEqual([0.5, 31, 61.5]);
    expect(timeline.endState).toBe('locked-out');
    expect(timeline.segments.at(-1)).toMatchObject({ startS: 61.5, endS: 86_400, state: 'locked-out' });
    expect(timeline.segments.at(-1)?.units[0]).toMatchObject({
      currentA: 0,
      voltageRatio: 0,
      currentForHeatA: null,
    });
  });

  it('lets a collapsed output give its limit and no power until the stop', () => {
    const part = run({ loads: [{ startS: 0, load: constantA(40) }] }, 0.4).segments[0]?.units[0];
    expect(part).toMatchObject({ voltageRatio: 0, currentA: 25, outputW: 0, demandA: 40 });
  });
});

describe('where it is too hot even for no load', () => {
  it('stops at once, without an endless loop', () => {
    const timeline = run({ ambientC: 120 }, 86_400);
    expect(timesOf(timeline, 'stop')).toEqual([0, 30, 60]);
    expect(timeline.endState).toBe('locked-out');
    expect(timeline.units[0]?.allowedHeatRatio).toBe(0);
  });

  it('goes on and off where a rest helps', () => {
    const timeline = run({ ambientC: 96, model: modelWith({ reclaimS: 1 }) }, 3600);
    expect(timesOf(timeline, 'stop').length).toBeGreaterThan(2);
    expect(timeline.segments.every(({ startS, endS }) => endS > startS)).toBe(true);
  });
});

describe('a system', () => {
  const three = (second: Partial<SystemUnit> = {}) =>
    simulateSystem({
      units: [
        unit({ id: 'a', phase: 'L1', loads: loads([0, 5]) }),
        unit({ id: 'b', phase: 'L2', loads: loads([0, 24]), ...second }),
        unit({ id: 'c', phase: 'L3', loads: loads([0, 3]) }),
      ],
      untilS: 80,
      stopsTogether: true,
    });

  it('stops as a whole when one unit does, and names unit and phase', () => {
    const timeline = three();
    const stop = timeline.events.find(({ kind }) => kind === 'stop');
    expect(stop).toMatchObject({ unitId: 'b', phase: 'L2', cause: 'heat' });
    const standing = timeline.segments.find(({ state }) => state === 'stopped');
    expect(standing?.units.map(({ currentA }) => currentA)).toEqual([0, 0, 0]);
    expect(standing?.units.map(({ demandA }) => demandA)).toEqual([5, 24, 3]);
  });

  it('goes by the longest wait and the fewest stops where units differ', () => {
    const timeline = three({ model: modelWith({ waitS: 12, stopsToLockout: 1 }) });
    expect(timeline.events.at(-1)?.kind).toBe('lockout');
    const slow = simulateSystem({
      units: [unit({ loads: loads([0, 60]) }), unit({ id: 'b', model: modelWith({ waitS: 45 }) })],
      untilS: 60,
      stopsTogether: true,
    });
    expect(timesOf(slow, 'restart')).toEqual([45.5]);
  });

  it('is in warning while any unit warns', () => {
    const timeline = three();
    const [onS = 0] = timesOf(timeline, 'warning-on');
    expect(timeline.segments.find(({ startS }) => startS === onS)?.state).toBe('warning');
  });
});
