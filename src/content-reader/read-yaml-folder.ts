import { readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join, relative } from 'node:path';
import { parseDocument } from 'yaml';
import type { z } from 'zod';

/** The project's root: every command that reads content runs there. */
export const projectRoot: string = process.cwd();

export interface ContentFile<T> {
  /** File name without its endings. */
  slug: string;
  /** Name of the folder it stands in. */
  folder: string;
  /** Path from the project's root, for messages. */
  file: string;
  data: T;
}

/**
 * Reads every YAML file under a content folder through a schema.
 *
 * @throws {Error} listing each fault as "file: field: expected …, found …"
 */
export function readYamlFolder<T>(folder: string, schema: z.ZodType<T>): ContentFile<T>[] {
  const root = join(projectRoot, 'content', folder);
  return readdirSync(root, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.yaml'))
    .sort()
    .map((name) => {
      const path = join(root, name);
      const file = relative(projectRoot, path);
      return {
        slug: basename(name).replace(/(\.[a-z]{2})?\.yaml$/, ''),
        folder: basename(dirname(path)),
        file,
        data: parseYaml(readFileSync(path, 'utf8'), file, schema),
      };
    });
}

/** One YAML text through a schema. @throws {Error} naming file, field, what was expected and what was found */
export function parseYaml<T>(text: string, file: string, schema: z.ZodType<T>): T {
  const document = parseDocument(text, { merge: true });
  const [fault] = document.errors;
  if (fault) throw new Error(`${file}: expected readable YAML, found ${fault.message}`);
  const raw: unknown = document.toJS();
  const parsed = schema.safeParse(raw);
  if (parsed.success) return parsed.data;
  const lines = parsed.error.issues.map((issue) => {
    const field = issue.path.join('.') || '(whole file)';
    return `${file}: ${field}: ${issue.message}; found ${foundAt(raw, issue.path)}`;
  });
  throw new Error(lines.join('\n'));
}

function foundAt(raw: unknown, path: readonly PropertyKey[]): string {
  let found: unknown = raw;
  for (const key of path) found = (found as Record<PropertyKey, unknown> | undefined)?.[key];
  return found === undefined ? 'nothing' : JSON.stringify(found).slice(0, 80);
}
