import { describe, expect, it } from 'vitest';
import { startFromPowerLimit } from './apparent-power-limit.ts';
import { codeLetterOf, startFromCodeLetter } from './code-letter.ts';
import { fullLoadFromTable, startFromTable } from './current-from-table.ts';
import { horsepowerOfWatts, wattsOfHorsepower } from './horsepower.ts';
import { startFromMultiple, startFromRuleOfThumb } from './starting-multiple.ts';

const oneHp = wattsOfHorsepower(1);

describe('code letters', () => {
  it('put the lower end into the band and the upper end into the next', () => {
    // 3.14 and 3.15 kVA per horsepower, as NEMA MG 1 says it.
    expect(codeLetterOf({ lockedRotorVa: 3140, ratedPowerW: oneHp })).toBe('A');
    expect(codeLetterOf({ lockedRotorVa: 3150, ratedPowerW: oneHp })).toBe('B');
    expect(codeLetterOf({ lockedRotorVa: 0, ratedPowerW: oneHp })).toBe('A');
    expect(codeLetterOf({ lockedRotorVa: 7100 * 3, ratedPowerW: wattsOfHorsepower(3) })).toBe('J');
    expect(codeLetterOf({ lockedRotorVa: 1e6, ratedPowerW: oneHp })).toBe('V');
  });

  it('have no upper end at V and start at nought at A', () => {
    const motor = { ratedPowerW: oneHp, voltageV: 230, phases: 1 } as const;
    const last = startFromCodeLetter({ ...motor, codeLetter: 'V' });
    expect(last.toA).toBeNull();
    expect(last.toVa).toBeNull();
    expect(last.fromA).toBeCloseTo(22400 / 230, 9);
    expect(startFromCodeLetter({ ...motor, codeLetter: 'A' }).fromA).toBe(0);
  });

  it.each(['I', 'O', 'Q', 'g', ''])('refuse "%s"', (codeLetter) => {
    const motor = { ratedPowerW: oneHp, voltageV: 230, phases: 1, codeLetter } as const;
    expect(() => startFromCodeLetter(motor)).toThrow(/codeLetter: expected one of A B C/);
  });
});

describe('current from table', () => {
  const motor = { voltageV: 460, phases: 3 } as const;

  it('gives a printed size its own figure, also under its kilowatt name', () => {
    expect(fullLoadFromTable({ ...motor, ratedPowerW: 2200 })).toEqual({ fromA: 4.8, toA: 4.8 });
    expect(startFromTable({ voltageV: 240, phases: 1, ratedPowerW: 750 })).toMatchObject({
      fromA: 48,
      toA: 48,
      fromVa: 48 * 240,
      basis: 'nec-430',
    });
  });

  it('gives a size in between the figures of its neighbours', () => {
    // 4 kW is 5.36 hp, between 5 hp (7.6 A) and 7.5 hp (11 A).
    expect(fullLoadFromTable({ ...motor, ratedPowerW: 4000 })).toEqual({ fromA: 7.6, toA: 11 });
    expect(startFromTable({ voltageV: 230, phases: 1, ratedPowerW: 4000 })).toMatchObject({
      fromA: 168,
      toA: 240,
    });
  });

  it('knows no lower end for three phases, where the table prints what is allowed', () => {
    const range = startFromTable({ ...motor, ratedPowerW: 4000 });
    expect(range).toMatchObject({ fromA: null, fromVa: null, toA: 63.5 });
    expect(range.toVa).toBeCloseTo(63.5 * 460 * Math.sqrt(3), 6);
  });

  it.each([
    [{ ...motor, ratedPowerW: 100 }, /ratedPowerW: expected a size of the table, 0.500 to 100 hp/],
    [{ ...motor, ratedPowerW: 80_000 }, /ratedPowerW: .* found 107 hp/],
    [{ ...motor, voltageV: 400, ratedPowerW: oneHp }, /voltageV: expected 200, 208, 220 to 240, 440 to 480/],
    [{ ...motor, voltageV: 0, ratedPowerW: oneHp }, /voltageV/],
    [{ ...motor, ratedPowerW: -1 }, /ratedPowerW/],
  ])('refuses %j', (given, message) => {
    expect(() => startFromTable(given)).toThrow(message);
  });
});

describe('other routes', () => {
  it('take the limit of the band that a rating closes', () => {
    const limitOf = (ratedPowerW: number) =>
      (startFromPowerLimit({ ratedPowerW, lineVoltageV: 400 }).toVa ?? 0) / ratedPowerW;
    expect([6300, 6301, 25e3, 63e3, 63e3 + 1, 1.6e6].map(limitOf)).toEqual([13, 12, 12, 11, 10, 9]);
    expect(startFromPowerLimit({ ratedPowerW: 4000, lineVoltageV: 400 }).fromA).toBeNull();
    expect(() => startFromPowerLimit({ ratedPowerW: 2e6, lineVoltageV: 400 })).toThrow(/ratedPowerW/);
  });

  it('multiply the rated current by both ends', () => {
    const start = startFromMultiple({ kind: 'split-phase', ratedCurrentA: 5, voltageV: 120, phases: 1 });
    expect(start).toEqual({ fromA: 30, toA: 40, fromVa: 3600, toVa: 4800, basis: 'mehta-machines' });
  });

  it.each(['toString', 'shaded-pole'])('refuse a kind that nobody states: %s', (kind) => {
    const given = { kind, ratedCurrentA: 5, voltageV: 120, phases: 1 } as Parameters<
      typeof startFromMultiple
    >[0];
    expect(() => startFromMultiple(given)).toThrow(/kind: expected one of split-phase/);
  });

  it('say six for one phase and three for three', () => {
    expect(startFromRuleOfThumb({ ratedPowerW: 1000, voltageV: 230, phases: 1 }).toVa).toBe(6000);
    const three = startFromRuleOfThumb({ ratedPowerW: 1000, voltageV: 400, phases: 3 });
    expect(three.fromVa).toBe(3000);
    expect(three.toA).toBeCloseTo(3000 / (400 * Math.sqrt(3)), 9);
    expect(three.basis).toBe('common-practice');
  });

  it('refuse a number of phases that is neither', () => {
    const two = { ratedPowerW: 1000, voltageV: 230, phases: 2 as 1 };
    expect(() => startFromRuleOfThumb(two)).toThrow(/phases: expected 1 or 3, found 2/);
    expect(() => startFromTable(two)).toThrow(/phases/);
  });

  it('turn horsepower into watts and back', () => {
    expect(wattsOfHorsepower(7.5)).toBe(5595);
    expect(horsepowerOfWatts(5595)).toBe(7.5);
    expect(() => wattsOfHorsepower(-1)).toThrow(/horsepower/);
  });
});
