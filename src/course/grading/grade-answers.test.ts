import { describe, expect, it } from 'vitest';
import { sampleGivens, sampleKey, sampleWorksheet } from '../../../tests/support/sample-worksheet.ts';
import { gradeAnswers, type Outcome, type Sheet } from './grade-answers.ts';

const asked = ['currentA', 'heatRatio', 'verdict', 'sequence'];

const grade = (answers: Record<string, string>, change: Partial<Sheet> = {}): Outcome =>
  gradeAnswers(sampleWorksheet, sampleGivens, {
    asked,
    shown: [],
    revealed: [],
    answers: { ...sampleKey, ...answers },
    ...change,
  });

function marks(outcome: Outcome): Record<string, string> {
  if (outcome.kind !== 'graded')
    throw new Error(`expected a graded outcome, found ${JSON.stringify(outcome)}`);
  return Object.fromEntries(outcome.steps.map((step) => [step.stepId, step.mark]));
}

describe('gradeAnswers', () => {
  it('gives full marks to the key', () => {
    const outcome = grade({});
    expect(outcome).toMatchObject({ kind: 'graded', earned: 4, possible: 4 });
  });

  it.each([
    ['on the upper edge', '10.1 A', 'right'],
    ['on the lower edge', '9.9 A', 'right'],
    ['just outside', '10.11 A', 'wrong'],
    ['just outside below', '9.89 A', 'wrong'],
  ])('marks a figure %s of the tolerance', (_, text, mark) => {
    expect(marks(grade({ currentA: text }))['currentA']).toBe(mark);
  });

  it('lets a wrong figure carry forward: what follows from it earns its mark', () => {
    const outcome = grade({ currentA: '20 A', heatRatio: '4', verdict: 'stops' });
    expect(marks(outcome)).toMatchObject({ currentA: 'wrong', heatRatio: 'carried', verdict: 'carried' });
    expect(outcome).toMatchObject({ earned: 3, possible: 4 });
  });

  it('also accepts the key after a wrong figure: the learner may have started anew', () => {
    expect(marks(grade({ currentA: '20 A' }))).toMatchObject({ currentA: 'wrong', heatRatio: 'right' });
  });

  it.each(['0 A', '0.01 A', '100 kA', '51 A'])(
    'does not carry %s forward: it would make the rest trivial',
    (text) => {
      const outcome = marks(grade({ currentA: text, heatRatio: '0', verdict: 'holds' }));
      expect(outcome).toMatchObject({ currentA: 'wrong', heatRatio: 'wrong' });
    },
  );

  it.each([
    ['2 A, a fifth of the key', '2 A', '0.04', 'carried'],
    ['50 A, five times the key', '50 A', '25', 'carried'],
  ])('carries %s: the edge of what is plausible', (_, currentA, heatRatio, mark) => {
    expect(marks(grade({ currentA, heatRatio }))['heatRatio']).toBe(mark);
  });

  it('marks nothing while one answer cannot be read, and tells nothing of the others', () => {
    const outcome = grade({ heatRatio: 'one', sequence: 'stop>wait' });
    expect(outcome).toEqual({
      kind: 'not-ready',
      steps: {
        heatRatio: { reason: 'no-number', found: 'one' },
        sequence: { reason: 'order-incomplete', found: 'stop>wait' },
      },
    });
  });

  it('asks for a unit instead of marking a bare number wrong', () => {
    expect(grade({ currentA: '10' })).toMatchObject({
      kind: 'not-ready',
      steps: { currentA: { reason: 'unit-missing' } },
    });
  });

  it('refuses an option that is not on the sheet, an entry twice, and nothing chosen', () => {
    expect(grade({ verdict: 'melts' })).toMatchObject({ steps: { verdict: { reason: 'not-an-option' } } });
    expect(grade({ verdict: '' })).toMatchObject({ steps: { verdict: { reason: 'not-chosen' } } });
    expect(grade({ sequence: 'stop>stop>wait' })).toMatchObject({
      steps: { sequence: { reason: 'order-incomplete' } },
    });
  });

  it('gives no mark for a revealed step, whatever stands in its field, and goes on from the key', () => {
    const outcome = grade({ currentA: '', heatRatio: '1' }, { revealed: ['currentA'] });
    expect(marks(outcome)).toMatchObject({ currentA: 'revealed', heatRatio: 'right' });
    expect(outcome).toMatchObject({ earned: 3, possible: 4 });
  });

  it('names a slip in the step itself, and one behind it that nobody asked', () => {
    const own = grade({ heatRatio: '4.2' });
    expect(own.kind === 'graded' && own.steps[1]?.diagnosis?.sets).toEqual([]);
    const hidden = gradeAnswers(sampleWorksheet, sampleGivens, {
      asked: ['heatRatio'],
      shown: [],
      revealed: [],
      answers: { heatRatio: '0.333' },
    });
    expect(hidden.kind === 'graded' && hidden.steps[0]?.diagnosis?.sets).toEqual([
      [{ stepId: 'currentA', slipId: 'three-phase' }],
    ]);
  });

  it('does not look for a slip in a step that was worked for the learner', () => {
    const outcome = gradeAnswers(sampleWorksheet, sampleGivens, {
      asked: ['heatRatio'],
      shown: ['currentA'],
      revealed: [],
      answers: { heatRatio: '0.333' },
    });
    expect(outcome.kind === 'graded' && outcome.steps[0]?.diagnosis?.sets).toEqual([]);
  });

  it('diagnoses wrong steps only', () => {
    const outcome = grade({ currentA: '20 A', heatRatio: '4', verdict: 'stops' });
    if (outcome.kind !== 'graded') throw new Error('expected a graded outcome');
    expect(outcome.steps.map((step) => step.diagnosis !== null)).toEqual([true, false, false, false]);
  });

  it('looks for a slip from the learner’s own figure first, then from the key', () => {
    const sets = (answers: Record<string, string>) => {
      const outcome = grade(answers);
      return outcome.kind === 'graded' ? outcome.steps[1]?.diagnosis?.sets : null;
    };
    const notSquared = [[{ stepId: 'heatRatio', slipId: 'not-squared' }]];
    // From 20 A the slip gives 2; from the key, after the earlier figure was mended in the head, √⅓ needs two slips.
    expect(sets({ currentA: '20 A', heatRatio: '2' })).toEqual(notSquared);
    expect(sets({ currentA: '20 A', heatRatio: '0.3333' })).toEqual([
      [{ stepId: 'currentA', slipId: 'three-phase' }],
    ]);
    expect(sets({ currentA: '20 A', heatRatio: '77' })).toEqual([]);
  });

  it('tells what a step should have been from the learner’s own figures', () => {
    const outcome = grade({ currentA: '20 A', heatRatio: '3' });
    expect(outcome.kind === 'graded' && outcome.steps[1]?.fromOwn).toBe(4);
  });

  it('does not mistake a figure out of all proportion for a carried one, even when what follows is worked from it', () => {
    expect(marks(grade({ currentA: '51 A', heatRatio: '26.01' }))['heatRatio']).toBe('wrong');
    expect(marks(grade({ currentA: '50 A', heatRatio: '25' }))['heatRatio']).toBe('carried');
  });

  it('blames no step that the learner has right', () => {
    // √⅓ would need a slip in the current, which is right here.
    const outcome = grade({ heatRatio: '0.3333' });
    expect(outcome.kind === 'graded' && outcome.steps[1]?.diagnosis?.sets).toEqual([]);
  });
});
