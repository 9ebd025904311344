import { describe, expect, it } from 'vitest';
import { sampleWorksheet } from '../../../tests/support/sample-worksheet.ts';
import type { Worksheet } from '../worksheets/worksheet.ts';
import { drawGivens } from './draw-givens.ts';
import { readSeed } from './read-seed.ts';

const given = { powerW: { from: '1 kW', to: '2 kW', step: '100 W' }, voltageV: '230 V' };
const draw = (change: object, seed = 1, worksheet: Worksheet = sampleWorksheet) =>
  drawGivens({ given: { ...given, ...change } }, worksheet, seed, {});

describe('drawGivens', () => {
  it('stays on the grid of the range, both ends included, and gives the same for the same seed', () => {
    const drawn = Array.from({ length: 300 }, (_, seed) => Number(draw({}, seed + 1)['powerW']));
    expect(Math.min(...drawn)).toBe(1000);
    expect(Math.max(...drawn)).toBe(2000);
    for (const value of drawn) expect(value % 100).toBe(0);
    expect(draw({}, 42)).toEqual(draw({}, 42));
  });

  it('spreads evenly enough: each of eleven values comes up', () => {
    const drawn = Array.from({ length: 300 }, (_, seed) => draw({}, seed + 1)['powerW']);
    expect(new Set(drawn).size).toBe(11);
  });

  it('draws givens apart from one another', () => {
    const range = { from: '100 V', to: '200 V', step: '10 V' };
    const pairs = Array.from({ length: 400 }, (_, seed) => {
      const drawn = draw({ voltageV: range }, seed + 1);
      return `${drawn['powerW']}/${drawn['voltageV']}`;
    });
    // 121 pairs are possible; 400 draws at random would meet about 117 of them.
    expect(new Set(pairs).size).toBeGreaterThan(105);
  });

  it('adds no noise of binary fractions', () => {
    const fine = { powerW: { from: '1 W', to: '2 W', step: '0.1 W' } };
    for (let seed = 1; seed < 100; seed += 1) {
      expect(String(draw(fine, seed)['powerW']).length).toBeLessThanOrEqual(3);
    }
  });

  it.each([
    [{ powerW: undefined }, 'given.powerW: expected a value, found none'],
    [{ powerW: '5 A' }, 'given.powerW: expected a real-power, found "5 A" (unit-of-other-quantity)'],
    [{ powerW: '20 kW' }, 'given.powerW: expected 1 to 10000 (SI), found 20000'],
    [{ powerW: { from: '2 kW', to: '1 kW', step: '100 W' } }, 'expected from ≤ to and a step above 0'],
    [{ strangerA: '3 A' }, 'given.strangerA: expected one of powerW, voltageV'],
  ])('names the given that does not fit: %j', (change, message) => {
    expect(() => draw(change)).toThrow(message);
  });

  it('draws anew until the worksheet accepts, and says so when it never does', () => {
    const picky = (accepts: NonNullable<Worksheet['accepts']>): Worksheet => ({
      ...sampleWorksheet,
      accepts,
    });
    const drawn = Array.from({ length: 50 }, (_, seed) =>
      draw(
        {},
        seed + 1,
        picky((values) => Number(values['powerW']) > 1500),
      ),
    );
    for (const { powerW } of drawn) expect(powerW).toBeGreaterThan(1500);
    expect(() =>
      draw(
        {},
        1,
        picky(() => false),
      ),
    ).toThrow('expected ranges that worksheet "sample" can use');
  });
});

describe('readSeed', () => {
  it.each([
    ['1', 1],
    ['999999', 999_999],
    ['007', 7],
    ['0', null],
    ['1000000', null],
    ['-1', null],
    ['1.5', null],
    ['1e3', null],
    [' 7', null],
    ['', null],
    [null, null],
  ])('reads %j as %j', (text, seed) => {
    expect(readSeed(text)).toBe(seed);
  });
});
