import type { VNode } from 'preact';
import { useId } from 'preact/hooks';
import type { PrintedTable } from '../../course/exercises/given-rows.ts';

/** A printed table: the first column names the row. It scrolls within itself where the screen is narrow; its caption does not. */
export function DataTable({ caption, columns, rows, never }: PrintedTable & { never: string }): VNode {
  const id = useId();
  return (
    <div>
      <p class="table-caption" id={id}>
        {caption}
      </p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reachable by keyboard (WCAG 2.1.1) */}
      <section class="table-scroll" aria-labelledby={id} tabIndex={0}>
        <table class="data-table" aria-labelledby={id}>
          <thead>
            <tr>
              {columns.map((column) => (
                <th key={column} scope="col">
                  {column}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((cells, place) => (
              <tr key={place}>
                {cells.map((cell, column) =>
                  column === 0 ? (
                    <th key={column} scope="row">
                      {cell ?? never}
                    </th>
                  ) : (
                    <td key={column}>{cell ?? never}</td>
                  ),
                )}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </div>
  );
}
