import { describe, expect, it } from 'vitest';
import { acPowerRows } from '../published/rows/ac-power.ts';
import { dutyRmsRows } from '../published/rows/duty-rms.ts';
import { motorsNameplateRows } from '../published/rows/motors-nameplate.ts';
import { krauseRows, runUpRows } from '../published/rows/motors-run-up.ts';
import { singlePhaseMotorRows } from '../published/rows/motors-single-phase.ts';
import { motorsThreePhaseRows } from '../published/rows/motors-three-phase.ts';
import { shaftLoadRows } from '../published/rows/shaft-loads.ts';
import { thermalRows } from '../published/rows/thermal.ts';
import { waveformRows } from '../published/rows/waveforms.ts';
import { idsIn } from '../support/lesson-files.ts';
import { sourceFiles } from '../support/source-files.ts';

const known = idsIn('content/sources.yaml');
const lost = (found: readonly { id: string; where: string }[]) =>
  found.filter(({ id }) => !known.includes(id));

/** `Source: bird, ch. 26; derived (two nodes)`: one or more ids, each with its place and a remark. */
const idsOfLine = (line: string): string[] =>
  line.split(/;\s*(?![^(]*\))/).map((part) => /^[a-z0-9-]+/.exec(part.trim())?.[0] ?? part);

describe('every source named', () => {
  it('in a doc block of the engine is an entry of content/sources.yaml, or "none" with its reason', () => {
    const named = sourceFiles('src/engine').flatMap(({ path, text }) =>
      [...text.matchAll(/\*\s+Source:\s+(.+)$/gm)].flatMap(([, line = '']) =>
        idsOfLine(line).map((id) => ({
          id: /^none \(.+\)$/.test(line) ? 'derived' : id,
          where: `${path}: ${line}`,
        })),
      ),
    );
    expect(named.length).toBeGreaterThan(60);
    expect(lost(named)).toEqual([]);
  });

  it('in a worksheet is an entry of content/sources.yaml', () => {
    const named = sourceFiles('src/course/worksheets').flatMap(({ path, text }) =>
      [...text.matchAll(/\bsource: '([^']*)'/g)].map(([, id = '']) => ({ id, where: path })),
    );
    expect(named.length).toBeGreaterThan(50);
    expect(lost(named)).toEqual([]);
  });

  it('beside a published figure is an entry of content/sources.yaml', () => {
    const rows: readonly { id: string; source: string }[] = [
      ...acPowerRows,
      ...dutyRmsRows,
      ...krauseRows,
      ...motorsNameplateRows,
      ...motorsThreePhaseRows,
      ...runUpRows,
      ...shaftLoadRows,
      ...singlePhaseMotorRows,
      ...thermalRows,
      ...waveformRows,
    ];
    expect(rows.length).toBeGreaterThan(60);
    expect(lost(rows.map(({ id, source }) => ({ id: source, where: id })))).toEqual([]);
  });
});
