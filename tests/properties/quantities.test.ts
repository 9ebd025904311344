import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Dimension,
  dimensions,
  formatQuantity,
  parseQuantity,
  unitsOf,
} from '../../src/engine/quantities/index.ts';

const signed: readonly Dimension[] = ['temperature', 'temperature-rise', 'reactive-power', 'angle'];
const anyDimension = fc.constantFrom(...dimensions);

/** Figures spread evenly over the powers of ten that occur, so that every prefix is met. */
const anySize = fc
  .record({
    mantissa: fc.double({ min: 1, max: 9.999, noNaN: true }),
    power: fc.integer({ min: -9, max: 9 }),
  })
  .map(({ mantissa, power }) => mantissa * 10 ** power);

/** Texts near the grammar: they reach deeper into the parser than random characters do. */
const nearText = fc
  .array(
    fc.constantFrom(
      '1',
      '20',
      '000',
      '.',
      ',',
      ' ',
      "'",
      '−',
      '+',
      'e',
      '×10^',
      'k',
      'V',
      'A',
      'min',
      's',
      ':',
      '%',
      '°',
      'C',
      '≈',
      '\u202f',
      'µ',
    ),
    { maxLength: 24 },
  )
  .map((pieces) => pieces.join(''));

/** Half of the last digit that the format shows. */
function halfLastDigit(value: number, dimension: Dimension, digits: number): number {
  const size = Math.abs(value);
  if (dimension === 'temperature' || dimension === 'temperature-rise') return 0.5 * 10 ** (2 - digits);
  if (dimension === 'time' && size >= 3600 - 0.5)
    return digits <= 4 ? 30 : 0.5 * 10 ** -Math.max(0, digits - 5);
  if (dimension === 'time' && size >= 59.5) return 0.5 * 10 ** -Math.max(0, digits - 4);
  return 0.5 * 10 ** (Math.floor(Math.log10(size)) + 1 - digits);
}

describe('parse and format', () => {
  it('give a value back within half the last digit shown', () => {
    fc.assert(
      fc.property(
        anySize,
        anyDimension,
        fc.integer({ min: 2, max: 7 }),
        fc.boolean(),
        (size, dimension, digits, isNegative) => {
          const value = isNegative && signed.includes(dimension) ? -size : size;
          const text = formatQuantity(value, dimension, { significantDigits: digits });
          const read = parseQuantity(text, dimension);
          expect({ text, kind: read.kind }).toEqual({ text, kind: 'ok' });
          if (read.kind === 'ok') {
            const slack = size * 1e-12;
            expect(Math.abs(read.value - value)).toBeLessThanOrEqual(
              halfLastDigit(value, dimension, digits) + slack,
            );
          }
        },
      ),
      { numRuns: 1000 },
    );
  });

  it('give a value with up to six digits back exactly when it is written as it is', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 999_999 }),
        fc.integer({ min: -6, max: 3 }),
        anyDimension,
        (digits, power, dimension) => {
          const value = Number(`${digits}e${power}`);
          const read = parseQuantity(
            formatQuantity(value, dimension, { significantDigits: 'as-is' }),
            dimension,
          );
          expect(read.kind).toBe('ok');
          if (read.kind === 'ok') expect(Math.abs(read.value - value)).toBeLessThanOrEqual(value * 1e-12);
        },
      ),
      { numRuns: 1000 },
    );
  });

  it('agree in every unit of a dimension', () => {
    fc.assert(
      fc.property(anySize, anyDimension, fc.nat(), (value, dimension, pick) => {
        const symbols = unitsOf(dimension);
        fc.pre(symbols.length > 0);
        const unit = symbols[pick % symbols.length];
        if (unit === undefined) return;
        const read = parseQuantity(
          formatQuantity(value, dimension, { unit, significantDigits: 12 }),
          dimension,
        );
        // Written in the largest unit, a small value may fall under the tenth decimal of a temperature; others keep 12 digits.
        const slack = dimension.startsWith('temperature') ? 1e-9 : value * 1e-11;
        if (read.kind !== 'ok') expect(read).toBe('read');
        else expect(Math.abs(read.value - value)).toBeLessThanOrEqual(slack);
      }),
    );
  });
});

describe('parseQuantity', () => {
  it('throws for no string and gives only finite values with at least one digit', () => {
    const anyText = fc.oneof(
      nearText,
      fc.string({ maxLength: 70 }),
      fc.string({ unit: 'binary', maxLength: 70 }),
    );
    fc.assert(
      fc.property(anyText, anyDimension, (text, dimension) => {
        const read = parseQuantity(text, dimension);
        if (read.kind === 'ok') {
          expect(Number.isFinite(read.value)).toBe(true);
          expect(Math.abs(read.value)).toBeLessThanOrEqual(1e12);
          expect(read.significantDigits).toBeGreaterThanOrEqual(1);
          if (!signed.includes(dimension)) expect(read.value).toBeGreaterThanOrEqual(0);
        } else expect(read.found.length).toBeLessThanOrEqual(60);
      }),
      { numRuns: 5000 },
    );
  });

  it('never lets a unit stand for another quantity', () => {
    // Letters with two meanings: the asked dimension decides. "m" minute or metre, "h"/"H" hour or henry, "°" and "°C".
    const shared = new Set(['m', 'h', 'H', '°', '°C']);
    for (const written of dimensions) {
      for (const unit of unitsOf(written)) {
        for (const asked of dimensions) {
          if (asked === written || shared.has(unit)) continue;
          const read = parseQuantity(`5 ${unit}`, asked);
          expect({ unit, asked, ...read }).toMatchObject({
            kind: 'not-ready',
            reason: 'unit-of-other-quantity',
            found: unit.normalize('NFKC'),
          });
        }
      }
    }
  });

  it('reads comma and point, with and without a space before the unit, as the same', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 9999 }), fc.integer({ min: 0, max: 99 }), (whole, hundredths) => {
        const fraction = String(hundredths).padStart(2, '0');
        const texts = [
          `${whole}.${fraction} A`,
          `${whole},${fraction} A`,
          `${whole}.${fraction}A`,
          `≈${whole},${fraction}A`,
        ];
        const values = texts.map((text) => parseQuantity(text, 'current'));
        for (const read of values)
          expect(read).toEqual({ ...values[0], value: Number(`${whole}.${fraction}`) });
      }),
    );
  });

  it('asks again for a bare number wherever a unit is needed', () => {
    for (const dimension of dimensions) {
      const isBareEnough = ['ratio', 'count', 'cycles'].includes(dimension);
      expect(parseQuantity('5', dimension).kind).toBe(isBareEnough ? 'ok' : 'not-ready');
    }
  });
});
