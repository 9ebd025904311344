import fc from 'fast-check';
import { expect, expectTypeOf, test } from 'vitest';
import type { z } from 'zod';
import { checksum } from './checksum.ts';
import { parseProgressFile } from './parse-progress-file.ts';
import type { attemptSchema, draftSchema, lessonMarkSchema } from './progress-file-schema.ts';
import { progressLimits } from './progress-limits.ts';
import { anyProgress, attemptWith } from './progress-test-values.ts';
import { type Attempt, type Draft, emptyProgress, type LessonMark } from './progress-types.ts';
import { writeProgressFile } from './write-progress-file.ts';

const valid = writeProgressFile({ ...emptyProgress, attempts: [attemptWith({})] }, 5);

/** The valid file with its data changed, summed up anew or not. */
function changed(change: (data: Record<string, unknown>) => unknown, isSummed = true): string {
  const file = JSON.parse(valid);
  change(file.data);
  return JSON.stringify(isSummed ? { ...file, checksum: checksum(JSON.stringify(file.data)) } : file);
}

function reasonFor(text: string): string {
  const reading = parseProgressFile(text);
  return reading.kind === 'refused' ? `${reading.reason}: ${reading.detail}` : 'read';
}

test('reading an exported file gives the record back', () => {
  fc.assert(
    fc.property(anyProgress, fc.nat(), (progress, exportedAt) => {
      const reading = parseProgressFile(writeProgressFile(progress, exportedAt));
      expect(reading).toEqual({ kind: 'read', progress, version: 2, exportedAt });
    }),
  );
});

test('accepts a file saved again with a byte order mark and other spacing', () => {
  expect(reasonFor(`\uFEFF${JSON.stringify(JSON.parse(valid), null, 4)}`)).toBe('read');
});

test.each([
  ['a text that is not JSON', '{', 'not-json: '],
  ['an empty file', '', 'not-json: '],
  ['JSON of something else', '{"kind":"recipe"}', 'wrong-kind: '],
  ['a bare value', 'null', 'wrong-kind: '],
  ['a file of a newer version', valid.replace('"version": 2', '"version": 3'), 'newer-version: 3'],
  ['a version that never was', valid.replace('"version": 2', '"version": 0'), 'wrong-shape: version'],
  ['a prototype key', valid.replace('"theme"', '"__proto__": {}, "theme"'), 'forbidden-key: __proto__'],
  ['a constructor key', valid.replace('"theme"', '"constructor": 1, "theme"'), 'forbidden-key: constructor'],
  [
    'a prototype id',
    changed((d) => Object.assign(d, { attempts: [attemptWith({ id: 'prototype' })] })),
    'wrong-shape: data.attempts.0.id custom',
  ],
  ['an unknown field', changed((d) => Object.assign(d, { extra: 1 })), 'wrong-shape: data unrecognized_keys'],
  [
    'a mark below nought',
    changed((d) => Object.assign(d, { attempts: [attemptWith({ earned: -1 })] })),
    'wrong-shape: data.attempts.0.earned too_small',
  ],
  [
    'a draft under a wrong key',
    changed((d) => Object.assign(d, { drafts: { x: { exerciseUid: 'e', seed: 1, answers: {}, at: 1 } } })),
    'wrong-shape: data.drafts custom',
  ],
])('refuses %s', (_what, text, reason) => {
  expect(reasonFor(text)).toBe(reason);
});

test('refuses data that no longer agrees with its checksum', () => {
  const better = changed((data) => Object.assign(data, { attempts: [attemptWith({ earned: 99 })] }), false);
  expect(reasonFor(better)).toMatch(/^checksum: /);
});

test('refuses a file one character too long before parsing it, and parses one at the limit', () => {
  const room = progressLimits.fileCharacters - valid.length;
  expect(reasonFor(valid + ' '.repeat(room))).toBe('read');
  expect(reasonFor(valid + ' '.repeat(room + 1))).toBe(`too-large: ${progressLimits.fileCharacters + 1}`);
});

test('refuses nesting beyond that of a valid file, however deep', () => {
  const nested = (depth: number) =>
    `{"kind":"headroom-progress","a":${'['.repeat(depth)}${']'.repeat(depth)}}`;
  expect(reasonFor(nested(progressLimits.fileDepth - 1))).toBe('wrong-shape: version');
  expect(reasonFor(nested(progressLimits.fileDepth))).toBe('too-deep: 7');
  expect(reasonFor(nested(1_000_000))).toMatch(/^(too-deep: 7|not-json: nesting)$/);
});

test('refuses more entries than any record has', () => {
  expect(reasonFor(JSON.stringify(new Array(progressLimits.attempts + 1).fill(0)))).toBe('too-many: 50001');
});

test('no text makes it throw', () => {
  const anyText = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.json(),
    fc.json().map((json) => `{"kind":"headroom-progress","version":2,"data":${json}}`),
  );
  fc.assert(fc.property(anyText, (text) => parseProgressFile(text).kind === 'refused'));
});

test('the schema covers the fields of the types, all and only', () => {
  expectTypeOf<keyof z.infer<typeof attemptSchema>>().toEqualTypeOf<keyof Attempt>();
  expectTypeOf<keyof z.infer<typeof attemptSchema>['steps'][number]>().toEqualTypeOf<
    keyof Attempt['steps'][number]
  >();
  expectTypeOf<keyof z.infer<typeof draftSchema>>().toEqualTypeOf<keyof Draft>();
  expectTypeOf<keyof z.infer<typeof lessonMarkSchema>>().toEqualTypeOf<keyof LessonMark>();
  expectTypeOf<z.infer<typeof attemptSchema>>().toExtend<Attempt>();
  expectTypeOf<z.infer<typeof draftSchema>>().toExtend<Draft>();
  expectTypeOf<z.infer<typeof lessonMarkSchema>>().toExtend<LessonMark>();
});
