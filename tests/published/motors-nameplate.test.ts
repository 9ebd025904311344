import { describe, expect, it } from 'vitest';
import {
  codeLetterOf,
  codeLetters,
  currentRatioOfPowerLimit,
  fullLoadFromTable,
  fullLoadSinglePhase,
  fullLoadThreePhase,
  lockedRotorSinglePhase,
  lockedRotorThreePhase,
  startFromCodeLetter,
  startFromPowerLimit,
  startFromTable,
  wattsOfHorsepower,
} from '../../src/engine/motors/index.ts';
import { need } from './ac-solvers.ts';
import { type Solver, testRows } from './expect-printed.ts';
import { ratedLbFt } from './motors-three-phase-solvers.ts';
import { motorsNameplateRows } from './rows/motors-nameplate.ts';

const phasesOf = (given: Readonly<Record<string, number>>) => (need(given, 'phases') === 3 ? 3 : 1);

const fromLetter: Solver = (given) => {
  const horsepower = need(given, 'horsepower');
  const ratedPowerW = wattsOfHorsepower(horsepower);
  // Both books print a figure of band G.
  const lockedRotorVa = 1000 * need(given, 'kvaPerHp') * horsepower;
  const { fromA, toA } = startFromCodeLetter({
    codeLetter: codeLetterOf({ lockedRotorVa, ratedPowerW }),
    ratedPowerW,
    voltageV: need(given, 'voltageV'),
    phases: phasesOf(given),
  });
  return { fromA: fromA ?? Number.NaN, toA: toA ?? Number.NaN };
};

/** One figure a size, for every size that the locked-rotor table prints. */
const bySize =
  (
    valueAt: (motor: { ratedPowerW: number; voltageV: number; phases: 1 | 3 }, horsepower: number) => number,
  ) =>
  (given: Readonly<Record<string, number>>): Record<string, number> => {
    const phases = phasesOf(given);
    const { horsepower } = phases === 3 ? lockedRotorThreePhase : lockedRotorSinglePhase;
    return Object.fromEntries(
      horsepower.map((size) => [
        `${size} hp`,
        valueAt({ ratedPowerW: wattsOfHorsepower(size), voltageV: need(given, 'voltageV'), phases }, size),
      ]),
    );
  };

const currentRatio = bySize((motor) => (startFromTable(motor).toA ?? 0) / fullLoadFromTable(motor).toA);
const kvaPerHp = bySize((motor, size) => (startFromTable(motor).toVa ?? 0) / 1000 / size);

const powerLimit: Solver = (given) => {
  const ratedPowerW = need(given, 'ratedPowerW');
  const vaPerW = (startFromPowerLimit({ ratedPowerW, lineVoltageV: 400 }).toVa ?? 0) / ratedPowerW;
  return {
    currentRatio: currentRatioOfPowerLimit({
      vaPerW,
      efficiencyRatio: need(given, 'efficiencyRatio'),
      powerFactor: need(given, 'powerFactor'),
    }),
  };
};

const solvers: Record<string, Solver> = {
  'R-1': fromLetter,
  'R-3': fromLetter,
  'R-5': (given) => {
    const rated = ratedLbFt(need(given, 'horsepower'), need(given, 'speedRpm'));
    return {
      startTorqueLbFt: need(given, 'startRatio') * rated,
      breakdownTorqueLbFt: need(given, 'breakdownRatio') * rated,
      pullUpTorqueLbFt: need(given, 'pullUpRatio') * rated,
    };
  },
  'T-1': currentRatio,
  'T-2': kvaPerHp,
  'T-3': currentRatio,
  'T-4': kvaPerHp,
  'L-1': powerLimit,
  'L-2': powerLimit,
};

describe('published nameplate routes', () => testRows(motorsNameplateRows, solvers));

describe('the printed tables', () => {
  const tables = { fullLoadSinglePhase, fullLoadThreePhase, lockedRotorSinglePhase, lockedRotorThreePhase };

  it.each(Object.entries(tables))('%s has a current for each size, and more for a larger one', (_, table) => {
    for (const { currentsA } of table.columns) {
      expect(currentsA).toHaveLength(table.horsepower.length);
      expect([...currentsA].sort((a, b) => a - b)).toEqual(currentsA);
      expect(new Set(currentsA).size).toBe(currentsA.length);
    }
  });

  it.each(Object.entries(tables))('%s has less current at more voltage, near to inversely', (_, table) => {
    const [first, ...others] = table.columns;
    for (const { voltageV, currentsA } of others) {
      currentsA.forEach((currentA, at) => {
        const product = (currentA * voltageV) / ((first?.currentsA[at] ?? 0) * (first?.voltageV ?? 0));
        // Columns are rounded to two or three figures, small motors to one decimal.
        expect(product, `${table.horsepower[at]} hp at ${voltageV} V`).toBeGreaterThan(0.93);
        expect(product, `${table.horsepower[at]} hp at ${voltageV} V`).toBeLessThan(1.07);
      });
    }
  });

  it('of code letters are bands that follow each other without a gap, A to V without I, O and Q', () => {
    expect(codeLetters.map(({ letter }) => letter).join('')).toBe('ABCDEFGHJKLMNPRSTUV');
    codeLetters.slice(1).forEach(({ fromKvaPerHp }, at) => {
      expect(fromKvaPerHp).toBe(codeLetters[at]?.toKvaPerHp);
      expect(fromKvaPerHp).toBeGreaterThan(codeLetters[at]?.fromKvaPerHp ?? Number.NaN);
    });
    expect(codeLetters.at(-1)?.toKvaPerHp).toBeNull();
  });
});
