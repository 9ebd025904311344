import { describe, expect, it } from 'vitest';
import { parseQuantity } from './parse-quantity.ts';
import type { ReasonCode } from './parsed-quantity.ts';
import type { Dimension } from './units.ts';

describe('parseQuantity reads', () => {
  const rows: [string, Dimension, number, string, number][] = [
    ['34.8 A', 'current', 34.8, 'A', 3],
    ['34,8A', 'current', 34.8, 'A', 3],
    ['0.0348 kA', 'current', 34.8, 'kA', 3],
    ['4.35 kA', 'current', 4350, 'kA', 3],
    ['1 200 W', 'real-power', 1200, 'W', 4],
    ['1\u00a0200\u00a0W', 'real-power', 1200, 'W', 4],
    ['1\u2009200 W', 'real-power', 1200, 'W', 4],
    ['1\u202f200\u202fW', 'real-power', 1200, 'W', 4],
    ["1'200 W", 'real-power', 1200, 'W', 4],
    ['1’200 W', 'real-power', 1200, 'W', 4],
    ['1 200,5 W', 'real-power', 1200.5, 'W', 5],
    ['1,200.5 W', 'real-power', 1200.5, 'W', 5],
    ['1.200,5 W', 'real-power', 1200.5, 'W', 5],
    ['1.200.000 W', 'real-power', 1_200_000, 'W', 7],
    ['1,200,000 W', 'real-power', 1_200_000, 'W', 7],
    ['1.200 W', 'real-power', 1.2, 'W', 4],
    ['0,125 A', 'current', 0.125, 'A', 3],
    ['1234,567 A', 'current', 1234.567, 'A', 7],
    ['8kva', 'apparent-power', 8000, 'kVA', 1],
    ['8 KVA', 'apparent-power', 8000, 'kVA', 1],
    ['5 KVAr', 'reactive-power', 5000, 'kvar', 1],
    ['-5 kvar', 'reactive-power', -5000, 'kvar', 1],
    ['2 min 10 s', 'time', 130, 'min', 3],
    ['2m10s', 'time', 130, 'min', 3],
    ['2:10', 'time', 130, 'min', 3],
    ['1:05:00', 'time', 3900, 'h', 4],
    ['1 h 5 min', 'time', 3900, 'h', 2],
    ['45 SEC.', 'time', 45, 's', 2],
    ['−5 °C', 'temperature', -5, '°C', 1],
    ['–5 °C', 'temperature', -5, '°C', 1],
    ['5C', 'temperature', 5, '°C', 1],
    ['5 deg C', 'temperature', 5, '°C', 1],
    ['5 ℃', 'temperature', 5, '°C', 1],
    ['５ Ａ', 'current', 5, 'A', 1],
    ['1.2e3 W', 'real-power', 1200, 'W', 2],
    ['1.2×10^3 W', 'real-power', 1200, 'W', 2],
    ['1.2 x 10^3 W', 'real-power', 1200, 'W', 2],
    ['1.2·10³ W', 'real-power', 1200, 'W', 2],
    ['1.2×10⁻³ W', 'real-power', 0.0012, 'W', 2],
    ['87 %', 'ratio', 0.87, '%', 2],
    ['0.87', 'ratio', 0.87, '', 2],
    ['.87', 'ratio', 0.87, '', 2],
    ['≈ 34 A', 'current', 34, 'A', 2],
    ['~34 A', 'current', 34, 'A', 2],
    ['= 34 A', 'current', 34, 'A', 2],
    ['+34 A', 'current', 34, 'A', 2],
    ['34 A.', 'current', 34, 'A', 2],
    ['0 A', 'current', 0, 'A', 1],
    ['-0 A', 'current', 0, 'A', 1],
    ['25', 'cycles', 25, '', 2],
    ['25 cycles', 'cycles', 25, 'cycles', 2],
    ['12', 'count', 12, '', 2],
    ['2,5 mm2', 'area', 2.5, 'mm²', 2],
    ['−36.87°', 'angle', -36.87, '°', 4],
    ['1 kW·h', 'energy', 1000, 'kWh', 1],
    ['100 ft', 'length', 30.48, 'ft', 3],
    ['40 °C', 'temperature-rise', 40, 'K', 2],
    ['1e12 W', 'real-power', 1e12, 'W', 1],
  ];
  for (const [text, dimension, value, unit, significantDigits] of rows) {
    it(`"${text}" as ${dimension}`, () => {
      expect(parseQuantity(text, dimension)).toEqual({ kind: 'ok', value, unit, significantDigits });
    });
  }
});

describe('parseQuantity is not ready for', () => {
  const rows: [string, Dimension, ReasonCode, string][] = [
    ['', 'current', 'empty', ''],
    [' \u00a0\u200b', 'current', 'empty', ''],
    ['=', 'current', 'no-number', '='],
    ['about 5 A', 'current', 'no-number', 'about 5 A'],
    ['NaN A', 'current', 'no-number', 'NaN A'],
    ['Infinity A', 'current', 'no-number', 'Infinity A'],
    ['34.8', 'current', 'unit-missing', '34.8'],
    ['5', 'temperature', 'unit-missing', '5'],
    ['2 min 10', 'time', 'unit-missing', '2 min 10'],
    ['5 zz', 'current', 'unit-unknown', 'zz'],
    ['5 MA', 'current', 'unit-unknown', 'MA'],
    ['5-', 'ratio', 'unit-unknown', '-'],
    ['8 kW', 'apparent-power', 'unit-of-other-quantity', 'kW'],
    ['8 kVA', 'real-power', 'unit-of-other-quantity', 'kVA'],
    ['8 kvar', 'apparent-power', 'unit-of-other-quantity', 'kvar'],
    ['8 Ah', 'energy', 'unit-of-other-quantity', 'Ah'],
    ['300 K', 'temperature', 'unit-of-other-quantity', 'K'],
    ['5 A', 'count', 'unit-of-other-quantity', 'A'],
    ['5 A', 'time', 'unit-of-other-quantity', 'A'],
    ['1,200 W', 'real-power', 'separator-ambiguous', '1,200 W'],
    ['-1,200 var', 'reactive-power', 'separator-ambiguous', '-1,200 var'],
    ['1,23,456 W', 'real-power', 'separator-ambiguous', '1,23,456 W'],
    ['0,125,000 W', 'real-power', 'separator-ambiguous', '0,125,000 W'],
    ["1'200,500.3 W", 'real-power', 'separator-ambiguous', "1'200,500.3 W"],
    ['5 A 6 A', 'current', 'several-numbers', '5 A 6 A'],
    ['5–6 A', 'current', 'several-numbers', '5-6 A'],
    ['1 23 A', 'current', 'several-numbers', '1 23 A'],
    ['0 125 A', 'current', 'several-numbers', '0 125 A'],
    ['2 min 10 s', 'current', 'several-numbers', '2 min 10 s'],
    ['10 s 2 min', 'time', 'several-numbers', '10 s 2 min'],
    ['1.5 h 10 min', 'time', 'several-numbers', '1.5 h 10 min'],
    ['1'.repeat(61), 'current', 'too-long', '1'.repeat(60)],
    ['-5 A', 'current', 'out-of-range', '-5 A'],
    ['−2 min', 'time', 'out-of-range', '-2 min'],
    ['2e12 W', 'real-power', 'out-of-range', '2e12 W'],
    ['1e999 A', 'current', 'out-of-range', '1e999 A'],
    ['1e-999 A', 'current', 'out-of-range', '1e-999 A'],
    ['2:60', 'time', 'out-of-range', '2:60'],
  ];
  for (const [text, dimension, reason, found] of rows) {
    it(`"${text.slice(0, 20)}" as ${dimension}: ${reason}`, () => {
      expect(parseQuantity(text, dimension)).toEqual({ kind: 'not-ready', reason, found });
    });
  }

  it('reads 60 characters and refuses 61', () => {
    expect(parseQuantity(`${'0'.repeat(57)}1 A`, 'current')).toMatchObject({ kind: 'ok', value: 1 });
    expect(parseQuantity(`${'0'.repeat(58)}1 A`, 'current')).toMatchObject({ reason: 'too-long' });
  });

  it('answers at once for texts made to be slow', () => {
    const nasty = [
      '1 '.repeat(30),
      '1,'.repeat(30),
      '1 111'.repeat(12),
      "1'".repeat(30),
      '1:'.repeat(30),
      '1m'.repeat(30),
    ];
    const started = performance.now();
    for (let round = 0; round < 100; round += 1) for (const text of nasty) parseQuantity(text, 'time');
    expect(performance.now() - started).toBeLessThan(500);
  });
});
