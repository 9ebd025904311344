import { readFile } from 'node:fs/promises';
import type { Loader } from 'astro/loaders';
import { parse } from 'yaml';
import { z } from 'zod';
import { checkedData } from './course/schema/checked-data.ts';

/** A loader of one file per entry whose errors name file, field, expected, found and hint. */
export function checkedGlob(loader: Loader, schema: z.ZodType): Loader {
  return {
    ...loader,
    load: (context) =>
      loader.load({
        ...context,
        parseData: (entry) => {
          checkedData(entry.filePath ?? entry.id, entry.data, schema);
          return context.parseData(entry);
        },
      }),
  };
}

/** A loader of one YAML file that holds a list; no two entries may have the same id. */
export function yamlList<T>(file: string, schema: z.ZodType<T>, idOf: (entry: T) => string): Loader {
  return {
    name: 'yaml-list',
    load: async ({ store, parseData, config, watcher, generateDigest }) => {
      const path = new URL(file, config.root);
      watcher?.add(path.pathname);
      const raw: unknown = parse(await readFile(path, 'utf8'));
      const entries = checkedData(file, raw, z.array(schema));
      store.clear();
      for (const entry of entries) {
        const id = idOf(entry);
        if (store.has(id)) {
          throw new Error(
            `\nfile:     ${file}\nfield:    id\nexpected: an id used once\nfound:    ${id}, a second time\nhint:     rename or remove one.\n`,
          );
        }
        const data = await parseData({ id, data: entry as Record<string, unknown>, filePath: file });
        store.set({ id, data, digest: generateDigest(data) });
      }
    },
  };
}
