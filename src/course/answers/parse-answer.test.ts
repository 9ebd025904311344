import { describe, expect, it } from 'vitest';
import { sampleWorksheet } from '../../../tests/support/sample-worksheet.ts';
import { quantityOf } from '../worksheets/quantity-of.ts';
import { stepOf } from '../worksheets/step-graph.ts';
import type { ChoiceStep, Values } from '../worksheets/worksheet.ts';
import { orderFromText, orderToText } from './order-text.ts';
import { optionsOf, parseAnswer } from './parse-answer.ts';

const parse = (stepId: string, text: string) =>
  parseAnswer(stepOf(sampleWorksheet, stepId), quantityOf(sampleWorksheet, stepId), {}, text);

describe('parseAnswer', () => {
  it('reads a figure in SI units', () => {
    expect(parse('currentA', '0,0348 kA')).toEqual({ kind: 'ready', value: 34.8 });
  });

  it('passes on why a figure cannot be read', () => {
    expect(parse('currentA', '8 kW')).toEqual({
      kind: 'not-ready',
      reason: 'unit-of-other-quantity',
      found: 'kW',
    });
    expect(parse('currentA', '')).toMatchObject({ kind: 'not-ready', reason: 'empty' });
  });

  it('reads a step without a quantity as a plain count', () => {
    expect(parseAnswer(stepOf(sampleWorksheet, 'heatRatio'), null, {}, '3')).toEqual({
      kind: 'ready',
      value: 3,
    });
  });

  it('reads a choice by its id, with blanks around it', () => {
    expect(parse('verdict', ' stops ')).toEqual({ kind: 'ready', value: 'stops' });
    expect(parse('verdict', '  ')).toEqual({ kind: 'not-ready', reason: 'not-chosen', found: '' });
    expect(parse('verdict', 'explodes')).toEqual({
      kind: 'not-ready',
      reason: 'not-an-option',
      found: 'explodes',
    });
  });

  it('reads an order only when every entry stands in it once', () => {
    expect(parse('sequence', 'stop > wait>restart')).toEqual({
      kind: 'ready',
      value: ['stop', 'wait', 'restart'],
    });
    expect(parse('sequence', '')).toMatchObject({ reason: 'order-incomplete' });
    expect(parse('sequence', 'stop>wait')).toMatchObject({ reason: 'order-incomplete', found: 'stop>wait' });
    expect(parse('sequence', 'stop>wait>wait')).toMatchObject({ reason: 'order-incomplete' });
    expect(parse('sequence', 'stop>wait>restart>stop')).toMatchObject({ reason: 'order-incomplete' });
    expect(parse('sequence', 'stop>wait>explode')).toEqual({
      kind: 'not-ready',
      reason: 'not-an-option',
      found: 'explode',
    });
  });

  it('asks the worksheet for options that depend on the givens; a figure has none', () => {
    const step: ChoiceStep<Values> = {
      ...(stepOf(sampleWorksheet, 'verdict') as ChoiceStep<Values>),
      options: (values) => [String(values['first']), 'other'],
    };
    expect(optionsOf(step, { first: 'a' })).toEqual(['a', 'other']);
    expect(parseAnswer(step, null, { first: 'a' }, 'a')).toEqual({ kind: 'ready', value: 'a' });
    expect(optionsOf(stepOf(sampleWorksheet, 'currentA'), {})).toEqual([]);
  });
});

describe('an order as text', () => {
  it('comes back as it went in', () => {
    for (const order of [[], ['a'], ['a', 'b', 'c']])
      expect(orderFromText(orderToText(order))).toEqual(order);
    expect(orderFromText('  ')).toEqual([]);
  });
});
