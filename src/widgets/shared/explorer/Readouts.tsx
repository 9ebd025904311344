import type { VNode } from 'preact';

export interface Readout {
  readonly name: string;
  readonly value: string;
  /** The one that the explorer is about. */
  readonly main?: boolean;
}

/** The figures of the moment, in named boxes. */
export function Readouts({ readouts }: { readouts: readonly Readout[] }): VNode {
  return (
    <dl class="explorer-readouts">
      {readouts.map(({ name, value, main }, place) => (
        <div key={place} class={main ? 'readout-main' : undefined}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
