import type { VNode } from 'preact';
import { useMemo } from 'preact/hooks';
import { useSettled } from '../../shared/chart/use-settled.ts';
import { fill, words } from '../words.ts';
import type { PatternRun } from './run-pattern.ts';
import { eventLines } from './timeline-words.ts';

const text = words.loadTimeline.events;

/** What happens in the run, line by line. Follows when the controls come to rest. */
export function EventList({ run }: { run: PatternRun }): VNode {
  const settled = useSettled(run, 150);
  return useMemo(() => {
    const { lines, more } = eventLines(settled);
    return (
      <div class="event-list">
        <p class="event-heading">{text.heading}</p>
        {lines.length === 0 ? (
          <p>{text.none}</p>
        ) : (
          <ol>
            {lines.map(({ time, letter, sentence }, place) => (
              <li key={place}>
                <span class="event-time">{time}</span>
                <span class="event-letter">{letter}</span>
                <span>{sentence}</span>
              </li>
            ))}
          </ol>
        )}
        {more > 0 && <p>{fill(text.more, { count: more })}</p>}
      </div>
    );
  }, [settled]);
}
