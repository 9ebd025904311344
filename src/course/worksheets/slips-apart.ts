import { agrees } from '../grading/agrees.ts';
import { createSolver, stepOf, stepsBehind } from './step-graph.ts';
import type { StepValue, Values, Worksheet } from './worksheet.ts';

/**
 * Whether every single slip on the way to a step can be told from the others by the step's figure: then a learner who
 * works it out in one go can be told what went wrong. Slips that make no difference are passed over.
 */
export function slipsApart(worksheet: Worksheet, givens: Values, stepId: string): boolean {
  const solver = createSolver(worksheet, givens);
  const step = stepOf(worksheet, stepId);
  const right = solver.solveStep(step, []);
  if (right === null) return false;
  const figures = stepsBehind(worksheet, stepId)
    .flatMap((behind) =>
      behind.slips.map((slip) => solver.solveStep(step, [{ stepId: behind.id, slipId: slip.id }])),
    )
    .filter((figure): figure is StepValue => figure !== null && !agrees(step, figure, right));
  return figures.every((one, place) =>
    figures.slice(place + 1).every((other) => !agrees(step, one, other) && !agrees(step, other, one)),
  );
}
