import type { ExerciseData } from '../content-reader/read-exercises.ts';
import type { PrintedTable } from '../course/exercises/given-rows.ts';
import type { Session } from '../course/exercises/open-session.ts';
import { mathText } from '../course/explanation/math-text.ts';
import { datasheetLines } from '../widgets/shared/datasheet-lines.ts';

/** The exercise, its worked solution and its answer key, as lines of text. */
export function keySheet({ slug, exercise }: ExerciseData, session: Session): string[] {
  const { view } = session;
  return [
    `${exercise.title}   (${slug}, seed ${session.seed})`,
    '',
    view.story,
    '',
    ...view.givens.facts.map(({ label, value }) => `  ${label}: ${value}`),
    ...view.givens.tables.flatMap(tableLines),
    ...view.givens.datasheets.flatMap((sheet) => [
      '',
      `  ${sheet.name}`,
      ...datasheetLines(sheet).map(({ label, value }) => `    ${label}: ${value}`),
    ]),
    '',
    'Worked solution',
    ...session
      .solution()
      .flatMap((step, place) => [
        '',
        `${place + 1}. ${step.prompt}`,
        `   ${step.why}`,
        ...[step.formula, step.substituted].flatMap((line) => (line ? [`   ${mathText(line)}`] : [])),
        `   → ${step.result}   [${step.source}]`,
      ]),
    '',
    'Answer key',
    ...session.asked.map((stepId) => `  ${stepId}: ${session.reveal(stepId).answer}`),
  ];
}

function tableLines({ caption, columns, rows }: PrintedTable): string[] {
  const cells = [columns, ...rows.map((row) => row.map((cell) => cell ?? '–'))];
  const widths = columns.map((_, column) => Math.max(...cells.map((row) => row[column]?.length ?? 0)));
  return [
    '',
    `  ${caption}`,
    ...cells.map((row) => `    ${row.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join('   ')}`),
  ];
}
