/**
 * The error for a datasheet point that cannot be, in one sentence: field, expected, found, what to change.
 *
 * @param fault.field     path of the field on the datasheet
 * @param fault.expected  what would be accepted, with unit
 * @param fault.found     what stands there, with unit
 * @param fault.change    what the author can change
 * @returns a RangeError, for the caller to throw
 * @throws  nothing
 * Source:  none (house rule for author's errors)
 * Example: datasheetError({ field: 'waitS', expected: 'more than 0 s', found: '0 s', change: 'raise it' }).message.length → 59
 */
export const datasheetError = (fault: {
  field: string;
  expected: string;
  found: string;
  change: string;
}): RangeError =>
  new RangeError(
    `${fault.field}: expected ${fault.expected}, found ${fault.found}; to mend: ${fault.change}`,
  );
