import type { VNode } from 'preact';
import type { Mark } from '../../course/grading/grade-answers.ts';
import { words } from './words.ts';

/** Pencil strokes of our own: a tick, a tick led in by an arrow, a cross, an open eye, a question. */
const strokes: Readonly<Record<Mark | 'not-ready', string>> = {
  right: 'M4 13l6 6L21 5',
  carried: 'M2 7h7M6 4l3 3-3 3M7 15l5 5 9-13',
  wrong: 'M5 5l14 14M19 5L5 19',
  revealed: 'M2 12c5-8 15-8 20 0-5 8-15 8-20 0zM12 9v6M9 12h6',
  'not-ready': 'M8 8c0-5 9-5 9 0 0 4-5 3-5 8M12 20v1',
};

/** The mark in the margin: a sign and a word, never colour alone. */
export function MarkSign({ id, mark }: { id: string; mark: Mark | 'not-ready' | null }): VNode {
  return (
    <p class="ws-mark" id={id}>
      {mark && (
        <>
          <svg viewBox="0 0 24 24" fill="none" stroke="currentColor" stroke-width="2.5" aria-hidden="true">
            <path d={strokes[mark]} />
          </svg>
          {words.marks[mark]}
        </>
      )}
    </p>
  );
}
