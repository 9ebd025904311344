import { checkedNumber } from '../../ac/checked-number.ts';
import {
  type CurrentTable,
  fullLoadSinglePhase,
  fullLoadThreePhase,
  lockedRotorSinglePhase,
  lockedRotorThreePhase,
} from '../tables/nec-currents.ts';
import { horsepowerOfWatts } from './horsepower.ts';
import { type MotorSupply, rangeOfA, type StartingRange, voltsOfSupply } from './starting-range.ts';

/** Kilowatt sizes are rounded horsepower sizes: 0.75 kW stands for 1 hp, 2.2 kW for 3 hp. */
const SAME_SIZE = 0.02;

/** The figures of the two printed sizes around a motor; the same figure twice where it has a printed size. */
function figuresAround(
  table: CurrentTable,
  given: MotorSupply & { ratedPowerW: number },
): { fromA: number; toA: number } {
  const column = table.columns.find(
    ({ usedFromV, usedToV }) => given.voltageV >= usedFromV && given.voltageV <= usedToV,
  );
  if (!column) {
    const heads = table.columns.map(({ usedFromV, usedToV }) =>
      usedFromV === usedToV ? `${usedFromV}` : `${usedFromV} to ${usedToV}`,
    );
    throw new RangeError(`voltageV: expected ${heads.join(', ')}, found ${given.voltageV}`);
  }
  const horsepower = horsepowerOfWatts(checkedNumber('ratedPowerW', given.ratedPowerW, { above: 0 }));
  const { horsepower: sizes } = table;
  const same = sizes.findIndex((size) => Math.abs(horsepower / size - 1) <= SAME_SIZE);
  const upper = same >= 0 ? same : sizes.findIndex((size) => size > horsepower);
  const fromA = column.currentsA[same >= 0 ? same : upper - 1];
  const toA = column.currentsA[upper];
  if (fromA === undefined || toA === undefined) {
    throw new RangeError(
      `ratedPowerW: expected a size of the table, ${sizes.at(0)?.toPrecision(3)} to ${sizes.at(-1)} hp, found ${horsepower.toPrecision(3)} hp`,
    );
  }
  return { fromA, toA };
}

/**
 * Full-load current from the NEC's tables: what conductors are sized for, somewhat above most nameplates.
 *
 * @param given.ratedPowerW  power at the shaft [W]: a size of the table, or one between two
 * @param given.voltageV     system voltage [V], within the range of a column; line to line for three phases
 * @param given.phases       1 or 3
 * @returns fromA and toA [A]: one figure twice for a size of the table, the figures of its neighbours otherwise
 * @throws   {RangeError} a voltage without a column, or a size beyond the table
 * Valid for: 60 Hz, usual speeds; 1/6 to 10 hp single-phase, 1/2 to 100 hp three-phase. Voltage ranges of the columns from memory.
 * Source:   nec-430, tables 430.248 and 430.250
 * Example:  fullLoadFromTable({ ratedPowerW: 746, voltageV: 230, phases: 1 }).toA → 8
 */
export function fullLoadFromTable(given: MotorSupply & { ratedPowerW: number }): {
  fromA: number;
  toA: number;
} {
  voltsOfSupply(given);
  return figuresAround(given.phases === 3 ? fullLoadThreePhase : fullLoadSinglePhase, given);
}

/**
 * What a motor takes at standstill by the NEC's locked-rotor tables.
 *
 * @param given.ratedPowerW  power at the shaft [W]: a size of the table, or one between two
 * @param given.voltageV     system voltage [V], within the range of a column; line to line for three phases
 * @param given.phases       1 or 3
 * @returns the range, see StartingRange: three-phase figures are the most that designs B, C and D may take, so they have no
 *          lower end; single-phase figures stand as they are; between two sizes their neighbours' figures count
 * @throws   {RangeError} a voltage without a column, or a size beyond the table
 * Valid for: 60 Hz, started direct; 1/2 to 10 hp single-phase, 1/2 to 100 hp three-phase. Voltage ranges of the columns from memory.
 * Source:   nec-430, tables 430.251(A) and 430.251(B)
 * Example:  startFromTable({ ratedPowerW: 3730, voltageV: 460, phases: 3 }).toA → 46
 */
export function startFromTable(given: MotorSupply & { ratedPowerW: number }): StartingRange {
  voltsOfSupply(given);
  const { fromA, toA } = figuresAround(
    given.phases === 3 ? lockedRotorThreePhase : lockedRotorSinglePhase,
    given,
  );
  return rangeOfA(given, given.phases === 3 ? null : fromA, toA, 'nec-430');
}
