/**
 * Follows a dotted path such as `loads.0.apparentPowerVa` through a worksheet's values.
 *
 * @throws {RangeError} when nothing numeric stands at the path: the worksheet names a quantity it does not have.
 */
export function numberAtPath(values: Readonly<Record<string, unknown>>, path: string): number {
  let found: unknown = values;
  for (const key of path.split('.')) {
    found = typeof found === 'object' && found !== null ? (found as Record<string, unknown>)[key] : undefined;
  }
  if (typeof found !== 'number' || !Number.isFinite(found)) {
    throw new RangeError(`${path}: expected a finite number among the values, found ${String(found)}`);
  }
  return found;
}
