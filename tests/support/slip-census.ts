import type { ExerciseData } from '../../src/content-reader/read-exercises.ts';
import { diagnose } from '../../src/course/diagnosis/diagnose.ts';
import { drawGivens } from '../../src/course/exercises/draw-givens.ts';
import { stepsInMode } from '../../src/course/exercises/public-view.ts';
import { agrees } from '../../src/course/grading/agrees.ts';
import { loadWorksheet } from '../../src/course/worksheets/registry.ts';
import {
  createSolver,
  slipKey,
  solveWorksheet,
  stepOf,
  stepsBehind,
} from '../../src/course/worksheets/step-graph.ts';
import type { StepValue } from '../../src/course/worksheets/worksheet.ts';

export interface SlipCensus {
  tried: number;
  /** Its figure cannot be told from the key at the stated tolerance: nothing to diagnose. */
  sameAsKey: number;
  named: number;
  /** Named together with others that lead to the same figure. */
  collisions: Map<string, number>;
  missed: string[];
}

/**
 * Commits every single slip that can reach an asked step, at full precision as a calculator shows it, and asks the search
 * for its name. Earlier steps on the sheet, shown or asked, stand at the key: a slip in one of those shows there first.
 */
export async function slipCensus(data: ExerciseData, seeds: readonly number[]): Promise<SlipCensus> {
  const worksheet = await loadWorksheet(data.exercise.worksheet);
  const census: SlipCensus = { tried: 0, sameAsKey: 0, named: 0, collisions: new Map(), missed: [] };
  const onSheet = worksheet.steps.map((step) => step.id).filter((id) => data.exercise.steps[id] !== 'hidden');
  for (const seed of seeds) {
    const givens = drawGivens(data.exercise, worksheet, seed, data.inverters);
    const key = solveWorksheet(worksheet, givens) as Record<string, StepValue>;
    for (const stepId of stepsInMode(data.exercise, worksheet, 'asked')) {
      const earlier = onSheet.slice(0, onSheet.indexOf(stepId));
      const own = Object.fromEntries(earlier.map((id) => [id, key[id] as StepValue]));
      const step = stepOf(worksheet, stepId);
      const solver = createSolver(worksheet, givens, own);
      for (const culprit of stepsBehind(worksheet, stepId, own)) {
        for (const { id: slipId } of culprit.slips) {
          const figure = solver.solveStep(step, [{ stepId: culprit.id, slipId }]);
          if (figure === null) continue;
          count(census, {
            isKey: agrees(step, figure, key[stepId] as StepValue),
            wanted: `${culprit.id}/${slipId}`,
            names: () =>
              diagnose(worksheet, givens, stepId, figure, own).sets.map((set) => set.map(slipKey).join('+')),
            place: `${stepId}, seed ${seed}`,
          });
        }
      }
    }
  }
  return census;
}

interface Case {
  isKey: boolean;
  wanted: string;
  names: () => string[];
  place: string;
}

function count(census: SlipCensus, { isKey, wanted, names, place }: Case): void {
  census.tried += 1;
  if (isKey) {
    census.sameAsKey += 1;
    return;
  }
  const found = names();
  if (!found.includes(wanted)) census.missed.push(`${place}: ${wanted}`);
  else if (found.length === 1) census.named += 1;
  else {
    const together = found.sort().join(' = ');
    census.collisions.set(together, (census.collisions.get(together) ?? 0) + 1);
  }
}
