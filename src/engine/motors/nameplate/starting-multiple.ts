import { checkedNumber } from '../../ac/checked-number.ts';
import { type MultipleKind, startingMultiples } from '../tables/starting-multiples.ts';
import { type MotorSupply, rangeOfA, rangeOfVa, type StartingRange } from './starting-range.ts';

/**
 * What a motor takes at standstill by the multiple of its rated current that books or tables state for its kind.
 *
 * @param given.kind           kind of motor, see startingMultiples
 * @param given.ratedCurrentA  rated current [A], above 0
 * @param given.voltageV       rated voltage [V], above 0; line to line for three phases
 * @param given.phases         1 or 3
 * @returns the range, see StartingRange
 * @throws   {RangeError} a value outside its limits, or an unknown kind
 * Formula:  I = multiple·I_r
 * Valid for: rated voltage and frequency, started direct.
 * Source:   mehta-machines, ch. 9; easa-handbook (NEMA MG 10, table 2-1); nec-430, tables 430.248 to 430.251
 * Example:  startFromMultiple({ kind: 'capacitor-start', ratedCurrentA: 8, voltageV: 230, phases: 1 }).toA → 40
 */
export function startFromMultiple(
  given: MotorSupply & { kind: MultipleKind; ratedCurrentA: number },
): StartingRange {
  const multiple = Object.hasOwn(startingMultiples, given.kind) ? startingMultiples[given.kind] : undefined;
  if (!multiple) {
    const kinds = Object.keys(startingMultiples).join(', ');
    throw new RangeError(`kind: expected one of ${kinds}, found ${given.kind}`);
  }
  const ratedCurrentA = checkedNumber('ratedCurrentA', given.ratedCurrentA, { above: 0 });
  return rangeOfA(given, multiple.from * ratedCurrentA, multiple.to * ratedCurrentA, multiple.basis);
}

/** Volt-amperes at start per watt of rating, by number of phases: what people of the trade say. */
const sayingVaPerW = { 1: 6, 3: 3 } as const;

/**
 * The rule of thumb: six times the rated power at start for single-phase motors, three times for three-phase ones. Common
 * practice without a source; tables give nearly the same volt-amperes per horsepower for both, so for three phases it
 * holds for real power at most, or for star-delta starting.
 *
 * @param given.ratedPowerW  power on the nameplate [W], above 0
 * @param given.voltageV     rated voltage [V], above 0; line to line for three phases
 * @param given.phases       1 or 3
 * @returns the range, see StartingRange: one figure twice
 * @throws   {RangeError} a value outside its limits
 * Formula:  S = 6·P for one phase, 3·P for three
 * Valid for: a first guess.
 * Source:   common-practice
 * Example:  startFromRuleOfThumb({ ratedPowerW: 750, voltageV: 230, phases: 1 }).toVa → 4500
 */
export function startFromRuleOfThumb(given: MotorSupply & { ratedPowerW: number }): StartingRange {
  const ratedPowerW = checkedNumber('ratedPowerW', given.ratedPowerW, { above: 0 });
  const startVa = ratedPowerW * sayingVaPerW[given.phases];
  return rangeOfVa(given, startVa, startVa, 'common-practice');
}
