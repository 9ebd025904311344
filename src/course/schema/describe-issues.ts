import type { z } from 'zod';

/** One line a content author can act on, for each thing wrong with a file: file, field, expected, found, hint. */
export function describeIssues(file: string, data: unknown, error: z.ZodError): string {
  return error.issues.map((issue) => describeIssue(file, data, issue)).join('\n');
}

function describeIssue(file: string, data: unknown, issue: z.core.$ZodIssue): string {
  const field = issue.path.length === 0 ? 'the whole file' : issue.path.map(String).join('.');
  const found = issue.code === 'unrecognized_keys' ? issue.keys.join(', ') : shown(valueAt(data, issue.path));
  return [
    `file:     ${file}`,
    `field:    ${field}`,
    `expected: ${expected(issue)}`,
    `found:    ${found}`,
    `hint:     ${hint(issue, found)}`,
    '',
  ].join('\n');
}

const nothing = 'nothing';

function expected(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return issue.expected;
    case 'unrecognized_keys':
      return 'only the fields of the schema';
    case 'invalid_value':
      return issue.values.map((value) => JSON.stringify(value)).join(' or ');
    case 'too_small':
      return `at least ${issue.minimum} (${issue.origin})`;
    case 'too_big':
      return `at most ${issue.maximum} (${issue.origin})`;
    case 'invalid_format':
      return issue.pattern === undefined ? issue.format : `text like ${issue.pattern}`;
    default:
      return issue.message;
  }
}

function hint(issue: z.core.$ZodIssue, found: string): string {
  if (issue.code === 'unrecognized_keys') {
    return 'correct a misspelt name; text with a comma inside { } needs quotes.';
  }
  if (issue.code !== 'invalid_type') return issue.message;
  if (found === nothing) return 'add the field.';
  if (issue.expected === 'string') return 'YAML reads this as something else than text: put it in quotes.';
  return issue.message;
}

function valueAt(data: unknown, path: readonly PropertyKey[]): unknown {
  let value = data;
  for (const key of path) {
    if (typeof value !== 'object' || value === null) return undefined;
    value = Object.getOwnPropertyDescriptor(value, key)?.value;
  }
  return value;
}

function shown(value: unknown): string {
  if (value === undefined) return nothing;
  const text = JSON.stringify(value) ?? String(value);
  return text.length > 120 ? `${text.slice(0, 117)}…` : text;
}
