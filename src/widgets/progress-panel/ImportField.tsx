import type { VNode } from 'preact';
import { useId, useState } from 'preact/hooks';
import words from '../../../content/strings/progress.en.json' with { type: 'json' };
import { courseProgress } from '../shared/progress/course-progress.ts';

/** Brings a progress file back. It is added to what is here; nothing is replaced. */
export function ImportField({ isReady }: { isReady: boolean }): VNode {
  const id = useId();
  const [message, setMessage] = useState('');

  async function take(input: HTMLInputElement): Promise<void> {
    const file = input.files?.[0];
    if (!file) return;
    const outcome = await courseProgress.importFile(await file.text());
    setMessage(outcome.kind === 'imported' ? words['import-done'] : words[`import-${outcome.reason}`]);
    // The same file may be chosen again, after it was mended.
    input.value = '';
  }

  return (
    <div class="progress-import">
      <label for={id}>{words.import}</label>
      <input
        id={id}
        type="file"
        accept="application/json,.json"
        disabled={!isReady}
        onChange={(event) => void take(event.currentTarget)}
      />
      <p role="status">{message}</p>
    </div>
  );
}
