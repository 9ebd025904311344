import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { readExercises } from '../../src/content-reader/read-exercises.ts';
import type { Source } from '../../src/course/schema/source.ts';
import { attributesOf, idsIn, lessonFiles } from '../support/lesson-files.ts';

const lessons = lessonFiles();
const glossary = idsIn('content/glossary.yaml');
const cautions = idsIn('content/cautions.yaml');
const sources = parse(readFileSync('content/sources.yaml', 'utf8')) as Source[];
const fromMemory = sources.filter(({ howRead }) => howRead === 'memory').map(({ id }) => id);
const exercises = readExercises().map(({ slug }) => slug);
const pascal = (name: string): string =>
  name.replace(/(^|-)([a-z])/g, (_all, _dash, letter: string) => letter.toUpperCase());
const UNITS = 'VA|kVA|W|kW|V|A|Hz|var|mA|ms|s|min|h|K|kg|m|minutes|seconds|hours|cycles|%|°C';
/** What an author's workplace may call things, and a reader must not meet. */
const PROCESS =
  /\b(sessions?|helpers?|agents?|chatbots?|language model|workplace|TODO|FIXME)\b|\/work\/|shared\//i;

const twice = (values: readonly string[]): string[] =>
  values.filter((value, i) => values.indexOf(value) !== i);
const unknown = (found: readonly string[], known: readonly string[]): string[] =>
  found.filter((id) => !known.includes(id));
/** Prose: formulas and tags left out, the words of attributes kept. */
const wordsOf = (body: string): number =>
  (body.replace(/\${1,2}[^$]*\${1,2}/g, ' ').match(/[\p{L}\p{N}][\p{L}\p{N}’'.-]*/gu) ?? []).length;

describe.each(lessons.map((lesson) => [lesson.path, lesson] as const))('%s', (_, { data, body }) => {
  it('opens with goals, is 800 to 1900 words long, and ends with ids of "I can …" used once', () => {
    expect(data.goals.length).toBeGreaterThan(1);
    expect(wordsOf(body)).toBeGreaterThan(800);
    expect(wordsOf(body)).toBeLessThan(1900);
    expect(twice(data.canDo.map(({ id }) => id))).toEqual([]);
  });

  it('holds an explorer, a named misconception, and the explorers, drawings and exercises it announces', () => {
    const explorers = attributesOf(body, 'Explorer', 'id');
    expect(explorers.length).toBeGreaterThan(0);
    expect(new Set(explorers)).toEqual(new Set(data.explorers));
    expect(explorers.filter((id) => !existsSync(`src/widgets/explorers/${pascal(id)}.tsx`))).toEqual([]);
    const figures = attributesOf(body, 'Figure', 'name');
    expect(figures.filter((name) => !existsSync(`src/components/figures/${pascal(name)}.astro`))).toEqual([]);
    expect(attributesOf(body, 'Misconception', 'claim').length).toBeGreaterThan(0);
    expect(attributesOf(body, 'Exercise', 'slug')).toEqual(data.exercises);
    expect(unknown(data.exercises, exercises)).toEqual([]);
  });

  it('has a worked example that fades: first steps open, last steps folded', () => {
    const examples = [...body.matchAll(/<WorkedExample\b[\s\S]*?<\/WorkedExample>/g)].map(([text]) => text);
    expect(examples.length).toBeGreaterThan(0);
    for (const example of examples) {
      const steps = [...example.matchAll(/<Step number=\{(\d+)\} ask="[^"]+"( fold)?>/g)];
      expect(steps.map(([, number]) => Number(number))).toEqual(steps.map((_step, i) => i + 1));
      expect(steps.map(([, , fold]) => (fold ? 'folded' : 'open')).join(' ')).toMatch(
        /^open (open )*(folded ?)+$/,
      );
    }
  });

  it('names only terms, sources and cautions that exist, and lists those it uses', () => {
    expect(unknown(attributesOf(body, 'Term', 'id'), glossary)).toEqual([]);
    expect(unknown([...data.cautions, ...attributesOf(body, 'Caution', 'id')], cautions)).toEqual([]);
    expect(unknown(attributesOf(body, 'Caution', 'id'), data.cautions)).toEqual([]);
    const cited = [...attributesOf(body, 'Source', 'id'), ...attributesOf(body, 'RuleOfThumb', 'source')];
    expect(
      unknown(
        data.sources,
        sources.map(({ id }) => id),
      ),
    ).toEqual([]);
    expect(unknown(cited, data.sources)).toEqual([]);
    const unnamed = ['common-practice', 'derived', 'invented-data'];
    expect(unknown(data.sources, [...cited, ...unnamed])).toEqual([]);
  });

  it('says "from memory" where a source was not seen, and "common practice" only with its label', () => {
    const citations = [...body.matchAll(/<Source id="([^"]+)"(?: \/>|>([^<]*)<\/Source>)/g)];
    const unmarked = citations.filter(
      ([, id = '', place = '']) => fromMemory.includes(id) && !place.includes('from memory'),
    );
    expect(unmarked.map(([whole]) => whole)).toEqual([]);
    expect(body.replaceAll('(common practice, no source)', '')).not.toMatch(/common practice/i);
    const practised =
      body.includes('(common practice, no source)') ||
      [...body.matchAll(/<RuleOfThumb\b[^>]*?\/>/g)].some(([tag]) => !tag.includes('source='));
    expect(data.sources.includes('common-practice')).toBe(practised);
  });

  it('keeps figure and unit on one line', () => {
    expect(body.match(new RegExp(`.{0,30}\\d (${UNITS})(?![\\p{L}\\p{N}])`, 'gu')) ?? []).toEqual([]);
  });
});

describe('the lessons together', () => {
  it('use each uid once, place each exercise once, and build on lessons that come before', () => {
    expect(twice(lessons.map(({ data }) => data.uid))).toEqual([]);
    expect(twice(lessons.flatMap(({ data }) => data.exercises))).toEqual([]);
    for (const [place, { path, data }] of lessons.entries()) {
      const before = lessons.slice(0, place).map((lesson) => lesson.data.uid);
      expect(unknown(data.prerequisites, before), path).toEqual([]);
    }
  });
});

describe('the glossary', () => {
  it('uses each id once and refers only to entries it has', () => {
    const entries = parse(readFileSync('content/glossary.yaml', 'utf8')) as { id: string; see: string[] }[];
    expect(twice(glossary)).toEqual([]);
    expect(
      unknown(
        entries.flatMap(({ see }) => see),
        glossary,
      ),
    ).toEqual([]);
  });
});

describe('what a reader sees', () => {
  it('holds no word about how it was made', () => {
    const files = [
      'glossary.yaml',
      'cautions.yaml',
      'sources.yaml',
      ...readdirSync('content/lessons', { recursive: true, encoding: 'utf8' }).map(
        (name) => `lessons/${name}`,
      ),
    ];
    const spoken = files
      .filter((name) => /\.(yaml|mdx)$/.test(name))
      .map((name) => ({ name, word: PROCESS.exec(readFileSync(`content/${name}`, 'utf8'))?.[0] }))
      .filter(({ word }) => word !== undefined);
    expect(spoken).toEqual([]);
  });
});
