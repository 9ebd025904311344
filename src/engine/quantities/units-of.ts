import { type Dimension, units } from './units.ts';

/**
 * The unit symbols a learner may write for a dimension, for a hint text; the base unit comes first.
 *
 * @param dimension  what is asked
 * @returns symbols as printed; an empty list where a bare number is the only form
 * @throws nothing
 * Valid for: every dimension of the table; aliases ("amps", "ohms") are accepted too but not listed.
 * Source:   none (the project's own table)
 * Example:  unitsOf('reactive-power').join(' ') → 'var kvar Mvar'
 */
export function unitsOf(dimension: Dimension): string[] {
  return units[dimension].map((unit) => unit.symbol).filter((symbol) => symbol !== '');
}
