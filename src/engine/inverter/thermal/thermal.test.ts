import { describe, expect, it } from 'vitest';
import { exponentialApproach, nodeFromReadings, timeToLevel } from './exponential-approach.ts';
import { fosterResponse } from './foster-response.ts';
import { periodicNode } from './periodic-node.ts';
import { curveExtremes, timeToFall, timeToRise } from './time-to-rise.ts';
import { twoExponentialAt, twoExponentialTurn } from './two-exponential.ts';

const times = { fastTimeConstantS: 60, slowTimeConstantS: 1800 };
/** From cold toward 1. */
const heating = { steady: 1, fastPart: -0.4, slowPart: -0.6, ...times };
/** A hot heat sink and a cool fast node: rises to a peak, then falls to 0.8. */
const humped = { steady: 0.8, fastPart: -0.4, slowPart: 0.3, ...times };
/** The reverse: falls to a trough, then rises to 1. */
const dipped = { steady: 1, fastPart: 0.4, slowPart: -0.3, ...times };

describe('a single node', () => {
  it('reaches a level in the time that brings it there', () => {
    const node = { start: 5, target: 20, timeConstantS: 7 };
    const timeS = timeToLevel({ ...node, level: 12 }) ?? Number.NaN;
    expect(exponentialApproach({ ...node, durationS: timeS })).toBeCloseTo(12, 12);
  });

  it('never reaches its target, nor a level that does not lie on its way', () => {
    expect(timeToLevel({ start: 0, target: 1, timeConstantS: 1, level: 1 })).toBeNull();
    expect(timeToLevel({ start: 0, target: 1, timeConstantS: 1, level: 1 - 1e-12 })).toBeGreaterThan(20);
    expect(timeToLevel({ start: 0, target: 1, timeConstantS: 1, level: 1.1 })).toBeNull();
    expect(timeToLevel({ start: 0, target: 1, timeConstantS: 1, level: -0.1 })).toBeNull();
    expect(timeToLevel({ start: 0.3, target: 1, timeConstantS: 1, level: 0.3 })).toBe(0);
  });

  it('cannot be fitted to readings whose steps do not shrink', () => {
    expect(() => nodeFromReadings({ start: 0, first: 10, second: 20, intervalS: 1 })).toThrow(RangeError);
  });
});

describe('the Foster response', () => {
  it('is the two-node curve from cold', () => {
    const nodes = [
      { weight: 0.4, timeConstantS: 60 },
      { weight: 0.6, timeConstantS: 1800 },
    ];
    expect(fosterResponse({ nodes, durationS: 250 })).toBeCloseTo(twoExponentialAt(heating, 250), 14);
  });
});

describe('a node in a repeating cycle', () => {
  it('returns to its start after one cycle', () => {
    const segments = [
      { durationS: 30, target: 1, timeConstantS: 50 },
      { durationS: 45, target: 0.1, timeConstantS: 90 },
    ];
    const { startSettled, remainRatio } = periodicNode({ segments });
    let value = startSettled;
    for (const segment of segments) value = exponentialApproach({ start: value, ...segment });
    expect(value).toBeCloseTo(startSettled, 14);
    expect(remainRatio).toBeCloseTo(Math.exp(-30 / 50 - 45 / 90), 14);
  });

  it('is refused a cycle of no length', () => {
    expect(() => periodicNode({ segments: [] })).toThrow('segments');
  });
});

describe('timeToRise', () => {
  it('finds the moment the curve is on the level', () => {
    for (const level of [0.01, 0.3, 0.5, 0.9, 0.999999]) {
      const timeS = timeToRise({ curve: heating, level }) ?? Number.NaN;
      expect(twoExponentialAt(heating, timeS)).toBeCloseTo(level, 13);
    }
  });

  it('says never on and above the settled value, a time just below', () => {
    expect(timeToRise({ curve: heating, level: 1 })).toBeNull();
    expect(timeToRise({ curve: heating, level: 1 + 1e-9 })).toBeNull();
    expect(timeToRise({ curve: heating, level: 1 - 1e-9 })).toBeGreaterThan(10 * 1800);
  });

  it('says never on and above an inner peak, a time just below', () => {
    const peak = twoExponentialTurn(humped);
    if (!peak) throw new Error('expected a peak');
    expect(peak.kind).toBe('peak');
    expect(timeToRise({ curve: humped, level: peak.value })).toBeNull();
    expect(timeToRise({ curve: humped, level: peak.value + 1e-9 })).toBeNull();
    const justBelow = timeToRise({ curve: humped, level: peak.value - 1e-9 }) ?? Number.NaN;
    expect(justBelow).toBeLessThan(peak.atS);
    expect(justBelow).toBeGreaterThan(peak.atS - 1);
  });

  it('says 0 above the level, and on it when rising; waits for the way back when falling first', () => {
    expect(timeToRise({ curve: heating, level: 0 })).toBe(0);
    expect(timeToRise({ curve: heating, level: -0.1 })).toBe(0);
    const cooling = { steady: 0, fastPart: 0.4, slowPart: 0.6, ...times };
    expect(timeToRise({ curve: cooling, level: 1 })).toBeNull();
    expect(timeToRise({ curve: cooling, level: 1 - 1e-9 })).toBe(0);
    const start = dipped.steady + dipped.fastPart + dipped.slowPart;
    expect(start).toBeGreaterThan(1);
    expect(timeToRise({ curve: dipped, level: 1.05 })).toBe(0);
    const low = { ...dipped, slowPart: -0.5 };
    const back = timeToRise({ curve: low, level: 0.9 }) ?? Number.NaN;
    expect(back).toBeGreaterThan(twoExponentialTurn(low)?.atS ?? 0);
    expect(twoExponentialAt(low, back)).toBeCloseTo(0.9, 13);
  });

  it('looks beyond the trough when it starts exactly on the level and falls', () => {
    const onLevel = { steady: 1, fastPart: 0.25, slowPart: -0.5, ...times };
    const back = timeToRise({ curve: onLevel, level: 0.75 }) ?? Number.NaN;
    expect(back).toBeGreaterThan(twoExponentialTurn(onLevel)?.atS ?? Number.POSITIVE_INFINITY);
    expect(twoExponentialAt(onLevel, back)).toBeCloseTo(0.75, 13);
  });

  it('takes a curve that does not move as never passing', () => {
    const still = { steady: 1, fastPart: 0, slowPart: 0, ...times };
    expect(timeToRise({ curve: still, level: 1 })).toBeNull();
    expect(timeToRise({ curve: still, level: 0.9 })).toBe(0);
  });
});

describe('timeToFall', () => {
  it('finds the way down after a peak, and never when the curve settles on the level', () => {
    const timeS = timeToFall({ curve: humped, level: 0.85 }) ?? Number.NaN;
    expect(twoExponentialAt(humped, 0)).toBeLessThan(0.85);
    expect(timeS).toBe(0);
    const down = timeToFall({ curve: { ...humped, fastPart: -0.2 }, level: 0.85 }) ?? Number.NaN;
    expect(twoExponentialAt({ ...humped, fastPart: -0.2 }, down)).toBeCloseTo(0.85, 12);
    expect(timeToFall({ curve: { ...humped, fastPart: -0.2 }, level: 0.8 })).toBeNull();
  });
});

describe('curveExtremes', () => {
  it('takes the inner turn only when it lies inside', () => {
    const turn = twoExponentialTurn(humped);
    const atS = turn?.atS ?? 0;
    expect(curveExtremes({ curve: humped, durationS: atS * 2 }).peak).toEqual({ value: turn?.value, atS });
    expect(curveExtremes({ curve: humped, durationS: atS / 2 }).peak.atS).toBe(atS / 2);
    const dip = twoExponentialTurn(dipped);
    expect(dip?.kind).toBe('trough');
    expect(curveExtremes({ curve: dipped, durationS: 7200 }).trough.value).toBe(dip?.value);
  });

  it('has no turn when both parts pull one way, nor when the turn lies in the past', () => {
    expect(twoExponentialTurn({ ...humped, fastPart: -0.001 })).toBeNull();
    expect(twoExponentialTurn(heating)).toBeNull();
    expect(curveExtremes({ curve: heating, durationS: 100 }).peak.atS).toBe(100);
    expect(curveExtremes({ curve: heating, durationS: 100 }).trough.atS).toBe(0);
  });
});
