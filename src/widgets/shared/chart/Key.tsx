import type { VNode } from 'preact';

export interface KeyEntry {
  /** Classes of the line in the plot. */
  readonly line: string;
  readonly label: string;
}

/** What each line of a plot stands for, beside a piece of it. */
export function Key({ entries }: { entries: readonly KeyEntry[] }): VNode {
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
