import { agrees } from '../grading/agrees.ts';
import { createSolver, type SlipRef, stepOf, stepsBehind } from '../worksheets/step-graph.ts';
import type { StepValue, Values, Worksheet } from '../worksheets/worksheet.ts';

/**
 * What the search found. `sets` holds every single slip that leads to the learner's figure, or else the one pair that does: one
 * set names the slip, several are shown as "either … or …", none means that we say so rather than guess.
 */
export interface Diagnosis {
  sets: readonly (readonly SlipRef[])[];
}

/** Slips in the step and, unless the learner's own figure stands there, in the steps behind it. */
function slipsWithinReach(
  worksheet: Worksheet,
  stepId: string,
  own: Readonly<Record<string, StepValue>>,
): SlipRef[] {
  return stepsBehind(worksheet, stepId, own).flatMap((step) =>
    step.slips.map((slip) => ({ stepId: step.id, slipId: slip.id })),
  );
}

/**
 * Names the one or two slips that turn the givens into the learner's figure for a step. Single slips are tried before
 * pairs, and pairs only when no single slip fits.
 *
 * @param own  the learner's figures for earlier steps, already limited to plausible ones
 */
export function diagnose(
  worksheet: Worksheet,
  givens: Values,
  stepId: string,
  given: StepValue,
  own: Readonly<Record<string, StepValue>> = {},
): Diagnosis {
  const step = stepOf(worksheet, stepId);
  const solver = createSolver(worksheet, givens, own);
  const slips = slipsWithinReach(worksheet, stepId, own);
  const right = solver.solveStep(step, []);

  const leadsToGiven = (set: readonly SlipRef[]): boolean => {
    const value = solver.solveStep(step, set);
    // A slip that makes no difference to these numbers explains nothing.
    if (value === null || (right !== null && agrees(step, value, right))) return false;
    return agrees(step, given, value);
  };

  const singles = slips.filter((slip) => leadsToGiven([slip]));
  if (singles.length > 0) return { sets: singles.map((slip) => [slip]) };

  const pairs: SlipRef[][] = [];
  for (const [place, first] of slips.entries()) {
    for (const second of slips.slice(place + 1)) {
      if (first.stepId !== second.stepId && leadsToGiven([first, second])) pairs.push([first, second]);
    }
  }
  // Among hundreds of pairs several will meet one figure by chance: then none of them is the reason, and none is named.
  return { sets: pairs.length === 1 ? pairs : [] };
}
