import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';

export interface SourceFile {
  /** Path from the project's root, with forward slashes. */
  path: string;
  text: string;
}

const EXTENSIONS = /\.(ts|tsx|astro|mjs)$/;

/** Every source file under a folder of the project. */
export function sourceFiles(folder: string): SourceFile[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => EXTENSIONS.test(name) && !name.includes('node_modules'))
    .map((name) => join(folder, name).replaceAll('\\', '/'))
    .sort()
    .map((path) => ({ path, text: readFileSync(path, 'utf8') }));
}

/** What a file imports: relative paths resolved from the root, packages as they are. Type imports count: they couple as well. */
export function importsOf({ path, text }: SourceFile): string[] {
  const specifiers = [...text.matchAll(/(?:\bfrom\s+|\bimport\s*\(\s*|\bimport\s+)['"]([^'"\s]+)['"]/g)].map(
    (match) => match[1] ?? '',
  );
  return specifiers.map((specifier) =>
    specifier.startsWith('.') ? normalize(join(dirname(path), specifier)).replaceAll('\\', '/') : specifier,
  );
}

/** Lines that are neither blank nor comment. */
export function codeLines(text: string): number {
  const withoutBlocks = text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/<!--[\s\S]*?-->/g, '');
  return withoutBlocks.split('\n').filter((line) => line.trim() !== '' && !line.trim().startsWith('//'))
    .length;
}
