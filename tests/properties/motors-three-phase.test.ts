import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  breakdown,
  type CatalogueRow,
  catalogueOf,
  codeLetterOf,
  codeLetters,
  type EquivalentCircuit,
  exampleRow,
  fitFromCatalogue,
  lockedRotor,
  machineState,
  slipForTorque,
  startFromCodeLetter,
  torqueOfPower,
} from '../../src/engine/motors/index.ts';
import { between, expectSame } from '../support/ac-arbitraries.ts';

const optional = <Value>(arbitrary: fc.Arbitrary<Value>) => fc.option(arbitrary, { nil: null });

/** Machines in proportion: reactances by the magnetising one, resistances by the leakage. */
const circuit: fc.Arbitrary<EquivalentCircuit> = fc
  .record({
    connection: fc.constantFrom('star' as const, 'delta' as const),
    polePairs: fc.integer({ min: 1, max: 6 }),
    referenceFrequencyHz: fc.constantFrom(50, 60),
    leakageOhm: between(0.1, 10),
    statorShare: between(0.2, 0.8),
    shuntFactor: optional(between(10, 80)),
    coreFactor: optional(between(50, 1000)),
    statorFactor: between(0, 0.8),
    rotorFactor: between(0.05, 0.8),
    standstill: fc.option(fc.record({ resistance: between(1, 3), reactance: between(0.5, 1) }), {
      nil: null,
    }),
    rotationalLossW: between(0, 50),
  })
  .map((drawn) => {
    const rotorResistanceOhm = drawn.leakageOhm * drawn.rotorFactor;
    const rotorReactanceOhm = drawn.leakageOhm * (1 - drawn.statorShare);
    return {
      connection: drawn.connection,
      polePairs: drawn.polePairs,
      referenceFrequencyHz: drawn.referenceFrequencyHz,
      statorResistanceOhm: drawn.leakageOhm * drawn.statorFactor,
      statorReactanceOhm: drawn.leakageOhm * drawn.statorShare,
      magnetisingReactanceOhm: drawn.shuntFactor && drawn.leakageOhm * drawn.shuntFactor,
      coreLossResistanceOhm: drawn.coreFactor && drawn.leakageOhm * drawn.coreFactor,
      rotorResistanceOhm,
      rotorReactanceOhm,
      ...(drawn.standstill && {
        atStandstill: {
          rotorResistanceOhm: rotorResistanceOhm * drawn.standstill.resistance,
          rotorReactanceOhm: rotorReactanceOhm * drawn.standstill.reactance,
        },
      }),
      rotationalLossW: drawn.rotationalLossW,
    };
  });

const supply = fc.record({ circuit, lineVoltageV: between(20, 700), frequencyHz: between(10, 100) });
const slip = between(-1, 2);

describe('a three-phase machine', () => {
  it('has torque with the square of voltage and current with voltage, at any slip', () => {
    fc.assert(
      fc.property(supply, slip, between(0.1, 2), (given, slipRatio, factor) => {
        const one = machineState({ ...given, slipRatio });
        const other = machineState({ ...given, lineVoltageV: given.lineVoltageV * factor, slipRatio });
        expectSame(other.electromagneticTorqueNm, one.electromagneticTorqueNm * factor ** 2);
        expectSame(other.lineCurrentA, one.lineCurrentA * factor);
        expectSame(other.powerFactor, one.powerFactor, 1);
      }),
    );
  });

  it('takes in what it gives out and loses', () => {
    fc.assert(
      fc.property(supply, slip, (given, slipRatio) => {
        const state = machineState({ ...given, slipRatio });
        const losses = state.statorLossW + state.coreLossW + state.rotorLossW + state.rotationalLossW;
        const scale = state.apparentPowerVa + losses;
        expectSame(state.inputPowerW, state.shaftPowerW + losses, scale);
        expectSame(state.rotorLossW, slipRatio * state.airGapPowerW, scale);
        expectSame(state.shaftPowerW, state.shaftTorqueNm * state.speedRadPerS, scale);
        expectSame(Math.hypot(state.inputPowerW, state.reactivePowerVar), state.apparentPowerVa);
        expectSame(state.apparentPowerVa, Math.sqrt(3) * given.lineVoltageV * state.lineCurrentA);
      }),
    );
  });

  it('has no torque at synchronous speed, and torque against the slip everywhere else', () => {
    fc.assert(
      fc.property(supply, between(1e-6, 2), (given, slipRatio) => {
        expect(machineState({ ...given, slipRatio: 0 }).electromagneticTorqueNm).toBe(0);
        expect(machineState({ ...given, slipRatio }).electromagneticTorqueNm).toBeGreaterThan(0);
        expect(machineState({ ...given, slipRatio: -slipRatio }).electromagneticTorqueNm).toBeLessThan(0);
      }),
    );
  });

  it('gives more torque with more slip up to pull-out, and never more than there', () => {
    fc.assert(
      fc.property(supply, between(0, 1), between(0, 1), between(1, 4), (given, one, other, past) => {
        const { atStandstill: _, ...constant } = given.circuit;
        const plain = { ...given, circuit: constant };
        const top = breakdown(plain);
        const torqueAt = (share: number): number =>
          machineState({ ...plain, slipRatio: share * top.slipRatio }).electromagneticTorqueNm;
        const scale = 1e-9 * top.torqueNm;
        expect(torqueAt(Math.max(one, other))).toBeGreaterThanOrEqual(torqueAt(Math.min(one, other)) - scale);
        expect(torqueAt(past)).toBeLessThanOrEqual(top.torqueNm + scale);
        const changing = breakdown(given);
        const anywhere = machineState({ ...given, slipRatio: one * past }).electromagneticTorqueNm;
        // The search looks at 48 slips and then around the best of them.
        expect(anywhere).toBeLessThanOrEqual(changing.torqueNm * (1 + 1e-6));
      }),
    );
  });

  it('carries a load at the slip found for it', () => {
    fc.assert(
      fc.property(supply, between(0, 1), (given, share) => {
        const top = breakdown(given);
        fc.pre(top.shaftTorqueNm > 0);
        const torqueNm = share * top.shaftTorqueNm;
        const slipRatio = slipForTorque({ ...given, torqueNm });
        expect(slipRatio).toBeGreaterThanOrEqual(0);
        expect(slipRatio).toBeLessThanOrEqual(top.slipRatio);
        expectSame(machineState({ ...given, slipRatio }).shaftTorqueNm, torqueNm, top.torqueNm);
      }),
    );
  });
});

/** Rows in the range of usual motors, drawn freely within it. */
const catalogueRow: fc.Arbitrary<CatalogueRow> = fc
  .record({
    ratedPowerW: between(100, 100_000),
    polePairs: fc.integer({ min: 1, max: 4 }),
    frequencyHz: fc.constantFrom(50, 60),
    connection: fc.constantFrom('star' as const, 'delta' as const),
    slipRatio: between(0.01, 0.08),
    efficiencyShare: between(0.7, 0.97),
    powerFactor: between(0.65, 0.9),
    lockedRotorCurrentRatio: between(4.5, 9),
    lockedRotorTorqueRatio: between(1, 3),
    torqueStep: between(0, 1.5),
  })
  .map((drawn) => ({
    ratedPowerW: drawn.ratedPowerW,
    lineVoltageV: 400,
    frequencyHz: drawn.frequencyHz,
    connection: drawn.connection,
    efficiencyRatio: drawn.efficiencyShare * (1 - drawn.slipRatio),
    powerFactor: drawn.powerFactor,
    ratedSpeedRpm: ((60 * drawn.frequencyHz) / drawn.polePairs) * (1 - drawn.slipRatio),
    lockedRotorCurrentRatio: drawn.lockedRotorCurrentRatio,
    lockedRotorTorqueRatio: drawn.lockedRotorTorqueRatio,
    breakdownTorqueRatio: Math.max(1.6, drawn.lockedRotorTorqueRatio) + drawn.torqueStep,
  }));

const fitted = (row: CatalogueRow): EquivalentCircuit | RangeError => {
  try {
    return fitFromCatalogue(row);
  } catch (error) {
    if (error instanceof RangeError) return error;
    throw error;
  }
};

describe('fitFromCatalogue', () => {
  it('gives back every row that it accepts, and accepts nearly every usual one', () => {
    let accepted = 0;
    fc.assert(
      fc.property(catalogueRow, (row) => {
        const found = fitted(row);
        if (found instanceof RangeError) return;
        accepted += 1;
        const back = catalogueOf({
          circuit: found,
          lineVoltageV: row.lineVoltageV,
          frequencyHz: row.frequencyHz,
          ratedTorqueNm: torqueOfPower({ powerW: row.ratedPowerW, speedRpm: row.ratedSpeedRpm }),
        });
        for (const [name, value] of Object.entries(row)) {
          if (typeof value !== 'number') continue;
          expect(Math.abs(Number(back[name as keyof CatalogueRow]) / value - 1), name).toBeLessThan(1e-6);
        }
      }),
      { numRuns: 60 },
    );
    expect(accepted).toBeGreaterThan(50);
  });

  it('gives a machine of twice the size half the ohms', () => {
    fc.assert(
      fc.property(between(0.1, 20), (factor) => {
        const one = fitFromCatalogue(exampleRow);
        const other = fitFromCatalogue({ ...exampleRow, ratedPowerW: exampleRow.ratedPowerW * factor });
        expectSame(other.statorResistanceOhm * factor, one.statorResistanceOhm);
        const start = (circuit: EquivalentCircuit) =>
          lockedRotor({ circuit, lineVoltageV: 400, frequencyHz: 50 }).lineCurrentA;
        expectSame(start(other), factor * start(one));
      }),
      { numRuns: 20 },
    );
  });
});

describe('code letters', () => {
  it('take in what they were read from', () => {
    fc.assert(
      fc.property(between(100, 1e5), between(1e-3, 30), (ratedPowerW, kvaPerHp) => {
        const lockedRotorVa = (kvaPerHp * 1000 * ratedPowerW) / 746;
        const codeLetter = codeLetterOf({ lockedRotorVa, ratedPowerW });
        const range = startFromCodeLetter({ codeLetter, ratedPowerW, voltageV: 400, phases: 3 });
        expect(lockedRotorVa).toBeGreaterThanOrEqual((range.fromVa ?? Number.NaN) * (1 - 1e-11));
        expect(lockedRotorVa).toBeLessThan((range.toVa ?? Number.POSITIVE_INFINITY) * (1 + 1e-11));
        expect(codeLetters.map(({ letter }) => letter)).toContain(codeLetter);
      }),
    );
  });
});
