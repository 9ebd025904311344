import type { ComponentChildren, VNode } from 'preact';
import words from '../../../../content/strings/explorers.en.json' with { type: 'json' };
import type { PrintedTable } from '../../../course/exercises/given-rows.ts';
import { Key, type KeyEntry } from '../chart/Key.tsx';
import { Announcement } from './Announcement.tsx';
import { type Readout, Readouts } from './Readouts.tsx';
import { Summary } from './Summary.tsx';
import { TableTwin } from './TableTwin.tsx';

export interface ExplorerFrameProps {
  title: string;
  plot: ComponentChildren;
  lines?: readonly KeyEntry[];
  readouts: readonly Readout[];
  controls: ComponentChildren;
  /** What the plot shows now, in one or two sentences. */
  summary: string;
  /** Anything else between the sentence and the table. */
  more?: ComponentChildren;
  table: () => PrintedTable;
}

/** The shape every explorer has: plot, readings, controls, a sentence, and the same as a table. */
export function ExplorerFrame(props: ExplorerFrameProps): VNode {
  const { title, plot, lines, readouts, controls, summary, more, table } = props;
  return (
    <section class="explorer" aria-label={title}>
      <p class="explorer-title">
        <span class="explorer-kicker">{words.frame.kicker}</span> {title}
      </p>
      <div class="explorer-plot">{plot}</div>
      {lines && <Key entries={lines} />}
      <Readouts readouts={readouts} />
      <fieldset class="explorer-controls">
        <legend class="visually-hidden">{words.frame.controls}</legend>
        {controls}
      </fieldset>
      <Summary text={summary} />
      <Announcement text={summary} />
      {more}
      <TableTwin table={table} />
    </section>
  );
}
