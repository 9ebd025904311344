import { checkedNumber } from '../../ac/checked-number.ts';
import { codeLetters } from '../tables/code-letters.ts';
import { horsepowerOfWatts } from './horsepower.ts';
import { type MotorSupply, rangeOfVa, type StartingRange } from './starting-range.ts';

/**
 * What a motor takes at standstill by the locked-rotor code letter of its nameplate.
 *
 * @param given.codeLetter   A to V without I, O and Q
 * @param given.ratedPowerW  power at the shaft [W], above 0
 * @param given.voltageV     rated voltage [V], above 0; line to line for three phases
 * @param given.phases       1 or 3
 * @returns the range, see StartingRange; no upper end for V
 * @throws   {RangeError} a value outside its limits, or a letter that is not used
 * Formula:  S = (kVA per hp)·hp;  I = S/V for one phase, S/(√3·V) for three
 * Valid for: rated voltage and frequency, started direct; the lower end belongs to the band, the upper to the next letter.
 * Source:   nema-mg-1, 10.37.2; nec-430, table 430.7(B)
 * Example:  startFromCodeLetter({ codeLetter: 'G', ratedPowerW: 7460, voltageV: 230, phases: 3 }).toA → 158.1
 */
export function startFromCodeLetter(
  given: MotorSupply & { codeLetter: string; ratedPowerW: number },
): StartingRange {
  const band = codeLetters.find(({ letter }) => letter === given.codeLetter);
  if (!band) {
    throw new RangeError(
      `codeLetter: expected one of ${codeLetters.map(({ letter }) => letter).join(' ')}, found ${given.codeLetter}`,
    );
  }
  const horsepower = horsepowerOfWatts(checkedNumber('ratedPowerW', given.ratedPowerW, { above: 0 }));
  const toVa = band.toKvaPerHp === null ? null : band.toKvaPerHp * horsepower * 1000;
  return rangeOfVa(given, band.fromKvaPerHp * horsepower * 1000, toVa, 'nema-mg-1');
}

/**
 * Code letter of a motor whose apparent power at standstill is known.
 *
 * @param given.lockedRotorVa  apparent power with the rotor held, at rated voltage [VA], 0 or more
 * @param given.ratedPowerW    power at the shaft [W], above 0
 * @returns the letter
 * @throws   {RangeError} a value outside its limits
 * Valid for: rated voltage and frequency.
 * Source:   nema-mg-1, 10.37.2
 * Example:  codeLetterOf({ lockedRotorVa: 62000, ratedPowerW: 7460 }) → G
 */
export function codeLetterOf(given: { lockedRotorVa: number; ratedPowerW: number }): string {
  const kva = checkedNumber('lockedRotorVa', given.lockedRotorVa, { min: 0 }) / 1000;
  const horsepower = horsepowerOfWatts(checkedNumber('ratedPowerW', given.ratedPowerW, { above: 0 }));
  // Rounded to twelve digits, so that a figure that lies on the edge of a band in decimal does so in binary too.
  const kvaPerHp = Number((kva / horsepower).toPrecision(12));
  const band = codeLetters.findLast(({ fromKvaPerHp }) => kvaPerHp >= fromKvaPerHp);
  return band?.letter ?? 'A';
}
