import { readdirSync, readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { type Lesson, lessonSchema } from '../../src/course/schema/lesson.ts';

export interface LessonFile {
  /** Path from the project's root. */
  path: string;
  data: Lesson;
  /** Everything below the front matter. */
  body: string;
}

const ROOT = 'content/lessons';

/** Every lesson, in order. @throws when a front matter does not fit the schema */
export function lessonFiles(): LessonFile[] {
  return readdirSync(ROOT, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.mdx'))
    .sort()
    .map((name) => {
      const path = `${ROOT}/${name.replaceAll('\\', '/')}`;
      const [, front = '', body = ''] =
        /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(readFileSync(path, 'utf8')) ?? [];
      return { path, data: lessonSchema.parse(parse(front)), body };
    });
}

/** The values of one attribute of a component, wherever it stands: `idsOf(body, 'Term', 'id')`. */
export const attributesOf = (body: string, component: string, attribute: string): string[] =>
  [...body.matchAll(new RegExp(`<${component}\\b[^>]*?\\s${attribute}="([^"]*)"`, 'g'))].map(
    (match) => match[1] ?? '',
  );

/** The ids of a content file that holds one list. */
export const idsIn = (file: string): string[] =>
  (parse(readFileSync(file, 'utf8')) as { id: string }[]).map(({ id }) => id);
