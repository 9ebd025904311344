import type { VNode } from 'preact';
import { useMemo } from 'preact/hooks';
import words from '../../../../content/strings/explorers.en.json' with { type: 'json' };
import type { PrintedTable } from '../../../course/exercises/given-rows.ts';
import { useSettled } from '../chart/use-settled.ts';
import { DataTable } from '../DataTable.tsx';

/** The plot as a table. Made when the controls come to rest, not in every frame of a drag. */
export function TableTwin({ table }: { table: () => PrintedTable }): VNode {
  const settled = useSettled(table, 250);
  return useMemo(
    () => (
      <details class="explorer-table">
        <summary>{words.frame.table}</summary>
        <DataTable {...settled()} never={words.frame.never} />
      </details>
    ),
    [settled],
  );
}
