import { describe, expect, it } from 'vitest';
import { readExercises } from '../../src/content-reader/read-exercises.ts';
import { drawGivens } from '../../src/course/exercises/draw-givens.ts';
import { evaluateFormula } from '../../src/course/worksheets/evaluate-formula.ts';
import { loadWorksheet } from '../../src/course/worksheets/registry.ts';
import { solveWorksheet } from '../../src/course/worksheets/step-graph.ts';
import { seeds } from '../support/seeds.ts';

/** The formula that is shown and the engine call that gives the answer are written apart; here they meet. */
describe.each(readExercises().map((data) => [data.slug, data] as const))('formulas of %s', (_, data) => {
  it('evaluate to the answers of the engine', async () => {
    const worksheet = await loadWorksheet(data.exercise.worksheet);
    for (const seed of seeds(60)) {
      const values = solveWorksheet(worksheet, drawGivens(data.exercise, worksheet, seed, data.inverters));
      for (const step of worksheet.steps) {
        if (step.kind !== 'numeric') continue;
        const formula = typeof step.formula === 'function' ? step.formula(values) : step.formula;
        const expected =
          formula.op === 'equation' ? evaluateFormula(formula.right, values) : Number(values[step.id]);
        const found = evaluateFormula(formula.op === 'equation' ? formula.left : formula, values);
        const scale = Math.max(Math.abs(expected), 1e-6);
        expect(
          Math.abs(found - expected) / scale,
          `${step.id}, seed ${seed}: ${found} for ${expected}`,
        ).toBeLessThan(1e-9);
      }
    }
  });

  it('name only what the step says it needs', async () => {
    const worksheet = await loadWorksheet(data.exercise.worksheet);
    const values = solveWorksheet(worksheet, drawGivens(data.exercise, worksheet, 1, data.inverters));
    for (const step of worksheet.steps) {
      if (step.kind !== 'numeric') continue;
      const known = Object.fromEntries(
        Object.entries(values).filter(
          ([id]) =>
            step.needs.includes(id) || !worksheet.steps.some((other) => other.id === id) || id === step.id,
        ),
      );
      const formula = typeof step.formula === 'function' ? step.formula(known) : step.formula;
      const sides = formula.op === 'equation' ? [formula.left, formula.right] : [formula];
      for (const side of sides) expect(() => evaluateFormula(side, known)).not.toThrow();
    }
  });
});
