import type { Step, StepValue, Tolerance } from '../worksheets/worksheet.ts';

/** Half-width of the accepted band around the key, in the step's SI unit. */
export function acceptedError(key: number, tolerance: Tolerance): number {
  return Math.max(Math.abs(key) * (tolerance.relative ?? 0), tolerance.absolute ?? 0);
}

/**
 * Whether a learner's figure and a computed one are the same answer at the step's stated tolerance. The last guard
 * (a billionth) is for binary fractions: a figure typed exactly on the edge of the band is inside it.
 */
export function agrees(step: Step, given: StepValue, computed: StepValue): boolean {
  if (step.kind === 'numeric') {
    if (typeof given !== 'number' || typeof computed !== 'number') return false;
    const guard = 1e-9 * Math.max(Math.abs(given), Math.abs(computed));
    return Math.abs(given - computed) <= acceptedError(computed, step.tolerance) + guard;
  }
  if (Array.isArray(given) && Array.isArray(computed)) {
    return given.length === computed.length && given.every((id, place) => id === computed[place]);
  }
  return given === computed;
}
