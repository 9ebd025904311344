import { describe, expect, it } from 'vitest';
import { exampleModel as model } from '../../../engine/index.ts';
import { presetParts } from './pattern.ts';
import { runPattern } from './run-pattern.ts';
import { eventMarks, timelineSpec } from './timeline-spec.ts';

const run = runPattern(model, {
  inverterId: 'example',
  ambientC: 45,
  preset: 'cottage',
  parts: presetParts('cottage', model),
});

describe('eventMarks', () => {
  it('marks every stop, and shows no two letters on one another', () => {
    const marks = eventMarks(run);
    expect(marks.filter(({ letter }) => letter === 'S')).toHaveLength(run.stops);
    const shown = marks.filter((mark) => mark.shown);
    expect(shown.some(({ letter }) => letter === 'S')).toBe(true);
    for (const [i, mark] of shown.entries()) {
      const before = shown[i - 1];
      if (before) expect(mark.timeS - before.timeS).toBeGreaterThanOrEqual(0.045 * run.lengthS);
    }
  });
});

describe('timelineSpec', () => {
  it('holds every line inside its panel', () => {
    for (const panel of timelineSpec(run).panels) {
      for (const { points } of panel.lines) {
        for (const { y } of points) {
          expect(y).toBeGreaterThanOrEqual(0);
          expect(y).toBeLessThanOrEqual(panel.max + 1e-6);
        }
      }
    }
  });
});
