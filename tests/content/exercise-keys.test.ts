import { describe, expect, it } from 'vitest';
import { readExercises } from '../../src/content-reader/read-exercises.ts';
import { openSession } from '../../src/course/exercises/open-session.ts';
import { loadWorksheet } from '../../src/course/worksheets/registry.ts';
import { seeds } from '../support/seeds.ts';

const exercises = readExercises();

describe.each(exercises.map((data) => [data.slug, data] as const))('exercise %s', (_, data) => {
  it('earns full marks with its own key, in every spelling of it', async () => {
    for (const seed of seeds(40)) {
      const session = await openSession(data, seed);
      const key = Object.fromEntries(session.asked.map((stepId) => [stepId, session.reveal(stepId).answer]));
      const spellings = [
        key,
        mapText(key, (text) => text.replaceAll('\u202f', ' ')),
        mapText(key, (text) => text.replaceAll('\u202f', '')),
        mapText(key, (text) => text.replace(/(\d)\.(\d)/, '$1,$2').replaceAll('\u202f', ' ')),
      ];
      for (const [place, answers] of spellings.entries()) {
        const outcome = session.grade(answers);
        // A decimal comma before exactly three digits is refused as ambiguous: not ready, never wrong.
        const allowed = place === 3 ? ['graded', 'not-ready'] : ['graded'];
        expect(allowed, `seed ${seed} ${JSON.stringify(answers)}`).toContain(outcome.kind);
        if (outcome.kind === 'graded') {
          expect(
            outcome.steps.map((step) => step.mark),
            `seed ${seed} ${JSON.stringify(answers)}`,
          ).toEqual(session.asked.map(() => 'right'));
        }
      }
    }
  });

  it('asks at least one step, and shows or tells no key of an asked or hidden one', async () => {
    const session = await openSession(data, 3);
    expect(session.asked.length).toBeGreaterThan(0);
    const shown = session.view.steps.flatMap((step) => (step.mode === 'shown' ? [step.stepId] : []));
    for (const [stepId, mode] of Object.entries(data.exercise.steps)) {
      expect(shown.includes(stepId)).toBe(mode === 'shown');
    }
  });

  it('lets no shown step quote a step that is asked after or with it', async () => {
    const worksheet = await loadWorksheet(data.exercise.worksheet);
    const leaks = worksheet.steps.flatMap((step) =>
      data.exercise.steps[step.id] === 'shown'
        ? step.needs
            .filter((need) => data.exercise.steps[need] === 'asked')
            .map((need) => `${step.id} quotes ${need}`)
        : [],
    );
    expect(leaks).toEqual([]);
  });

  it('gives the same sheet for the same seed, and another for another', async () => {
    const [first, again] = [await openSession(data, 11), await openSession(data, 11)];
    expect(again.view).toEqual(first.view);
    const others = await Promise.all(
      seeds(30).map(async (seed) => JSON.stringify((await openSession(data, seed)).view.givens)),
    );
    expect(new Set(others).size).toBeGreaterThan(1);
  });

  it('writes out a worked solution whose last line is the answer', async () => {
    const session = await openSession(data, 5);
    const solution = session.solution();
    const last = session.asked.at(-1) ?? '';
    const line = solution.find((step) => step.stepId === last);
    const key = session.reveal(last).answer;
    expect(
      session.grade({
        ...Object.fromEntries(session.asked.map((id) => [id, session.reveal(id).answer])),
        [last]: key,
      }).kind,
    ).toBe('graded');
    expect(line?.result).toBeTruthy();
  });

  it('never marks an empty sheet', async () => {
    const session = await openSession(data, 2);
    const outcome = session.grade({});
    expect(outcome.kind).toBe('not-ready');
    if (outcome.kind === 'not-ready') expect(Object.keys(outcome.steps)).toEqual([...session.asked]);
  });
});

function mapText(answers: Record<string, string>, change: (text: string) => string): Record<string, string> {
  return Object.fromEntries(Object.entries(answers).map(([id, text]) => [id, change(text)]));
}
