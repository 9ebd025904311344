import { effect } from '@preact/signals';
import { map as words } from '../../../content/strings/en.json';
import { type LessonOutline, lessonCompletion } from '../../course/progress/lesson-completion.ts';
import { type CourseStep, nextStep } from '../../course/progress/next-step.ts';
import type { ProgressStore } from '../shared/progress/progress-store.ts';
import { fill } from '../strings/fill.ts';

interface MapRow extends LessonOutline {
  readonly row: HTMLElement;
  readonly title: string;
  readonly href: string;
  readonly about: string;
}

/** Shows on the course map what is begun and done, and moves the next step to the first thing still open. */
export function showMap(store: ProgressStore, place: HTMLElement): void {
  const rows = Array.from(place.querySelectorAll<HTMLElement>('[data-lesson]'), readRow);
  const course = rows.flatMap((row): CourseStep[] => [
    { kind: 'lesson', uid: row.lessonUid },
    ...row.exerciseUids.map((uid): CourseStep => ({ kind: 'exercise', uid })),
  ]);
  effect(() => {
    const progress = store.progress.value;
    let done = 0;
    for (const row of rows) {
      const { isComplete, isVisited, exercisesPassed } = lessonCompletion(progress, row);
      if (isComplete) done += 1;
      const state = row.row.querySelector<HTMLElement>('[data-lesson-state]');
      if (!state) continue;
      state.textContent = isComplete ? words.done : isVisited || exercisesPassed > 0 ? words.begun : '';
      state.toggleAttribute('data-done', isComplete);
    }
    const step = nextStep(progress, course);
    const isFresh = Object.keys(progress.lessons).length === 0 && progress.attempts.length === 0;
    showNext(rows, step, isFresh, done);
  });
}

function showNext(rows: readonly MapRow[], step: CourseStep | null, isFresh: boolean, done: number): void {
  const banner = document.querySelector('[data-next-step]');
  const link = banner?.querySelector('[data-next-link]');
  if (!banner || !link) return;
  const write = (name: string, text: string): void => {
    const place = banner.querySelector(`[data-next-${name}]`);
    if (place) place.textContent = text;
  };
  write('progress', fill(words.progress, { done, all: rows.length }));
  const row = step
    ? rows.find(({ lessonUid, exerciseUids }) => lessonUid === step.uid || exerciseUids.includes(step.uid))
    : rows[0];
  if (!row) return;
  link.textContent = row.title;
  link.setAttribute('href', step?.kind === 'exercise' ? `${row.href}#exercises` : row.href);
  write(
    'label',
    step === null
      ? words.again
      : isFresh
        ? words.start
        : step.kind === 'exercise'
          ? words.nextExercises
          : words.next,
  );
  write('about', row.about);
}

function readRow(row: HTMLElement): MapRow {
  const link = row.querySelector('a');
  const list = (text: string | undefined): string[] => (text ?? '').split(' ').filter((word) => word !== '');
  return {
    row,
    lessonUid: row.dataset['lesson'] ?? '',
    exerciseUids: list(row.dataset['exercises']),
    canDoIds: list(row.dataset['canDo']),
    title: link?.textContent ?? '',
    href: link?.getAttribute('href') ?? '',
    about: row.dataset['about'] ?? '',
  };
}
