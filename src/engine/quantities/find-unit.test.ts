import { describe, expect, it } from 'vitest';
import { findUnit } from './find-unit.ts';
import { type Dimension, dimensions, units } from './units.ts';

const symbolOf = (spelling: string, dimension: Dimension) => {
  const finding = findUnit(spelling, dimension);
  return finding.kind === 'found' ? finding.unit.symbol : finding.kind;
};

describe('findUnit', () => {
  it('finds every symbol and alias of the table as its own unit', () => {
    for (const dimension of dimensions) {
      for (const unit of units[dimension]) {
        for (const name of [unit.symbol, ...unit.aliases])
          expect([name, symbolOf(name, dimension)]).toEqual([name, unit.symbol]);
      }
    }
  });

  it('keeps milli and mega apart where both exist', () => {
    expect([symbolOf('mΩ', 'resistance'), symbolOf('MΩ', 'resistance')]).toEqual(['mΩ', 'MΩ']);
    expect([symbolOf('mohm', 'resistance'), symbolOf('Mohm', 'resistance')]).toEqual(['mΩ', 'MΩ']);
    expect([symbolOf('mw', 'real-power'), symbolOf('Mw', 'real-power')]).toEqual(['mW', 'MW']);
  });

  it('never reads a capital M as milli, but reads a small m as mega where milli is not in use', () => {
    expect(symbolOf('MA', 'current')).toBe('unknown');
    expect(symbolOf('MS', 'time')).toBe('unknown');
    expect(symbolOf('mva', 'apparent-power')).toBe('MVA');
    expect(symbolOf('mwh', 'energy')).toBe('MWh');
  });

  it('accepts look-alike letters', () => {
    expect(symbolOf('\u2126', 'resistance')).toBe('Ω');
    expect(symbolOf('\u03a9', 'resistance')).toBe('Ω');
    expect(symbolOf('\u03bcF', 'capacitance')).toBe('µF');
    expect(symbolOf('uF', 'capacitance')).toBe('µF');
    expect(symbolOf('MFD', 'capacitance')).toBe('µF');
    expect(symbolOf('mm^2', 'area')).toBe('mm²');
  });

  it('lets the asked dimension decide letters with two meanings', () => {
    expect([symbolOf('h', 'time'), symbolOf('h', 'inductance')]).toEqual(['h', 'H']);
    expect([symbolOf('m', 'time'), symbolOf('m', 'length')]).toEqual(['min', 'm']);
  });

  it('tells a unit of another quantity from an unknown one', () => {
    expect(symbolOf('W', 'apparent-power')).toBe('other-quantity');
    expect(symbolOf('xyz', 'apparent-power')).toBe('unknown');
    expect(symbolOf('', 'apparent-power')).toBe('unknown');
    expect(symbolOf('·', 'ratio')).toBe('unknown');
  });
});
