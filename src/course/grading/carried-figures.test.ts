import { describe, expect, it } from 'vitest';
import { sampleWorksheet } from '../../../tests/support/sample-worksheet.ts';
import type { Step, Worksheet } from '../worksheets/worksheet.ts';
import { carriedFigures } from './carried-figures.ts';

const key = { currentA: 10, heatRatio: 1, verdict: 'holds', sequence: ['stop'] };

const withRange = (plausibleRatio: { from: number; to: number }): Worksheet => ({
  ...sampleWorksheet,
  steps: sampleWorksheet.steps.map((step) =>
    step.id === 'currentA' ? ({ ...step, plausibleRatio } as Step) : step,
  ),
});

describe('carriedFigures', () => {
  it.each([
    [2, true],
    [1.99, false],
    [50, true],
    [50.1, false],
    [-10, false],
    [0, false],
  ])('carries %d A for a key of 10 A: %s', (given, isCarried) => {
    expect('currentA' in carriedFigures(sampleWorksheet, key, { currentA: given })).toBe(isCarried);
  });

  it('goes by the step’s own range where it has one', () => {
    const worksheet = withRange({ from: 0.5, to: 2 });
    expect(carriedFigures(worksheet, key, { currentA: 5 })).toEqual({ currentA: 5 });
    expect(carriedFigures(worksheet, key, { currentA: 4.9 })).toEqual({});
    expect(carriedFigures(worksheet, key, { currentA: 20.1 })).toEqual({});
  });

  it('carries nothing but nought where the key is nought', () => {
    const nought = { ...key, currentA: 0 };
    expect(carriedFigures(sampleWorksheet, nought, { currentA: 0 })).toEqual({ currentA: 0 });
    expect(carriedFigures(sampleWorksheet, nought, { currentA: 0.1 })).toEqual({});
  });

  it('carries every choice and order: none of them is out of all proportion', () => {
    const given = { verdict: 'stops', sequence: ['wait'] };
    expect(carriedFigures(sampleWorksheet, key, given)).toEqual(given);
  });

  it('carries no word where a number belongs', () => {
    expect(carriedFigures(sampleWorksheet, key, { currentA: 'ten' })).toEqual({});
    expect(carriedFigures(sampleWorksheet, { ...key, currentA: 'ten' }, { currentA: 10 })).toEqual({});
  });
});
