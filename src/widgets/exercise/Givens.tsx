import type { VNode } from 'preact';
import type { GivenRows } from '../../course/exercises/given-rows.ts';
import { DatasheetCard } from '../shared/DatasheetCard.tsx';
import { DataTable } from '../shared/DataTable.tsx';
import { words } from './words.ts';

/** What is known: single figures, tables, and the datasheets of the units in question. */
export function Givens({ givens }: { givens: GivenRows }): VNode {
  return (
    <div class="ws-givens">
      {givens.facts.length > 0 && (
        <table class="ws-given">
          <caption>{words.labels.given}</caption>
          <tbody>
            {givens.facts.map(({ label, value }) => (
              <tr key={label}>
                <th scope="row">{label}</th>
                <td>{value}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {givens.tables.map((table) => (
        <DataTable key={table.caption} {...table} never={words.labels.never} />
      ))}
      {givens.datasheets.map((datasheet) => (
        <DatasheetCard key={datasheet.id} datasheet={datasheet} first={givens.datasheetLines} />
      ))}
    </div>
  );
}
