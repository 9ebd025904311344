import type { VNode } from 'preact';
import equipment from '../../../content/strings/equipment.en.json' with { type: 'json' };
import type { InverterDatasheet } from '../../engine/index.ts';
import { fill } from '../strings/fill.ts';
import { datasheetLines } from './datasheet-lines.ts';

/** An invented unit's datasheet as a printed card. */
export function DatasheetCard({ datasheet }: { datasheet: InverterDatasheet }): VNode {
  return (
    <table class="ws-given datasheet">
      <caption>{fill(equipment.datasheet.caption, { name: datasheet.name })}</caption>
      <tbody>
        {datasheetLines(datasheet).map(({ label, value }) => (
          <tr key={label}>
            <th scope="row">{label}</th>
            <td>{value}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
