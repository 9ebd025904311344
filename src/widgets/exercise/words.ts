import words from '../../../content/strings/exercise.en.json' with { type: 'json' };
import type { ReadBack } from '../../course/exercises/open-session.ts';
import type { AskedStep } from '../../course/exercises/public-view.ts';
import { fill } from '../strings/fill.ts';

export { fill, words };

/** "A, mA or kA" */
export function listInWords(items: readonly string[]): string {
  const last = items.at(-1) ?? '';
  return items.length < 2 ? last : `${items.slice(0, -1).join(', ')} or ${last}`;
}

/** Why an entry cannot be read yet, as a sentence that helps. */
export function reasonSentence(step: AskedStep, read: Extract<ReadBack, { kind: 'not-ready' }>): string {
  const example = step.units[0] ? `12.5 ${step.units[0]}` : '0.85';
  return fill(words.reasons[read.reason], { found: read.found, units: listInWords(step.units), example });
}
