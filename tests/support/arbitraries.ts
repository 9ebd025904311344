import fc from 'fast-check';
import type { HeatState, InverterDatasheet, LoadPower, ZipLoad } from '../../src/engine/inverter/index.ts';

const va = (value: number) => ({ value, unit: 'VA', powerFactor: 1 }) as const;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** What lies behind a made-up datasheet: its points are computed from these, so a network is known to exist. */
export interface KnownInverter {
  readonly datasheet: InverterDatasheet;
  readonly fastShareRatio: number;
  readonly fastTimeConstantS: number;
  readonly limitC: number;
}

/** Datasheets made from a known network, by the plain formulas and not by the engine. */
export const knownInverter = fc
  .record({
    acNominalV: fc.constantFrom(120, 230),
    continuousA: between(4, 70),
    idleRatio: between(0.03, 0.15),
    linearRatio: between(0.02, 0.25),
    fullLossRatio: between(0.04, 0.12),
    fastShareRatio: between(0.25, 0.7),
    fastTimeConstantS: between(15, 200),
    slowFactor: between(10, 60),
    surgeFactor: between(0.2, 1.2),
    longFactor: between(0.2, 0.8),
    referenceAmbientC: fc.constantFrom(20, 25, 30, 40),
    hotterC: between(8, 20),
    limitRiseC: between(45, 85),
    warnAtHeatRatio: between(0.8, 0.97),
    voltageHeldRatio: between(0.85, 0.92),
    voltageLostCycles: fc.integer({ min: 5, max: 50 }),
    waitS: between(10, 120),
    reclaimS: between(30, 300),
    stopsToLockout: fc.integer({ min: 2, max: 5 }),
  })
  .map((drawn): KnownInverter => {
    const { acNominalV, continuousA, fastShareRatio, fastTimeConstantS, idleRatio, linearRatio } = drawn;
    const continuousVa = continuousA * acNominalV;
    const fullLossW = continuousVa * drawn.fullLossRatio;
    const squareRatio = 1 - idleRatio - linearRatio;
    const slowS = fastTimeConstantS * drawn.slowFactor;
    const vaAtHeat = (heat: number): number =>
      (continuousVa * (-linearRatio + Math.sqrt(linearRatio ** 2 + 4 * squareRatio * (heat - idleRatio)))) /
      (2 * squareRatio);
    const vaForTime = (timeS: number): number => {
      const done =
        1 -
        fastShareRatio * Math.exp(-timeS / fastTimeConstantS) -
        (1 - fastShareRatio) * Math.exp(-timeS / slowS);
      return vaAtHeat(idleRatio + (1 - idleRatio) / done);
    };
    const longS = slowS * drawn.longFactor;
    const surgeS = fastTimeConstantS * drawn.surgeFactor;
    const limitC = drawn.referenceAmbientC + drawn.limitRiseC;
    const halfLossW = fullLossW * (idleRatio + linearRatio / 2 + squareRatio / 4);
    const surgeVa = vaForTime(surgeS);
    return {
      fastShareRatio,
      fastTimeConstantS,
      limitC,
      datasheet: {
        id: 'drawn',
        name: 'Drawn',
        dcNominalV: 24,
        acNominalV,
        frequencyHz: acNominalV === 120 ? 60 : 50,
        referenceAmbientC: drawn.referenceAmbientC,
        continuous: { power: va(continuousVa) },
        hot: {
          power: va(vaAtHeat((drawn.limitRiseC - drawn.hotterC) / drawn.limitRiseC)),
          ambientC: drawn.referenceAmbientC + drawn.hotterC,
        },
        longDuration: { power: va(vaForTime(longS)), durationS: longS },
        surge: { power: va(surgeVa), durationS: surgeS },
        currentLimit: { power: va(surgeVa * 1.05) },
        heatSinkTimeConstantS: slowS,
        idleLossW: fullLossW * idleRatio,
        efficiencyHalfRatio: continuousVa / 2 / (continuousVa / 2 + halfLossW),
        efficiencyFullRatio: continuousVa / (continuousVa + fullLossW),
        warnAtHeatRatio: drawn.warnAtHeatRatio,
        voltageHeldRatio: drawn.voltageHeldRatio,
        voltageLostCycles: drawn.voltageLostCycles,
        waitS: drawn.waitS,
        reclaimS: drawn.reclaimS,
        stopsToLockout: drawn.stopsToLockout,
        altitude: { fromM: 1000, lossPer100mRatio: 0.01, maxM: 4000 },
        massKg: 10,
        costIndex: 100,
      },
    };
  });

/** Heat of both nodes, from cold to near the limit. */
export const heatState: fc.Arbitrary<HeatState> = fc.record({ fast: between(0, 0.5), slow: between(0, 0.5) });

/** A stretch of load in units of the continuous rating; below 0 the unit is off. */
export const loadStretch = fc.record({ durationS: between(0, 4000), loadRatio: between(-0.3, 2) });

const loadPower = (maxW: number): fc.Arbitrary<LoadPower> =>
  fc.record({ realW: between(0, maxW), reactiveVar: between(-maxW / 2, maxW) });

/** Loads of all three kinds on one output, up to well beyond any limit. */
export const zipLoad: fc.Arbitrary<ZipLoad> = fc.record({
  impedance: loadPower(6000),
  current: loadPower(2500),
  power: loadPower(2500),
});
