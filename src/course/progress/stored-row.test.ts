import fc from 'fast-check';
import { expect, test } from 'vitest';
import { progressLimits } from './progress-limits.ts';
import { anyProgress, attemptWith } from './progress-test-values.ts';
import { readAttempt } from './record-readers.ts';
import { readAttemptRow, readProgressRow, readSnapshotRow, writeRow } from './stored-row.ts';

test('reading what was written gives it back', () => {
  fc.assert(
    fc.property(anyProgress, (progress) => {
      expect(readProgressRow(writeRow('copy', progress))).toEqual({ kind: 'read', value: progress });
      const { attempts, ...snapshot } = progress;
      expect(readSnapshotRow(writeRow('current', snapshot))).toEqual({ kind: 'read', value: snapshot });
      for (const attempt of attempts) {
        expect(readAttemptRow(writeRow(attempt.id, attempt))).toEqual({ kind: 'read', value: attempt });
      }
    }),
  );
});

test('one changed character anywhere in the body is found, and the text is kept', () => {
  const row = writeRow('a-1', attemptWith({}));
  for (let at = 0; at < row.body.length; at++) {
    const body = `${row.body.slice(0, at)}${row.body[at] === '1' ? '2' : '1'}${row.body.slice(at + 1)}`;
    const damaged = { ...row, body };
    expect(readAttemptRow(damaged)).toMatchObject({ kind: 'damaged', raw: JSON.stringify(damaged) });
  }
});

test('a row under another id, or of a version that never was, is damaged', () => {
  const row = writeRow('a-1', attemptWith({}));
  expect(readAttemptRow({ ...row, id: 'a-2' }).kind).toBe('damaged');
  expect(readAttemptRow({ ...row, version: 0 }).kind).toBe('damaged');
  expect(readAttemptRow({ ...row, version: 1.5 }).kind).toBe('damaged');
});

test('a row of a newer version is told apart, whatever it holds', () => {
  expect(readAttemptRow({ id: 'a', version: 3, stuff: 1 })).toMatchObject({
    kind: 'newer-version',
    detail: '3',
  });
});

test('no value makes the reading throw', () => {
  const circular: { self?: unknown } = {};
  circular.self = circular;
  for (const value of [undefined, null, 1n, circular, Symbol('s'), { id: 1n, toString: 0 }, [], 'text']) {
    expect(readAttemptRow(value).kind).toBe('damaged');
  }
  fc.assert(fc.property(fc.anything(), (value) => readSnapshotRow(value).kind !== 'read'));
});

test('an attempt is refused, naming the field, when it could not be stored and read back', () => {
  const refusal = (fields: object) => () => readAttempt({ ...attemptWith({}), ...fields }, 'attempt');
  expect(refusal({ earned: Number.NaN })).toThrow(/^earned$/);
  expect(refusal({ earned: -1 })).toThrow(/^earned$/);
  expect(refusal({ at: Number.POSITIVE_INFINITY })).toThrow(/^at$/);
  expect(refusal({ seed: 0.5 })).toThrow(/^seed$/);
  expect(refusal({ id: '' })).toThrow(/^id$/);
  expect(refusal({ exerciseUid: '__proto__' })).toThrow(/^exerciseUid$/);
  expect(refusal({ steps: new Array(progressLimits.stepsPerAttempt + 1).fill({}) })).toThrow(/^steps$/);
});

test('cuts a typed answer at the limit and drops fields it does not know', () => {
  const step = {
    stepId: 's',
    given: 'x'.repeat(progressLimits.typed + 1),
    earned: 0,
    possible: 1,
    carried: false,
  };
  const read = readAttempt({ ...attemptWith({}), extra: 1, steps: [{ ...step, slips: [] }] }, 'attempt');
  expect(read.steps[0]?.given.length).toBe(progressLimits.typed);
  expect(read).not.toHaveProperty('extra');
});
