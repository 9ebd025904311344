import type { VNode } from 'preact';
import equipment from '../../../content/strings/equipment.en.json' with { type: 'json' };
import type { DatasheetLine } from '../../course/worksheets/datasheet-line.ts';
import type { InverterDatasheet } from '../../engine/index.ts';
import { fill } from '../strings/fill.ts';
import { datasheetLines, type PrintedLine } from './datasheet-lines.ts';

export interface DatasheetCardProps {
  datasheet: InverterDatasheet;
  /** Lines to print open; the others are folded away beneath them. Null prints all. */
  first: readonly DatasheetLine[] | null;
}

/** An invented unit's datasheet as a printed card. */
export function DatasheetCard({ datasheet, first }: DatasheetCardProps): VNode {
  const lines = datasheetLines(datasheet);
  const caption = fill(equipment.datasheet.caption, { name: datasheet.name });
  const open = first ? lines.filter(({ id }) => first.includes(id)) : lines;
  const folded = lines.filter((line) => !open.includes(line));
  return (
    <div class="datasheet-card">
      <Lines caption={caption} lines={open} />
      {folded.length > 0 && (
        <details>
          <summary>{fill(equipment.datasheet.rest, { name: datasheet.name })}</summary>
          <Lines caption={caption} lines={folded} isCaptionHidden />
        </details>
      )}
    </div>
  );
}

function Lines({
  caption,
  lines,
  isCaptionHidden = false,
}: {
  caption: string;
  lines: readonly PrintedLine[];
  isCaptionHidden?: boolean;
}): VNode {
  return (
    <table class="ws-given datasheet">
      <caption class={isCaptionHidden ? 'visually-hidden' : ''}>{caption}</caption>
      <tbody>
        {lines.map(({ id, label, value }) => (
          <tr key={id}>
            <th scope="row">{label}</th>
            <td>{value}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
