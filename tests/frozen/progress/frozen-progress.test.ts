import { readFileSync } from 'node:fs';
import { crc32 } from 'node:zlib';
import { expect, test } from 'vitest';
import { currentVersion } from '../../../src/course/progress/migrations.ts';
import { parseProgressFile } from '../../../src/course/progress/parse-progress-file.ts';
import { readAttemptRow, readSnapshotRow } from '../../../src/course/progress/stored-row.ts';

/*
 * Records as each released version wrote them, and what they mean today. The records never change: only additions.
 * A seal is the CRC-32 of a record as compact JSON, so that an edit to a published record fails here. A new field changes
 * the *-meaning.json files, which may be edited with it.
 */
const released = [
  { version: 1, fileSeal: 'b4bbd77b', rowsSeal: '1d3f2169' },
  { version: 2, fileSeal: 'e91f0ab8', rowsSeal: '4cdad6a4' },
];

const textOf = (name: string): string => readFileSync(new URL(name, import.meta.url), 'utf8');
const sealOf = (text: string): string => crc32(Buffer.from(JSON.stringify(JSON.parse(text)))).toString(16);
const meaningOf = (version: number) => JSON.parse(textOf(`v${version}-meaning.json`));

test('holds a record of every version up to the current one', () => {
  expect(released.map(({ version }) => version)).toEqual(
    Array.from({ length: currentVersion }, (_each, index) => index + 1),
  );
});

test.each(released)(
  'a file of version $version is unedited and still means what it meant',
  ({ version, fileSeal }) => {
    const text = textOf(`v${version}-file.json`);
    expect(sealOf(text)).toBe(fileSeal);
    expect(parseProgressFile(text)).toMatchObject({ kind: 'read', version, progress: meaningOf(version) });
  },
);

test.each(released)(
  'stored rows of version $version are unedited and still mean what they meant',
  ({ version, rowsSeal }) => {
    const text = textOf(`v${version}-rows.json`);
    expect(sealOf(text)).toBe(rowsSeal);
    const rows = JSON.parse(text);
    const { attempts, ...snapshot } = meaningOf(version);
    expect(readSnapshotRow(rows.snapshot)).toEqual({ kind: 'read', value: snapshot });
    for (const row of rows.attempts) {
      const value = attempts.find(({ id }: { id: string }) => id === row.id);
      expect(readAttemptRow(row)).toEqual({ kind: 'read', value });
    }
  },
);
