import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { voltageUnderLimit, type ZipLoad, zipCurrentA } from '../../src/engine/inverter/index.ts';
import { zipLoad } from '../support/arbitraries.ts';

const nominalV = 230;
const limitA = fc.double({ min: 5, max: 30, noNaN: true });
const none = { realW: 0, reactiveVar: 0 };

describe('the voltage under a current limit', () => {
  it('leaves the loads drawing just the limit', () => {
    fc.assert(
      fc.property(zipLoad, limitA, (load, limit) => {
        const found = voltageUnderLimit({ load, nominalV, limitA: limit });
        fc.pre(!found.held && !found.collapsed);
        expect(zipCurrentA(load, nominalV, found.voltageRatio) / limit).toBeCloseTo(1, 9);
      }),
      { numRuns: 500 },
    );
  });

  it('is the highest such voltage, and none exists when the output collapses', () => {
    fc.assert(
      fc.property(zipLoad, limitA, (load, limit) => {
        const found = voltageUnderLimit({ load, nominalV, limitA: limit });
        fc.pre(!found.held);
        for (let i = 1; i < 400; i++) {
          const ratio = found.voltageRatio + ((1 - found.voltageRatio) * i) / 400;
          expect(zipCurrentA(load, nominalV, ratio)).toBeGreaterThan(limit * (1 - 1e-12));
        }
      }),
    );
  });

  it('never rises when the limit is lowered', () => {
    fc.assert(
      fc.property(zipLoad, limitA, limitA, (load, one, other) => {
        const low = voltageUnderLimit({ load, nominalV, limitA: Math.min(one, other) });
        const high = voltageUnderLimit({ load, nominalV, limitA: Math.max(one, other) });
        expect(low.voltageRatio).toBeLessThanOrEqual(high.voltageRatio + 1e-12);
      }),
      { numRuns: 500 },
    );
  });

  it('falls from impedance to current to power shares of the same size', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 500, max: 8000, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        limitA,
        (watts, share, limit) => {
          const kept = { realW: watts * (1 - share), reactiveVar: 0 };
          const moved = { realW: watts * share, reactiveVar: 0 };
          const at = (load: ZipLoad) => voltageUnderLimit({ load, nominalV, limitA: limit }).voltageRatio;
          const asImpedance = at({ impedance: { realW: watts, reactiveVar: 0 }, current: none, power: none });
          const asCurrent = at({ impedance: kept, current: moved, power: none });
          const asPower = at({ impedance: kept, current: none, power: moved });
          expect(asCurrent).toBeLessThanOrEqual(asImpedance + 1e-12);
          expect(asPower).toBeLessThanOrEqual(asCurrent + 1e-12);
        },
      ),
    );
  });

  it('is limit over admittance, to the last digit, for impedance alone', () => {
    fc.assert(
      fc.property(fc.double({ min: 8000, max: 20_000, noNaN: true }), limitA, (watts, limit) => {
        const load = { impedance: { realW: watts, reactiveVar: 0 }, current: none, power: none };
        const admittance = watts / nominalV ** 2;
        const { voltageV } = voltageUnderLimit({ load, nominalV, limitA: limit });
        expect(Math.abs(voltageV / (limit / admittance) - 1)).toBeLessThan(4 * Number.EPSILON);
      }),
    );
  });
});
