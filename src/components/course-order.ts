import { type CollectionEntry, getCollection } from 'astro:content';

export interface PlacedLesson {
  readonly entry: CollectionEntry<'lessons'>;
  readonly unit: CollectionEntry<'units'>['data'];
  /** Place within its unit, from 1. */
  readonly number: number;
  /** How many lessons the unit has. */
  readonly count: number;
  readonly slug: string;
  /** Address below the site's root. */
  readonly path: `/${string}`;
}

/** Units by number. */
export async function unitsInOrder(): Promise<CollectionEntry<'units'>['data'][]> {
  return (await getCollection('units')).map((unit) => unit.data).sort((a, b) => a.number - b.number);
}

/** All lessons in the order of the course: by unit, then by the number their file name begins with. */
export async function lessonsInOrder(): Promise<PlacedLesson[]> {
  const units = await unitsInOrder();
  const entries = await getCollection('lessons');
  const byUnit = Map.groupBy(entries, (entry) => unitFolder(entry.id));
  const placed = units.flatMap((unit) => {
    const folder = `${String(unit.number).padStart(2, '0')}-${unit.slug}`;
    const lessons = (byUnit.get(folder) ?? []).sort((a, b) => a.id.localeCompare(b.id));
    return lessons.map((entry, index): PlacedLesson => {
      const slug = entry.id.slice(folder.length + 1).replace(/^\d+-/, '');
      const path = `/lessons/${unit.slug}/${slug}/` as const;
      return { entry, unit, number: index + 1, count: lessons.length, slug, path };
    });
  });
  const lost = entries.find((entry) => !placed.some((lesson) => lesson.entry.id === entry.id));
  if (lost) {
    throw new Error(
      `\nfile:     content/lessons/${lost.id}.mdx\nfield:    folder\nexpected: <nn>-<slug> of a unit in units.yaml\n` +
        `found:    ${unitFolder(lost.id)}\nhint:     rename the folder, or add the unit.\n`,
    );
  }
  return placed;
}

function unitFolder(id: string): string {
  return id.split('/')[0] ?? '';
}
