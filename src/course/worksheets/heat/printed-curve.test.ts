import { describe, expect, it } from 'vitest';
import { exampleModel, timeToStop } from '../../../engine/index.ts';
import { readsWell, tableLoads } from './printed-curve.ts';

const curve = (currentA: number): number | null =>
  timeToStop({ model: exampleModel, currentA, ambientC: 25 }).timeS;
const loads = tableLoads([curve], { from: 12.6, to: exampleModel.limitA, widest: 1.5 });

describe('tableLoads', () => {
  it('prints loads that three figures can show, in rising order', () => {
    for (const load of loads) expect(Number(load.toPrecision(3))).toBe(load);
    expect(loads).toEqual([...loads].sort((left, right) => left - right));
    expect(new Set(loads).size).toBe(loads.length);
  });

  it('lets a straight line between rows miss the time by at most three per cent', () => {
    let worst = 0;
    for (const [place, right] of loads.entries()) {
      const left = loads[place - 1] ?? right;
      for (let share = 0.05; share < 1; share += 0.05) {
        const load = left + (right - left) * share;
        const read = (curve(left) ?? 0) + ((curve(right) ?? 0) - (curve(left) ?? 0)) * share;
        worst = Math.max(worst, Math.abs(read / (curve(load) ?? 0) - 1));
      }
    }
    expect(worst).toBeGreaterThan(0.01);
    expect(worst).toBeLessThan(0.032);
  });

  it('sets rows closer where the curve bends and keeps the table short', () => {
    expect(loads.length).toBeLessThan(35);
    const steps = loads.slice(1).map((load, place) => load - (loads[place] ?? load));
    expect(Math.max(...steps) / Math.min(...steps)).toBeGreaterThan(3);
  });
});

describe('readsWell', () => {
  it('refuses a load outside the table or beside rows without a time', () => {
    expect(readsWell(curve, loads, 15.3)).toBe(true);
    expect(readsWell(curve, loads, 40)).toBe(false);
    expect(readsWell(curve, [11, 12.5, 13], 12.3)).toBe(false);
  });
});
