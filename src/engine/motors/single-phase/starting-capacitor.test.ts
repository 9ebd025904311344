import { describe, expect, it } from 'vitest';
import { lockedRotorSplit } from './locked-rotor-split.ts';
import { startingCapacitor } from './starting-capacitor.ts';
import { startingResistor } from './starting-resistor.ts';

/** Windings of hubert, ex. 6.1. */
const main = { re: 2, im: 3.5 };
const auxiliary = { re: 9.15, im: 8.4 };
const withReactance = (im: number) =>
  lockedRotorSplit({ voltageV: 120, main, auxiliary: { re: auxiliary.re, im: auxiliary.im - im } });

describe('the starting capacitor', () => {
  it('brings the currents to a right angle', () => {
    const { reactanceOhm } = startingCapacitor({ main, auxiliary, frequencyHz: 60, aim: 'quadrature' });
    expect(withReactance(reactanceOhm).splitDeg).toBeCloseTo(90, 10);
  });

  it('for most torque is a little larger in capacitance, and gives more torque than any other', () => {
    const best = startingCapacitor({ main, auxiliary, frequencyHz: 60, aim: 'most-torque' });
    const square = startingCapacitor({ main, auxiliary, frequencyHz: 60, aim: 'quadrature' });
    // By hand: 8.4 + 9.15·2/(√(2² + 3.5²) + 3.5) = 8.4 + 18.3/7.5311 = 10.8299.
    expect(best.reactanceOhm).toBeCloseTo(10.8299, 4);
    expect(best.capacitanceF).toBeGreaterThan(square.capacitanceF);
    const most = withReactance(best.reactanceOhm).torqueFactorA2;
    for (const factor of [0.5, 0.9, 0.99, 1.01, 1.1, 2]) {
      expect(withReactance(best.reactanceOhm * factor).torqueFactorA2).toBeLessThan(most);
    }
  });

  it('needs windings with resistance', () => {
    expect(() =>
      startingCapacitor({ main: { re: 0, im: 3 }, auxiliary, frequencyHz: 60, aim: 'quadrature' }),
    ).toThrow(/main\.re/);
  });
});

describe('the starting resistor', () => {
  it('brings the currents to the wanted angle', () => {
    const { resistanceOhm } = startingResistor({ main, auxiliary, splitDeg: 30 });
    const split = lockedRotorSplit({
      voltageV: 120,
      main,
      auxiliary: { re: auxiliary.re + resistanceOhm, im: auxiliary.im },
    });
    expect(split.splitDeg).toBeCloseTo(30, 10);
  });

  it('cannot reach the angle of the main winding, nor go back behind the split there is', () => {
    expect(() => startingResistor({ main, auxiliary, splitDeg: 61 })).toThrow(/splitDeg: expected .*< 60\.2/);
    expect(() => startingResistor({ main, auxiliary, splitDeg: 10 })).toThrow(/splitDeg: expected .*≥ 17\.7/);
  });
});
