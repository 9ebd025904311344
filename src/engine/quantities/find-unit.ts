import { type Dimension, dimensions, type Unit, units } from './units.ts';

/**
 * Spelling without its accidents: spaces, points and multiplication dots go ("kW·h", "deg C", "sq. mm"), look-alikes are
 * joined, and case is dropped except in a leading "M", which tells mega from milli.
 */
function fold(spelling: string): string {
  const bare = spelling.replace(/[\s.·⋅^]/g, '');
  const rest = bare
    .toLowerCase()
    .replace(/[µμ]/g, 'u')
    .replace(/[ωΩ]/g, 'ohm')
    .replace(/°/g, 'deg')
    .replace(/²/g, '2');
  return bare.startsWith('M') ? `M${rest.slice(1)}` : rest;
}

/**
 * A capital M never means milli: "MA" is refused rather than read as a thousandth or a million amperes. A small m may mean mega
 * where the table has no milli form ("mva"). Any other unit that begins with m may be written either way ("MIN").
 */
function spellingIndex(list: readonly Unit[]): Map<string, Unit> {
  const index = new Map<string, Unit>();
  const small = (key: string) => (key.startsWith('M') ? `m${key.slice(1)}` : key);
  const entries = list.flatMap((unit) =>
    [unit.symbol, ...unit.aliases].map((name) => ({ unit, key: fold(name) })),
  );
  for (const { unit, key } of entries) if (!key.startsWith('M')) index.set(key, unit);
  for (const { unit, key } of entries) {
    const isMilli = unit.tens === -3 && key.startsWith('m');
    if (key.startsWith('M') && !index.has(small(key))) index.set(small(key), unit);
    if (key.startsWith('M')) index.set(key, unit);
    else if (key.startsWith('m') && !isMilli && !index.has(`M${key.slice(1)}`))
      index.set(`M${key.slice(1)}`, unit);
  }
  return index;
}

const indexes = new Map<Dimension, Map<string, Unit>>(
  dimensions.map((name) => [name, spellingIndex(units[name])]),
);

/** A unit of the asked dimension, or the news that the spelling belongs to another dimension, or to none. */
export type UnitFinding = { kind: 'found'; unit: Unit } | { kind: 'other-quantity' } | { kind: 'unknown' };

/**
 * Looks a spelling up among the units of the asked dimension first, then among all others. So "h" asked as time is the hour and
 * asked as inductance the henry; "m" asked as time is the minute.
 *
 * @param spelling   as typed, without the number; '' means a bare number
 * @param dimension  what is asked
 * @returns the unit found, or whether it belongs to another quantity
 * @throws nothing
 * Valid for: any string.
 * Source:   none (the project's own table)
 * Example:  findUnit('KVA', 'apparent-power').kind → 'found'
 */
export function findUnit(spelling: string, dimension: Dimension): UnitFinding {
  const key = fold(spelling);
  if (key === '' && spelling !== '') return { kind: 'unknown' };
  const unit = indexes.get(dimension)?.get(key);
  if (unit) return { kind: 'found', unit };
  for (const index of indexes.values()) if (key !== '' && index.has(key)) return { kind: 'other-quantity' };
  return { kind: 'unknown' };
}
