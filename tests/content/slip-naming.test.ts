import { afterAll, expect, it } from 'vitest';
import { readExercises } from '../../src/content-reader/read-exercises.ts';
import { seeds } from '../support/seeds.ts';
import { type SlipCensus, slipCensus } from '../support/slip-census.ts';

const census = new Map<string, SlipCensus>();

it.each(readExercises().map((data) => [data.slug, data] as const))(
  'names every slip in %s, 200 seeds',
  async (slug, data) => {
    const counted = await slipCensus(data, seeds(200));
    census.set(slug, counted);
    expect(counted.missed).toEqual([]);
    expect(counted.tried).toBeGreaterThan(0);
  },
);

it('names the right slip, and it alone, in at least 99 of 100 distinguishable cases', () => {
  const all = [...census.values()];
  const named = all.reduce((total, one) => total + one.named, 0);
  const distinguishable = all.reduce((total, one) => total + one.tried - one.sameAsKey, 0);
  expect(named / distinguishable).toBeGreaterThanOrEqual(0.99);
});

// Collisions are listed, not hidden: two slips with one figure are shown to the learner as "either … or …".
afterAll(() => {
  const lines = [...census].flatMap(([slug, { collisions, tried, sameAsKey }]) => [
    ...[...collisions].map(([pair, count]) => `  ${slug}: ${pair} (${count} times)`),
    ...(sameAsKey > 0 ? [`  ${slug}: ${sameAsKey} of ${tried} too close to the key`] : []),
  ]);
  if (lines.length > 0) console.log(`Slips that share a figure:\n${lines.join('\n')}`);
});
