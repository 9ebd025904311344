import { readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join, relative } from 'node:path';
import { parseDocument } from 'yaml';
import type { z } from 'zod';
import { checkedData } from '../course/schema/checked-data.ts';

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
 * @throws {Error} listing each fault: file, field, expected, found, hint
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
  if (fault) {
    throw new Error(
      `\nfile:     ${file}\nfield:    the whole file\nexpected: readable YAML\nfound:    ${fault.message}\nhint:     look at the line named above it; text with a colon needs quotes.\n`,
    );
  }
  return checkedData(file, document.toJS(), schema);
}
