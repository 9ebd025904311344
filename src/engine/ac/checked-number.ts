/** Limits of an input: `above` and `below` exclude the limit itself, `min` and `max` include it. */
export type NumberLimits = { above?: number; min?: number; below?: number; max?: number };

/**
 * Hands an input through if it is finite and within its limits.
 *
 * @param name    field name, for the message
 * @param value   the input
 * @param limits  what it must keep to; none means any finite number
 * @returns the same value
 * @throws   {RangeError} naming field, expected and found
 * Valid for: any number.
 * Source:   none (input check)
 * Example:  checkedNumber('voltageV', 230, { above: 0 }) → 230
 */
export function checkedNumber(name: string, value: number, limits: NumberLimits = {}): number {
  const { above, min, below, max } = limits;
  const isWithin =
    Number.isFinite(value) &&
    (above === undefined || value > above) &&
    (min === undefined || value >= min) &&
    (below === undefined || value < below) &&
    (max === undefined || value <= max);
  if (isWithin) return value;
  const expected = [
    above === undefined ? '' : `> ${above}`,
    min === undefined ? '' : `≥ ${min}`,
    below === undefined ? '' : `< ${below}`,
    max === undefined ? '' : `≤ ${max}`,
  ].filter((text) => text !== '');
  throw new RangeError(
    `${name}: expected a number ${expected.join(' and ') || 'that is finite'}, found ${value}`,
  );
}
