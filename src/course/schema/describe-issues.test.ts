import { expect, test } from 'vitest';
import { describeIssues } from './describe-issues.ts';
import { glossaryEntrySchema } from './glossary.ts';
import { lessonSchema } from './lesson.ts';

const entry = {
  id: 'current',
  kind: 'quantity',
  name: 'Current',
  unit: 'A',
  meaning: 'Flow.',
  also: [],
  see: [],
};

function faults(schema: typeof glossaryEntrySchema | typeof lessonSchema, data: unknown): string {
  const result = schema.safeParse(data);
  return result.success ? '' : describeIssues('content/x.yaml', data, result.error);
}

test('accepts a sound entry', () => {
  expect(faults(glossaryEntrySchema, entry)).toBe('');
});

test('names file, field, expected, found and hint for a missing field', () => {
  const { meaning: _, ...short } = entry;
  expect(faults(glossaryEntrySchema, short)).toBe(
    'file:     content/x.yaml\nfield:    meaning\nexpected: string\nfound:    nothing\nhint:     add the field.\n',
  );
});

test('tells of quotes when YAML has read a number where text belongs', () => {
  expect(faults(glossaryEntrySchema, { ...entry, symbol: { plain: 0 } })).toContain('put it in quotes');
});

test('names an unknown field by its own name', () => {
  expect(faults(glossaryEntrySchema, { ...entry, units: 'A' })).toContain('found:    units');
});

test('refuses a quantity without a unit and a term with one', () => {
  const { unit: _, ...unitless } = entry;
  expect(faults(glossaryEntrySchema, unitless)).toContain('field:    unit');
  expect(faults(glossaryEntrySchema, { ...entry, kind: 'term' })).toContain('field:    unit');
});

test('shows the place inside a list', () => {
  expect(faults(lessonSchema, { goals: ['a', 7] })).toContain('field:    goals.1');
});
