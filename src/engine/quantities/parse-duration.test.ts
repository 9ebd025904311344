import { describe, expect, it } from 'vitest';
import { parseDuration } from './parse-duration.ts';

describe('parseDuration', () => {
  it('adds parts from large to small', () => {
    expect(parseDuration('1 d 2 h 3 min 4.5 s')).toEqual({
      kind: 'ok',
      value: 93_784.5,
      unit: 'd',
      significantDigits: 6,
    });
    expect(parseDuration('1 h 90 min')).toMatchObject({ value: 9000 });
    expect(parseDuration('2 min. 10 sec.')).toMatchObject({ value: 130 });
  });

  it('reads a clock as minutes and seconds unless hours are written', () => {
    expect(parseDuration('2:10')).toMatchObject({ value: 130, unit: 'min' });
    expect(parseDuration('2:10 min')).toMatchObject({ value: 130, unit: 'min' });
    expect(parseDuration('2:10 h')).toMatchObject({ value: 7800, unit: 'h' });
    expect(parseDuration('1:02:03')).toMatchObject({ value: 3723, unit: 'h' });
    expect(parseDuration('0:59,5')).toMatchObject({ value: 59.5, significantDigits: 3 });
  });

  it('refuses a clock beyond 59, with one digit, or with the wrong unit', () => {
    expect(parseDuration('2:59')).toMatchObject({ kind: 'ok' });
    expect(parseDuration('2:60')).toMatchObject({ reason: 'out-of-range' });
    expect(parseDuration('1:00:60')).toMatchObject({ reason: 'out-of-range' });
    expect(parseDuration('2:1')).toMatchObject({ reason: 'several-numbers' });
    expect(parseDuration('1:02:03 min')).toMatchObject({ reason: 'several-numbers' });
  });

  it('refuses repeated or rising units and a stray sign', () => {
    expect(parseDuration('2 min 3 min')).toMatchObject({ reason: 'several-numbers' });
    expect(parseDuration('3 s 2 min')).toMatchObject({ reason: 'several-numbers' });
    expect(parseDuration('2 min -3 s')).toMatchObject({ kind: 'not-ready' });
    expect(parseDuration('2 min 3 kW')).toMatchObject({ reason: 'unit-of-other-quantity', found: 'kW' });
  });
});
