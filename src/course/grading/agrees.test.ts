import { describe, expect, it } from 'vitest';
import { sampleWorksheet } from '../../../tests/support/sample-worksheet.ts';
import { stepOf } from '../worksheets/step-graph.ts';
import type { NumericStep, Tolerance } from '../worksheets/worksheet.ts';
import { acceptedError, agrees } from './agrees.ts';

const numeric = (tolerance: Tolerance): NumericStep<Record<string, unknown>> => ({
  ...(stepOf(sampleWorksheet, 'currentA') as NumericStep<Record<string, unknown>>),
  tolerance,
});

describe('agrees', () => {
  it.each([
    [{ relative: 0.1 }, 200, 220, true],
    [{ relative: 0.1 }, 200, 220.001, false],
    [{ relative: 0.1 }, 200, 180, true],
    [{ relative: 0.1 }, 200, 179.999, false],
    [{ relative: 0.1 }, -200, -220, true],
    [{ absolute: 3 }, 200, 203, true],
    [{ absolute: 3 }, 200, 203.001, false],
    [{ absolute: 3 }, 0, -3, true],
    [{ relative: 0.1, absolute: 3 }, 200, 220, true],
    [{ relative: 0.1, absolute: 3 }, 10, 13, true],
    [{ relative: 0.1, absolute: 3 }, 10, 13.001, false],
    [{}, 5, 5, true],
    [{}, 5, 5.000001, false],
  ] as const)('with tolerance %j takes for %d the figure %d: %s', (tolerance, computed, given, expected) => {
    expect(agrees(numeric(tolerance), given, computed)).toBe(expected);
  });

  it('takes a figure typed on the edge of the band, whatever binary fractions make of it', () => {
    // 0.3 · 1.1 is a hair below 0.33 in binary.
    expect(agrees(numeric({ relative: 0.1 }), 0.33, 0.3)).toBe(true);
    expect(agrees(numeric({ relative: 0.1 }), 3.3e8, 3e8)).toBe(true);
    expect(agrees(numeric({ relative: 0.1 }), 3.3e-8, 3e-8)).toBe(true);
    expect(agrees(numeric({ relative: 0.1 }), 3.31e-8, 3e-8)).toBe(false);
  });

  it('never takes a word for a number, or a number for a word', () => {
    expect(agrees(numeric({ absolute: 100 }), 'x', 5)).toBe(false);
    expect(agrees(numeric({ absolute: 100 }), 5, 'x')).toBe(false);
    expect(agrees(stepOf(sampleWorksheet, 'verdict'), 'holds', 'holds')).toBe(true);
    expect(agrees(stepOf(sampleWorksheet, 'verdict'), 'holds', 'stops')).toBe(false);
  });

  it('compares orders entry by entry and by length', () => {
    const step = stepOf(sampleWorksheet, 'sequence');
    expect(agrees(step, ['a', 'b'], ['a', 'b'])).toBe(true);
    expect(agrees(step, ['a', 'b'], ['b', 'a'])).toBe(false);
    expect(agrees(step, ['a'], ['a', 'b'])).toBe(false);
    expect(agrees(step, 'a', ['a'])).toBe(false);
    expect(agrees(step, ['a'], 'a')).toBe(false);
  });

  it('counts the wider of both tolerances, in the step’s unit', () => {
    expect(acceptedError(-200, { relative: 0.1, absolute: 3 })).toBeCloseTo(20, 12);
    expect(acceptedError(10, { relative: 0.1, absolute: 3 })).toBe(3);
    expect(acceptedError(10, {})).toBe(0);
  });
});
