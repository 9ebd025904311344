import { type Dimension, type InverterModel, parseQuantity } from '../../engine/index.ts';
import type { DrawnGiven, Exercise } from '../schema/exercise.ts';
import type { GivenSpec, Values, Worksheet } from '../worksheets/worksheet.ts';
import { seededDraw } from './seeded-draw.ts';

/** How often numbers are drawn anew when the worksheet does not accept them (a load that never stops the unit, say). */
const MAX_ATTEMPTS = 60;

type Inverters = Readonly<Record<string, InverterModel>>;

interface DrawContext {
  seed: number;
  attempt: number;
  inverters: Inverters;
}

/**
 * The numbers of an exercise for one seed, in SI units, as the worksheet's steps read them.
 *
 * @param seed        whole number; the same seed gives the same numbers on every device
 * @param inverters   at least the inverters that the exercise names, by id
 * @throws {RangeError} naming the given, what the worksheet expects, and what was found
 */
export function drawGivens(
  exercise: Pick<Exercise, 'given'>,
  worksheet: Worksheet,
  seed: number,
  inverters: Inverters,
): Values {
  for (const name of Object.keys(exercise.given)) {
    if (!(name in worksheet.givens)) {
      const known = Object.keys(worksheet.givens).join(', ');
      throw new RangeError(
        `given.${name}: expected one of ${known}, found a name "${worksheet.id}" does not use`,
      );
    }
  }
  for (let attempt = 0; attempt < MAX_ATTEMPTS; attempt += 1) {
    const givens: Record<string, unknown> = {};
    for (const [name, spec] of Object.entries(worksheet.givens)) {
      givens[name] = drawOne(spec, exercise.given[name], name, { seed, attempt, inverters });
    }
    if (worksheet.accepts?.(givens) ?? true) return givens;
  }
  throw new RangeError(
    `given: expected ranges that worksheet "${worksheet.id}" can use, found none in ${MAX_ATTEMPTS} draws (seed ${seed})`,
  );
}

function drawOne(spec: GivenSpec, raw: unknown, path: string, context: DrawContext): unknown {
  if (raw === undefined) throw new RangeError(`given.${path}: expected a value, found none`);
  switch (spec.kind) {
    case 'number':
      return drawNumber(spec, raw as DrawnGiven, path, context);
    case 'text':
      return String(pickOne(raw as DrawnGiven, path, context));
    case 'choice': {
      const chosen = String(pickOne(raw as DrawnGiven, path, context));
      if (!spec.options.includes(chosen)) {
        throw new RangeError(`given.${path}: expected one of ${spec.options.join(', ')}, found "${chosen}"`);
      }
      return chosen;
    }
    case 'inverter':
      return inverterOf(String(pickOne(raw as DrawnGiven, path, context)), path, context);
    case 'inverters':
      if (!Array.isArray(raw)) throw new RangeError(`given.${path}: expected a list of inverter ids`);
      return raw.map((id) => inverterOf(String(id), path, context));
    case 'list': {
      if (!Array.isArray(raw) || raw.length < spec.from || raw.length > spec.to) {
        throw new RangeError(`given.${path}: expected a list of ${spec.from} to ${spec.to} entries`);
      }
      return raw.map((entry: Record<string, unknown>, place) => {
        const unknown = Object.keys(entry).find((field) => !(field in spec.of));
        if (unknown)
          throw new RangeError(
            `given.${path}.${place}.${unknown}: expected ${Object.keys(spec.of).join(', ')}`,
          );
        return Object.fromEntries(
          Object.entries(spec.of).map(([field, inner]) => [
            field,
            drawOne(inner, entry[field], `${path}.${place}.${field}`, context),
          ]),
        );
      });
    }
  }
}

function inverterOf(id: string, path: string, { inverters }: DrawContext): InverterModel {
  const model = inverters[id];
  if (!model) throw new RangeError(`given.${path}: expected the id of an inverter datasheet, found "${id}"`);
  return model;
}

function pickOne(raw: DrawnGiven, path: string, { seed, attempt }: DrawContext): string | number {
  if (typeof raw !== 'object') return raw;
  if ('pick' in raw) {
    const picked = raw.pick[seededDraw(seed, attempt, path, raw.pick.length)];
    if (picked !== undefined) return picked;
  }
  throw new RangeError(`given.${path}: expected a value or a list to pick from`);
}

function drawNumber(
  spec: GivenSpec & { kind: 'number' },
  raw: DrawnGiven,
  path: string,
  context: DrawContext,
): number {
  const read = (figure: string | number): number => readFigure(figure, spec.dimension, path);
  const value =
    typeof raw === 'object' && 'from' in raw
      ? onGrid(read(raw.from), read(raw.to), read(raw.step), path, context)
      : read(pickOne(raw, path, context));
  if (value < spec.from || value > spec.to) {
    throw new RangeError(`given.${path}: expected ${spec.from} to ${spec.to} (SI), found ${value}`);
  }
  return value;
}

function readFigure(figure: string | number, dimension: Dimension, path: string): number {
  const parsed = parseQuantity(String(figure), dimension);
  if (parsed.kind === 'ok') return parsed.value;
  throw new RangeError(`given.${path}: expected a ${dimension}, found "${figure}" (${parsed.reason})`);
}

function onGrid(
  from: number,
  to: number,
  step: number,
  path: string,
  { seed, attempt }: DrawContext,
): number {
  const count = Math.floor((to - from) / step + 1e-9) + 1;
  if (!(step > 0) || !(count >= 1)) {
    throw new RangeError(
      `given.${path}: expected from ≤ to and a step above 0, found ${from} to ${to} step ${step}`,
    );
  }
  // Twelve digits remove the noise of binary fractions: 0.1 × 3 is drawn as 0.3.
  return Number((from + step * seededDraw(seed, attempt, path, count)).toPrecision(12));
}
