import type { InverterModel } from '../../../engine/index.ts';
import { stepped } from '../../shared/controls/stepped.ts';

/** A stretch of a pattern: one load for some minutes. */
export interface PatternPart {
  /** Stays with the part when it moves. */
  readonly id: number;
  readonly loadVa: number;
  readonly minutes: number;
}

export const presetNames = ['cottage', 'workshop', 'pumps', 'overload'] as const;
export type PresetName = (typeof presetNames)[number];

/** What the learner has set. */
export interface PatternSetting {
  readonly inverterId: string;
  readonly ambientC: number;
  readonly preset: PresetName | 'own';
  readonly parts: readonly PatternPart[];
}

export const mostParts = 12;
export const longestMinutes = 600;

type Sketch = readonly (readonly [loadRatio: number, minutes: number])[];

/** Loads as shares of the continuous rating, so that each pattern says something about every unit. */
const sketches: Readonly<Record<PresetName, Sketch>> = {
  cottage: [
    [0.1, 15],
    [0.8, 6],
    [0.15, 12],
    [1.3, 6],
    [0.15, 8],
    [1.3, 9],
    [0.1, 25],
  ],
  workshop: [
    [0.9, 60],
    [1.3, 3],
    [0.3, 12],
    [1.3, 3],
    [0.2, 30],
  ],
  pumps: [
    [1.4, 2],
    [0.2, 4],
    [1.4, 2],
    [0.2, 2],
    [1.4, 2],
    [0.2, 1],
    [1.4, 3],
    [0.2, 10],
  ],
  overload: [
    [0.3, 2],
    [2.7, 0.5],
    [0.3, 4],
    [2.7, 3],
    [0.3, 4],
  ],
};

/** The raster and bounds of a part's load [VA]. */
export function loadRange({ datasheet, continuousA }: InverterModel): {
  min: number;
  max: number;
  step: number;
} {
  const continuousVa = continuousA * datasheet.acNominalV;
  const step = continuousVa < 4000 ? 10 : 50;
  return { min: 0, max: Math.ceil((2.8 * continuousVa) / 100) * 100, step };
}

export const minuteRange = { min: 0.5, max: longestMinutes, step: 0.5 } as const;

export function presetParts(preset: PresetName, model: InverterModel): PatternPart[] {
  const continuousVa = model.continuousA * model.datasheet.acNominalV;
  return sketches[preset].map(([ratio, minutes], place) => ({
    id: place + 1,
    loadVa: stepped({ value: ratio * continuousVa, ...loadRange(model), step: 50 }),
    minutes,
  }));
}

export function changePart(
  parts: readonly PatternPart[],
  id: number,
  change: Partial<Omit<PatternPart, 'id'>>,
): PatternPart[] {
  return parts.map((part) => (part.id === id ? { ...part, ...change } : part));
}

/** Moves a part by some places; at the ends it stays. */
export function movePart(parts: readonly PatternPart[], id: number, by: number): PatternPart[] {
  const from = parts.findIndex((part) => part.id === id);
  const part = parts[from];
  if (!part) return [...parts];
  const rest = parts.filter((other) => other.id !== id);
  const to = Math.min(rest.length, Math.max(0, from + by));
  return [...rest.slice(0, to), part, ...rest.slice(to)];
}

/** Takes a part away; the last one stays, as a pattern of no length cannot be run. */
export function removePart(parts: readonly PatternPart[], id: number): PatternPart[] {
  return parts.length < 2 ? [...parts] : parts.filter((part) => part.id !== id);
}

/** Adds a part like the last one. */
export function addPart(parts: readonly PatternPart[]): PatternPart[] {
  const last = parts.at(-1);
  if (!last || parts.length >= mostParts) return [...parts];
  return [...parts, { ...last, id: 1 + Math.max(...parts.map((part) => part.id)) }];
}
