import { expect, test } from 'vitest';
import { rankEntries } from './rank-entries.ts';
import type { SearchEntry } from './search-entry.ts';

const entry = (title: string, text = '', words = ''): SearchEntry => ({
  k: 'g',
  title,
  url: title,
  text,
  words,
});
const entries = [
  entry('Surge', 'The middle level of overload'),
  entry('Surge rating', 'What a unit carries for a short time'),
  entry('Apparent power', 'Voltage times current', 'S VA apparentPowerVa'),
  entry('Ambient temperature', 'Air that cools the unit', 'θ °C'),
  entry('Three levels of overload', 'Heat, surge, voltage lost'),
];
const titles = (query: string, limit = 8): string[] =>
  rankEntries(entries, query, limit).map(({ title }) => title);

test('puts the entry whose title is the query first', () => {
  expect(titles('surge')[0]).toBe('Surge');
});

test('finds by the beginning of a word, by symbol and by unit', () => {
  expect(titles('appar')).toEqual(['Apparent power']);
  expect(titles('VA')).toContain('Apparent power');
});

test('asks for every word of the query', () => {
  expect(titles('surge rating')).toEqual(['Surge rating']);
  expect(titles('surge ambient')).toEqual([]);
});

test('forgives one letter in a long word and none in a short one', () => {
  expect(titles('ovreload')).toEqual([]);
  expect(titles('overlaod')).toEqual([]);
  expect(titles('overlod')).toContain('Three levels of overload');
  expect(titles('ambiant')).toEqual(['Ambient temperature']);
  expect(titles('hest')).toEqual([]);
});

test('keeps to the limit and returns nothing for an empty query', () => {
  expect(titles('surge', 2)).toHaveLength(2);
  expect(titles('  .,; ')).toEqual([]);
});
