import type { VNode } from 'preact';
import { useState } from 'preact/hooks';
import words from '../../../content/strings/progress.en.json' with { type: 'json' };
import { courseProgress } from '../shared/progress/course-progress.ts';

/** Clears everything, after a second, different press: marks cannot be brought back. */
export function ResetButton({ isReady }: { isReady: boolean }): VNode {
  const [isAsked, setAsked] = useState(false);
  if (!isAsked) {
    return (
      <button type="button" class="btn" disabled={!isReady} onClick={() => setAsked(true)}>
        {words['reset-ask']}
      </button>
    );
  }
  return (
    <fieldset class="ws-actions">
      <legend>{words['reset-sure']}</legend>
      <button type="button" class="btn btn-primary" onClick={() => setAsked(false)}>
        {words['reset-keep']}
      </button>
      <button
        type="button"
        class="btn"
        onClick={() => {
          setAsked(false);
          void courseProgress.reset();
        }}
      >
        {words['reset-do']}
      </button>
    </fieldset>
  );
}
