import { describe, expect, it } from 'vitest';
import { dutyHeat, exampleModel } from '../../../engine/index.ts';
import { solveWorksheet } from '../step-graph.ts';
import { repeatingDuty } from './repeating-duty.ts';

const solve = (busyA: number, busyS: number, restA: number, restS: number) => ({
  key: solveWorksheet(repeatingDuty, { inverter: exampleModel, busyA, busyS, restA, restS }),
  duty: dutyHeat({
    model: exampleModel,
    segments: [
      { currentA: busyA, durationS: busyS },
      { currentA: restA, durationS: restS },
    ],
  }),
});

describe('repeating-duty', () => {
  it('finds the same settled peak and mean as the engine', () => {
    const cycles: [number, number, number, number][] = [
      [18, 120, 3, 180],
      [14, 600, 0, 900],
      [22, 20, 6, 60],
    ];
    for (const cycle of cycles) {
      const { key, duty } = solve(...cycle);
      const { peakHeatRatio, meanHeatRatio } = key;
      expect(peakHeatRatio).toBeCloseTo(duty.peakHeatRatio, 12);
      expect(meanHeatRatio).toBeCloseTo(duty.meanHeatRatio, 12);
    }
  });

  it('tells a stop in the first busy part from one after some cycles', () => {
    expect(solve(24, 90, 3, 600).key).toHaveProperty('verdict', 'in-the-first-busy-part');
    expect(solve(18, 90, 6, 90).key).toHaveProperty('verdict', 'after-some-cycles');
    expect(solve(13, 60, 3, 600).key).toHaveProperty('verdict', 'never');
  });

  it('calls the r.m.s. current too kind when the unit stops below its continuous current', () => {
    const { rmsA, peakHeatRatio, rmsVerdict } = solve(17, 240, 3, 300).key;
    expect(rmsA).toBeLessThan(exampleModel.continuousA);
    expect(peakHeatRatio).toBeGreaterThan(1);
    expect(rmsVerdict).toBe('too-kind');
  });
});
