import type { VNode } from 'preact';
import { stillWhileSame } from '../controls/still-while-same.ts';

export interface KeyEntry {
  /** Classes of the line in the plot. */
  readonly line: string;
  readonly label: string;
}

function DrawnKey({ entries }: { entries: readonly KeyEntry[] }): VNode {
  return (
    <ul class="plot-key">
      {entries.map(({ line, label }) => (
        <li key={label}>
          <svg viewBox="0 0 36 10" width="36" height="10" aria-hidden="true">
            <path class={line} d="M0 5H36" />
          </svg>
          {label}
        </li>
      ))}
    </ul>
  );
}

/** What each line of a plot stands for, beside a piece of it. Give it the same array while nothing changes. */
export const Key = stillWhileSame(DrawnKey);
