import { describe, expect, it } from 'vitest';
import { solve } from './solve.ts';

async function run(...argv: string[]): Promise<{ status: number; text: string }> {
  const lines: string[] = [];
  const status = await solve(argv, (line) => lines.push(line));
  return { status, text: lines.join('\n') };
}

describe('npm run solve', () => {
  it('prints the worked solution and the key of an exercise for a seed', async () => {
    const { status, text } = await run('pump-house-pump', '--seed', '7');
    expect(status).toBe(0);
    expect(text).toContain('seed 7');
    expect(text).toMatch(/S = P \/ PF/);
    expect(text).toMatch(/Answer key\n {2}apparentPowerVa: [\d.]+\u202f(k?VA)\n {2}currentA: [\d.]+\u202fA/);
  });

  it('prints the same for the same seed, and other numbers for another', async () => {
    const [first, again, other] = [
      await run('pump-house-pump', '--seed', '7'),
      await run('pump-house-pump', '--seed', '7'),
      await run('pump-house-pump', '--seed', '8'),
    ];
    expect(again).toEqual(first);
    expect(other.text).not.toBe(first.text);
  });

  it('marks answers as the page would: its own key is right, a bare number is not ready', async () => {
    const { text } = await run('pump-house-pump', '--seed', '7');
    const key = Object.fromEntries(
      [...text.matchAll(/^ {2}(\w+): ([\d.]+\u202f\S+)$/gm)].slice(-2).map((match) => [match[1], match[2]]),
    );
    const marked = await run('pump-house-pump', '--seed', '7', '--answers', JSON.stringify(key));
    expect(marked.text).toContain('2 of 2 steps');
    const bare = await run(
      'pump-house-pump',
      '--seed',
      '7',
      '--answers',
      '{"apparentPowerVa":"1800 VA","currentA":"7"}',
    );
    expect(bare.text).toContain('Not ready');
    expect(bare.text).toContain('currentA: unit-missing');
  });

  it.each([
    [['nothing-of-the-kind'], 'exercise: expected one of'],
    [['pump-house-pump', '--seed', 'abc'], '--seed: expected a whole number from 1 to 999999, found "abc"'],
    [['pump-house-pump', '--answers', 'x'], '--answers: expected a JSON object'],
    [['pump-house-pump', '--answers', '[1]'], '--answers: expected a JSON object'],
    [
      ['pump-house-pump', '--answers', '{"stranger":"1"}'],
      '--answers: expected step ids among apparentPowerVa, currentA',
    ],
    [['pump-house-pump', '--colour'], '--colour'],
    [[], 'npm run solve -- <exercise>'],
  ])('says what is wrong with %j', async (argv, sentence) => {
    const { status, text } = await run(...argv);
    expect(status).toBe(1);
    expect(text).toContain(sentence);
  });
});
