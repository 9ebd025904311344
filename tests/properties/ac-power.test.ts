import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  complexPower,
  correctionCapacitor,
  loadCurrent,
  parallelImpedance,
  phasor,
  powerTriangle,
  reactivePowerCapacitor,
} from '../../src/engine/ac/index.ts';
import {
  angleDeg,
  between,
  direction,
  expectSame,
  powerFactor,
  powerW,
  voltageV,
} from '../support/ac-arbitraries.ts';

describe('powerTriangle', () => {
  it('keeps S² = P² + Q² and PF = P/S', () => {
    fc.assert(
      fc.property(powerW, powerFactor, direction, (realPowerW, ratio, way) => {
        const triangle = powerTriangle({ realPowerW, powerFactor: ratio, direction: way });
        expectSame(triangle.apparentPowerVa ** 2, triangle.realPowerW ** 2 + triangle.reactivePowerVar ** 2);
        expectSame(triangle.powerFactor, triangle.realPowerW / triangle.apparentPowerVa);
      }),
    );
  });

  it('gives the same triangle back from every two of its sides', () => {
    fc.assert(
      fc.property(powerW, between(0.05, 0.999), direction, (realPowerW, ratio, way) => {
        const whole = powerTriangle({ realPowerW, powerFactor: ratio, direction: way });
        const { reactivePowerVar, apparentPowerVa } = whole;
        const others = [
          powerTriangle({ realPowerW, reactivePowerVar }),
          powerTriangle({ realPowerW, apparentPowerVa, direction: way }),
          powerTriangle({ reactivePowerVar, apparentPowerVa }),
          powerTriangle({ reactivePowerVar, powerFactor: ratio }),
          powerTriangle({ apparentPowerVa, powerFactor: ratio, direction: way }),
        ];
        for (const other of others) {
          expectSame(other.realPowerW, realPowerW);
          expectSame(other.reactivePowerVar, reactivePowerVar, apparentPowerVa);
          expectSame(other.apparentPowerVa, apparentPowerVa);
          expectSame(other.powerFactor, ratio);
          expect(other.direction).toBe(way);
        }
      }),
    );
  });
});

describe('loadCurrent', () => {
  it('is the same for watts at a power factor as for the volt-amperes they make', () => {
    fc.assert(
      fc.property(
        powerW,
        powerFactor,
        voltageV,
        fc.constantFrom(1 as const, 3 as const),
        (realPowerW, ratio, volts, phases) => {
          const fromWatts = loadCurrent({ realPowerW, powerFactor: ratio, voltageV: volts, phases });
          const fromVoltAmperes = loadCurrent({
            apparentPowerVa: realPowerW / ratio,
            voltageV: volts,
            phases,
          });
          expectSame(fromWatts.currentA, fromVoltAmperes.currentA);
        },
      ),
    );
  });

  it('never falls when load is added or power factor or efficiency gets worse', () => {
    fc.assert(
      fc.property(
        powerW,
        powerW,
        powerFactor,
        between(0.1, 1),
        voltageV,
        (realPowerW, moreW, ratio, efficiencyRatio, volts) => {
          const plain = loadCurrent({ realPowerW, voltageV: volts, phases: 1 }).currentA;
          expect(
            loadCurrent({ realPowerW: realPowerW + moreW, voltageV: volts, phases: 1 }).currentA,
          ).toBeGreaterThan(plain);
          const worse = loadCurrent({
            realPowerW,
            powerFactor: ratio,
            efficiencyRatio,
            voltageV: volts,
            phases: 1,
          });
          expect(worse.currentA).toBeGreaterThanOrEqual(plain);
        },
      ),
    );
  });
});

describe('complexPower', () => {
  it('depends only on the angle between voltage and current, and keeps S² = P² + Q²', () => {
    fc.assert(
      fc.property(voltageV, between(0.1, 1000), angleDeg, angleDeg, (volts, amperes, lagDeg, turnDeg) => {
        const still = complexPower(phasor(volts, 0), phasor(amperes, -lagDeg));
        const turned = complexPower(phasor(volts, turnDeg), phasor(amperes, turnDeg - lagDeg));
        expectSame(turned.realPowerW, still.realPowerW, still.apparentPowerVa);
        expectSame(turned.reactivePowerVar, still.reactivePowerVar, still.apparentPowerVa);
        expectSame(still.apparentPowerVa, volts * amperes);
        expectSame(Math.hypot(still.realPowerW, still.reactivePowerVar), still.apparentPowerVa);
      }),
    );
  });
});

describe('parallelImpedance', () => {
  it('adds the real powers of its branches', () => {
    const impedance = fc.record({ re: between(0.1, 100), im: between(-100, 100) });
    fc.assert(
      fc.property(fc.array(impedance, { minLength: 1, maxLength: 5 }), (branches) => {
        const wattsAtOneVolt = ({ re, im }: { re: number; im: number }) => re / (re * re + im * im);
        const together = branches.reduce((sum, branch) => sum + wattsAtOneVolt(branch), 0);
        expectSame(wattsAtOneVolt(parallelImpedance(branches)), together);
      }),
    );
  });
});

describe('correctionCapacitor', () => {
  it('leaves the load at the wanted power factor', () => {
    fc.assert(
      fc.property(powerW, powerFactor, between(0, 1), voltageV, (realPowerW, ratio, share, volts) => {
        const target = Math.min(1, ratio + share * (1 - ratio));
        const added = correctionCapacitor({
          realPowerW,
          powerFactor: ratio,
          targetPowerFactor: target,
          voltageV: volts,
          frequencyHz: 50,
          connection: 'delta',
        });
        const before = powerTriangle({ realPowerW, powerFactor: ratio });
        const after = powerTriangle({
          realPowerW,
          reactivePowerVar: before.reactivePowerVar - added.reactivePowerVar,
        });
        expectSame(after.powerFactor, target);
        // What three such capacitors take up at the line voltage is what was asked of them.
        expectSame(3 * 2 * Math.PI * 50 * added.capacitanceF * volts ** 2, added.reactivePowerVar);
      }),
    );
  });

  it('asks for three times the capacitance in star', () => {
    fc.assert(
      fc.property(powerW, voltageV, between(10, 400), (reactivePowerVar, volts, frequencyHz) => {
        const given = { reactivePowerVar, voltageV: volts, frequencyHz };
        const star = reactivePowerCapacitor({ ...given, connection: 'star' });
        const delta = reactivePowerCapacitor({ ...given, connection: 'delta' });
        expectSame(star.capacitanceF, 3 * delta.capacitanceF);
      }),
    );
  });
});
