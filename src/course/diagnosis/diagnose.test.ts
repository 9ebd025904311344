import { describe, expect, it } from 'vitest';
import { sampleGivens, sampleWorksheet } from '../../../tests/support/sample-worksheet.ts';
import { diagnose } from './diagnose.ts';

const names = (stepId: string, given: number | string | string[], own = {}): string[] =>
  diagnose(sampleWorksheet, sampleGivens, stepId, given, own).sets.map((set) =>
    set.map(({ stepId: id, slipId }) => `${id}/${slipId}`).join('+'),
  );

describe('diagnose', () => {
  it('names a single slip', () => {
    expect(names('currentA', 10 / Math.sqrt(3))).toEqual(['currentA/three-phase']);
  });

  it('shows every slip that leads to the same figure, rather than guess', () => {
    expect(names('currentA', 0.1)).toEqual(['currentA/upside-down', 'currentA/same-as-upside-down']);
  });

  it('says nothing when nothing matches', () => {
    expect(names('currentA', 123)).toEqual([]);
  });

  it('finds two slips together when no single one fits', () => {
    expect(names('heatRatio', 1 / Math.sqrt(3))).toEqual(['currentA/three-phase+heatRatio/not-squared']);
  });

  it('starts from the learner’s own earlier figure, and looks no further behind it', () => {
    expect(names('heatRatio', 2, { currentA: 20 })).toEqual(['heatRatio/not-squared']);
    expect(names('heatRatio', 1 / 3, { currentA: 20 })).toEqual([]);
  });

  it('names slips in choices and orders', () => {
    expect(names('verdict', 'stops')).toEqual(['verdict/turned-round']);
    expect(names('sequence', ['stop', 'restart', 'wait'])).toEqual(['sequence/restart-first']);
  });

  it('never names a slip for the right answer', () => {
    for (const [stepId, given] of [
      ['currentA', 10],
      ['heatRatio', 1],
      ['verdict', 'holds'],
    ] as const) {
      expect(names(stepId, given)).toEqual([]);
    }
  });

  it('lists a pair once, and never two slips of one step', () => {
    const pairs = names('heatRatio', 1 / Math.sqrt(3));
    expect(new Set(pairs).size).toBe(pairs.length);
    for (const pair of pairs) {
      const steps = pair.split('+').map((name) => name.split('/')[0]);
      expect(new Set(steps).size).toBe(steps.length);
    }
  });
});
