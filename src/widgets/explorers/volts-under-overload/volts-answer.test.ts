import { describe, expect, it } from 'vitest';
import { exampleModel as model } from '../../../engine/index.ts';
import { drawCurve, firstVoltsSetting, highestCurrentRatio, voltsAnswer } from './volts-answer.ts';

const withShares = (totalVa: number, impedance: number, current: number, power: number) => ({
  inverterId: 'example',
  totalVa,
  shares: { impedance, current, power },
});

describe('voltsAnswer', () => {
  it('holds the voltage up to the limit', () => {
    const answer = voltsAnswer(model, withShares(5750, 100, 0, 0));
    expect([answer.outcome, answer.stopS, answer.voltageV]).toEqual(['held', null, 230]);
  });
  it('sags with heaters in proportion, and counts only below the held share', () => {
    const sagging = voltsAnswer(model, withShares(6250, 100, 0, 0));
    expect(sagging.outcome).toBe('sagging');
    expect(sagging.voltageRatio).toBeCloseTo(0.92, 9);
    expect(sagging.stopS).toBeNull();
    const lost = voltsAnswer(model, withShares(7187.5, 100, 0, 0));
    expect(lost.outcome).toBe('lost');
    expect(lost.voltageRatio).toBeCloseTo(0.8, 9);
    expect(lost.stopS).toBe(0.5);
  });
  it('collapses when most of the load keeps its power', () => {
    const answer = voltsAnswer(model, withShares(8000, 10, 0, 90));
    expect([answer.outcome, answer.voltageV, answer.stopS]).toEqual(['collapse', 0, 0.5]);
  });
});

describe('drawCurve', () => {
  it('stays finite and inside the plot for every kind of load', () => {
    for (const setting of [
      withShares(6000, 100, 0, 0),
      withShares(6000, 0, 0, 100),
      withShares(0, 0, 100, 0),
    ]) {
      for (const { ratio, currentA } of drawCurve(model, setting)) {
        expect(Number.isFinite(ratio) && ratio > 0).toBe(true);
        expect(currentA).toBeLessThanOrEqual(model.limitA * highestCurrentRatio + 1e-9);
      }
    }
  });
  it('passes through the demand at nominal voltage', () => {
    const setting = firstVoltsSetting('example', model);
    const demandA = setting.totalVa / 230;
    const curve = drawCurve(model, setting);
    const above = curve.findLast(({ ratio }) => ratio >= 1);
    const below = curve.find(({ ratio }) => ratio < 1);
    expect(above?.currentA).toBeGreaterThanOrEqual(demandA);
    expect(below?.currentA).toBeLessThan(demandA);
  });
});
