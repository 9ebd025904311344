import { getCollection } from 'astro:content';
import { lessonsInOrder } from '../components/course-order.ts';
import type { SearchEntry } from '../widgets/search/search-entry.ts';

/** The search list: every lesson with its headings and goals, every glossary entry. */
export async function GET(): Promise<Response> {
  const lessons = (await lessonsInOrder()).map(
    ({ entry, path }): SearchEntry => ({
      k: 'l',
      title: entry.data.title,
      url: path.slice(1),
      text: entry.data.summary,
      words: [...entry.data.canDo.map((item) => item.text), ...headings(entry.body ?? '')].join(' '),
    }),
  );
  const glossary = (await getCollection('glossary')).map(
    ({ data }): SearchEntry => ({
      k: 'g',
      title: data.name,
      url: `glossary/#${data.id}`,
      text: data.meaning,
      words: [data.symbol?.plain, data.unit, ...data.also].filter((word) => word !== undefined).join(' '),
    }),
  );
  return new Response(JSON.stringify([...lessons, ...glossary]), {
    headers: { 'content-type': 'application/json' },
  });
}

function headings(markdown: string): string[] {
  return Array.from(markdown.matchAll(/^#{2,3} (.+)$/gm), (match) => match[1] ?? '');
}
