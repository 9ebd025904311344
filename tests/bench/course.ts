import { readExercises } from '../../src/content-reader/read-exercises.ts';
import { diagnose } from '../../src/course/diagnosis/diagnose.ts';
import { drawGivens } from '../../src/course/exercises/draw-givens.ts';
import { loadWorksheet } from '../../src/course/worksheets/registry.ts';
import { solveWorksheet } from '../../src/course/worksheets/step-graph.ts';
import { parseQuantity } from '../../src/engine/index.ts';
import { medianNs, printFigure } from './measure.ts';

/** No figure at all: the search goes through every single slip and every pair. */
const UNMATCHED = 1.234e-7;

export async function course(): Promise<void> {
  let slowestSolve = { ns: 0, name: '' };
  let slowestSearch = { ns: 0, name: '' };
  for (const data of readExercises()) {
    const worksheet = await loadWorksheet(data.exercise.worksheet);
    const givens = drawGivens(data.exercise, worksheet, 7, data.inverters);
    const solve = medianNs(() => solveWorksheet(worksheet, givens), 50, 7);
    if (solve > slowestSolve.ns) slowestSolve = { ns: solve, name: worksheet.id };
    const last = worksheet.steps.filter((step) => step.kind === 'numeric').at(-1) ?? worksheet.steps.at(-1);
    if (!last) continue;
    const wrong = last.kind === 'numeric' ? UNMATCHED : last.kind === 'choice' ? '' : [];
    const search = medianNs(() => diagnose(worksheet, givens, last.id, wrong), 5, 7);
    if (search > slowestSearch.ns) slowestSearch = { ns: search, name: worksheet.id };
  }
  printFigure({ name: `Slowest worksheet to solve (${slowestSolve.name})`, ns: slowestSolve.ns });
  printFigure({
    name: `Slowest full slip search, all singles and pairs (${slowestSearch.name})`,
    ns: slowestSearch.ns,
  });

  const texts = ['34.8 A', '34,8A', '0.0348 kA', '1 200 mA', '≈ 12 A', '1.2e3 A', 'twelve', '8 kW'];
  const strings = Array.from({ length: 100_000 }, (_, place) => texts[place % texts.length] ?? '');
  printFigure({
    name: 'Parsing 100 000 strings',
    ns: medianNs(() => strings.filter((text) => parseQuantity(text, 'current').kind === 'ok').length, 1, 7),
    per: { name: 'a string', count: strings.length },
  });
}
