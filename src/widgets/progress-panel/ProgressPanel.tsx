import '@preact/signals';
import type { VNode } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import words from '../../../content/strings/progress.en.json' with { type: 'json' };
import { courseProgress } from '../shared/progress/course-progress.ts';
import { fill } from '../strings/fill.ts';
import { downloadText } from './download-text.ts';
import { ImportField } from './ImportField.tsx';
import { ResetButton } from './ResetButton.tsx';
import { ScoreTable } from './ScoreTable.tsx';

export interface KnownExercise {
  uid: string;
  title: string;
  url: string;
}

/** What is kept on this device: its state in words, the scores, and a file to take along, bring back, or clear. */
export function ProgressPanel({ exercises }: { exercises: readonly KnownExercise[] }): VNode {
  const [isMounted, setMounted] = useState(false);
  useEffect(() => {
    void courseProgress.start();
    setMounted(true);
  }, []);
  // The first render must equal the server's, which knows no progress.
  const { state, reason, copyKept } = isMounted
    ? courseProgress.saveState.value
    : ({ state: 'loading', reason: null, copyKept: false } as const);
  const progress = courseProgress.progress.value;
  const keptAside = courseProgress.keptAside.value;

  async function download(): Promise<void> {
    const { fileName, text } = await courseProgress.exportFile();
    downloadText(fileName, text);
  }

  return (
    <div class="progress-panel">
      <div role="status" class="progress-state" data-state={state}>
        <p>
          <strong>{words[`state-${state}`]}</strong>
        </p>
        {reason !== null && <p>{words[reason]}</p>}
        {copyKept && <p>{words['copy-kept']}</p>}
      </div>
      <div class="ws-actions">
        <button type="button" class="btn btn-primary" disabled={!isMounted} onClick={() => void download()}>
          {words.export}
        </button>
        {state === 'not-saved' && (
          <button type="button" class="btn" onClick={() => void courseProgress.retry()}>
            {words.retry}
          </button>
        )}
        {isMounted &&
          keptAside.map(({ id, raw }) => (
            <button key={id} type="button" class="btn" onClick={() => downloadText(`${id}.txt`, raw)}>
              {words['kept-aside-download']}
            </button>
          ))}
      </div>
      <ImportField isReady={isMounted} />
      <h2>{words['scores-title']}</h2>
      {isMounted && progress.attempts.length > 0 ? (
        <ScoreTable progress={progress} exercises={exercises} />
      ) : (
        <p>{words['scores-none']}</p>
      )}
      <h2>{words['reset-title']}</h2>
      <p>{fill(words['reset-text'], { count: isMounted ? progress.attempts.length : 0 })}</p>
      <ResetButton isReady={isMounted} />
    </div>
  );
}
