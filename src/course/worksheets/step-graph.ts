import type { Step, StepValue, Values, Worksheet } from './worksheet.ts';

/** A slip in a step, written `step/slip` in sets. */
export interface SlipRef {
  stepId: string;
  slipId: string;
}

export const slipKey = (ref: SlipRef): string => `${ref.stepId}/${ref.slipId}`;

/** The worksheet's steps by id. @throws {RangeError} for an unknown id. */
export function stepOf(worksheet: Worksheet, stepId: string): Step {
  const step = worksheet.steps.find((candidate) => candidate.id === stepId);
  if (!step) throw new RangeError(`step: expected a step of worksheet "${worksheet.id}", found "${stepId}"`);
  return step;
}

/**
 * The step itself and every step its value rests on, in worksheet order. Where a figure of the learner's `own` stands in
 * for a step, nothing behind that step matters any more.
 */
export function stepsBehind(
  worksheet: Worksheet,
  stepId: string,
  own: Readonly<Record<string, StepValue>> = {},
): Step[] {
  const wanted = new Set([stepId]);
  for (const step of [...worksheet.steps].reverse()) {
    if (!wanted.has(step.id)) continue;
    if (step.id !== stepId && step.id in own) wanted.delete(step.id);
    else for (const need of step.needs) wanted.add(need);
  }
  return worksheet.steps.filter((step) => wanted.has(step.id));
}

/**
 * Solves steps on demand with some figures replaced (`own`: the learner's) and some slips switched on. One solver serves a
 * whole slip search: each step is computed once for each set of slips that can reach it, however many sets are tried.
 */
export function createSolver(
  worksheet: Worksheet,
  givens: Values,
  own: Readonly<Record<string, StepValue>> = {},
) {
  const behind = new Map(
    worksheet.steps.map((step) => [
      step.id,
      new Set(stepsBehind(worksheet, step.id, own).map((earlier) => earlier.id)),
    ]),
  );
  const memo = new Map<string, StepValue | null>();

  /** Null when a slip does not apply or the numbers it leads to have no solution. */
  function solveStep(step: Step, slips: readonly SlipRef[]): StepValue | null {
    const reaching = slips.filter((slip) => behind.get(step.id)?.has(slip.stepId));
    const key = `${step.id}|${reaching.map(slipKey).join('|')}`;
    const known = memo.get(key);
    if (known !== undefined) return known;
    const value = solve(step, reaching);
    memo.set(key, value);
    return value;
  }

  function solve(step: Step, slips: readonly SlipRef[]): StepValue | null {
    const values = valuesFor(step, slips);
    if (!values) return null;
    const slip = slips.find((candidate) => candidate.stepId === step.id);
    const solver = slip ? step.slips.find((candidate) => candidate.id === slip.slipId) : step;
    if (!solver) return null;
    try {
      const value = solver.solve(values);
      return typeof value === 'number' && !Number.isFinite(value) ? null : value;
    } catch (error) {
      // A wrong turn upstream can leave the engine without a solution; anything but its range error is a fault of ours.
      if (error instanceof RangeError && (slips.length > 0 || Object.keys(own).length > 0)) return null;
      throw error;
    }
  }

  /** The step's surroundings: givens, and what it needs under these slips. A figure of the learner's own stands as it is. */
  function valuesFor(step: Step, slips: readonly SlipRef[]): Values | null {
    const values: Record<string, unknown> = { ...givens };
    for (const earlier of worksheet.steps) {
      if (!step.needs.includes(earlier.id)) continue;
      const value = own[earlier.id] ?? solveStep(earlier, slips);
      if (value === null) return null;
      values[earlier.id] = value;
    }
    return values;
  }

  return { solveStep };
}

/** The key: givens and the right value of every step. */
export function solveWorksheet(worksheet: Worksheet, givens: Values): Record<string, unknown> {
  const solver = createSolver(worksheet, givens);
  const values: Record<string, unknown> = { ...givens };
  for (const step of worksheet.steps) {
    const value = solver.solveStep(step, []);
    if (value === null) {
      throw new RangeError(`${worksheet.id}.${step.id}: expected a value for these givens, found none`);
    }
    values[step.id] = value;
  }
  return values;
}
