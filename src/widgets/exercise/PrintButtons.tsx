import type { VNode } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Session } from '../../course/exercises/open-session.ts';
import type { ExplainedStep } from '../../course/explanation/explain.ts';
import { WorkedSolution } from './WorkedSolution.tsx';
import { words } from './words.ts';

export interface PrintButtonsProps {
  session: Session | null;
  sources: Readonly<Record<string, string>>;
}

/** The sheet on paper, alone or with its key on a page of its own. The key is on the page only while it is printed. */
export function PrintButtons({ session, sources }: PrintButtonsProps): VNode {
  const [key, setKey] = useState<readonly ExplainedStep[] | null>(null);
  useEffect(() => {
    if (!key) return;
    const done = (): void => setKey(null);
    addEventListener('afterprint', done, { once: true });
    print();
    return () => removeEventListener('afterprint', done);
  }, [key]);
  return (
    <>
      <button type="button" class="btn btn-quiet no-print" onClick={() => print()}>
        {words.actions.print}
      </button>
      <button
        type="button"
        class="btn btn-quiet no-print"
        disabled={!session}
        onClick={() => session && setKey(session.solution())}
      >
        {words.actions.printKey}
      </button>
      {key && session && (
        <div class="print-only ws-answers">
          <WorkedSolution
            steps={key}
            results={new Map()}
            session={session}
            sources={sources}
            id="printed-key"
          />
        </div>
      )}
    </>
  );
}
