/**
 * Why a text gives no value yet. None of these counts as a wrong answer: the learner is asked to write it again.
 *
 * - `empty`: nothing but blanks
 * - `no-number`: does not begin with a number
 * - `unit-missing`: a number alone where the quantity needs a unit
 * - `unit-unknown`: the unit is in no table
 * - `unit-of-other-quantity`: a known unit, but of another quantity ("8 kW" where apparent power is asked)
 * - `separator-ambiguous`: "1,200" may be 1200 or 1.2; or the grouping follows no rule
 * - `several-numbers`: more than one number, and not a duration
 * - `too-long`: more than 60 characters
 * - `out-of-range`: negative where that has no meaning, beyond ±10¹², or minutes or seconds of 60 and more on a clock
 */
export type ReasonCode =
  | 'empty'
  | 'no-number'
  | 'unit-missing'
  | 'unit-unknown'
  | 'unit-of-other-quantity'
  | 'separator-ambiguous'
  | 'several-numbers'
  | 'too-long'
  | 'out-of-range';

/** What a typed text was read as: a value in the dimension's base unit, or the reason why it cannot be read yet. */
export type ParsedQuantity =
  | {
      kind: 'ok';
      /** In the base unit of the dimension (A, V, VA, W, var, Ω, H, F, s, °C, K, 1, Wh, Ah, Hz, m, mm², kg, °); always finite. */
      value: number;
      /** Symbol of the unit that was typed; for a duration in several parts, that of the first part; '' for a bare number. */
      unit: string;
      /** Digits typed, without leading zeros. */
      significantDigits: number;
    }
  | {
      kind: 'not-ready';
      reason: ReasonCode;
      /** The piece of text that gave the reason, for the message to quote. */
      found: string;
    };

/**
 * Makes the not-ready arm of a result, with the quoted text cut to the parser's length limit (some characters grow when rewritten).
 *
 * @param reason  why there is no value
 * @param found   piece of text to quote
 * @returns the not-ready result
 * @throws nothing
 * Valid for: any text.
 * Source:   none (the project's own reading rules)
 * Example:  notReady('unit-missing', '5').found → '5'
 */
export function notReady(reason: ReasonCode, found: string): ParsedQuantity {
  return { kind: 'not-ready', reason, found: found.slice(0, 60) };
}
