import { describe, expect, it } from 'vitest';
import { breakdown } from './breakdown.ts';
import { catalogueOf } from './catalogue-of.ts';
import type { CatalogueRow } from './catalogue-row.ts';
import { exampleRow } from './example-circuit.ts';
import { fitFromCatalogue } from './fit-from-catalogue.ts';
import { lockedRotor } from './locked-rotor.ts';
import { machineState } from './machine-state.ts';
import { torqueOfPower } from './synchronous-speed.ts';

const backFrom = (row: CatalogueRow): CatalogueRow =>
  catalogueOf({
    circuit: fitFromCatalogue(row),
    lineVoltageV: row.lineVoltageV,
    frequencyHz: row.frequencyHz,
    ratedTorqueNm: torqueOfPower({ powerW: row.ratedPowerW, speedRpm: row.ratedSpeedRpm }),
  });

/** Invented rows, from small and poor to large and good, in the usual range of such motors. */
const rows: readonly (readonly [string, Partial<CatalogueRow>])[] = [
  ['0.18 kW, 4 poles', { ratedPowerW: 180, efficiencyRatio: 0.6, powerFactor: 0.64, ratedSpeedRpm: 1330 }],
  ['0.75 kW, 2 poles', { ratedPowerW: 750, efficiencyRatio: 0.807, powerFactor: 0.83, ratedSpeedRpm: 2870 }],
  ['2.2 kW, 6 poles', { ratedPowerW: 2200, efficiencyRatio: 0.843, powerFactor: 0.74, ratedSpeedRpm: 955 }],
  ['22 kW, 4 poles', { ratedPowerW: 22000, efficiencyRatio: 0.93, powerFactor: 0.86, ratedSpeedRpm: 1475 }],
  ['4 kW in star, 60 Hz', { ratedPowerW: 4000, connection: 'star', frequencyHz: 60, ratedSpeedRpm: 1755 }],
  ['a weak start', { lockedRotorCurrentRatio: 4.5, lockedRotorTorqueRatio: 1.2, breakdownTorqueRatio: 2 }],
  ['a hard start', { lockedRotorCurrentRatio: 8.5, lockedRotorTorqueRatio: 3.2, breakdownTorqueRatio: 3.9 }],
  ['start torque as large as pull-out', { lockedRotorTorqueRatio: 2.8, breakdownTorqueRatio: 2.8 }],
  ['8 poles', { ratedPowerW: 3000, efficiencyRatio: 0.82, powerFactor: 0.7, ratedSpeedRpm: 705 }],
];

describe('fitFromCatalogue', () => {
  it.each(rows)('gives back the row of %s', (_, changed) => {
    const row = { ...exampleRow, ...changed };
    const back = backFrom(row);
    for (const [name, value] of Object.entries(row)) {
      const found = back[name as keyof CatalogueRow];
      if (typeof value === 'number') expect(Number(found) / value, name).toBeCloseTo(1, 6);
      else expect(found).toBe(value);
    }
  });

  it('splits the losses as it says it assumes', () => {
    const circuit = fitFromCatalogue(exampleRow);
    const slipRatio = 1 - exampleRow.ratedSpeedRpm / 1500;
    const state = machineState({ circuit, lineVoltageV: 400, frequencyHz: 50, slipRatio });
    const outsideW = state.statorLossW + state.coreLossW + state.rotationalLossW;
    expect(state.statorLossW / outsideW).toBeCloseTo(0.65, 9);
    expect(state.coreLossW / outsideW).toBeCloseTo(0.2, 9);
    expect(state.rotationalLossW / outsideW).toBeCloseTo(0.15, 9);
  });

  it('starts with more rotor resistance and less reactance than it runs with, as cages with deep bars do', () => {
    const { rotorResistanceOhm, rotorReactanceOhm, atStandstill } = fitFromCatalogue(exampleRow);
    expect(atStandstill?.rotorResistanceOhm).toBeGreaterThan(rotorResistanceOhm);
    expect(atStandstill?.rotorReactanceOhm).toBeLessThan(rotorReactanceOhm);
  });

  it('gives the same machine in star at √3 of the voltage', () => {
    const star = { ...exampleRow, connection: 'star' as const, lineVoltageV: 400 * Math.sqrt(3) };
    const inStar = fitFromCatalogue(star);
    const inDelta = fitFromCatalogue(exampleRow);
    expect(inStar.statorResistanceOhm).toBeCloseTo(inDelta.statorResistanceOhm, 9);
    expect(inStar.rotorReactanceOhm).toBeCloseTo(inDelta.rotorReactanceOhm, 6);
    const supply = { lineVoltageV: 400, frequencyHz: 50 };
    expect(lockedRotor({ circuit: inDelta, ...supply }).torqueNm).toBeCloseTo(
      lockedRotor({ circuit: inStar, lineVoltageV: star.lineVoltageV, frequencyHz: 50 }).torqueNm,
      6,
    );
    expect(breakdown({ circuit: inDelta, ...supply }).slipRatio).toBeLessThan(1);
  });

  it.each([
    [{ ratedPowerW: 0 }, /^ratedPowerW/],
    [{ ratedPowerW: -5500 }, /^ratedPowerW/],
    [{ lineVoltageV: 0 }, /^lineVoltageV/],
    [{ frequencyHz: 0 }, /^frequencyHz/],
    [{ connection: 'open' as 'star' }, /^connection/],
    // Percentages taken for ratios make η·cos φ more than 1.
    [{ efficiencyRatio: 89 }, /^efficiencyRatio/],
    [{ powerFactor: 1.2 }, /^powerFactor/],
    [{ ratedSpeedRpm: 3200 }, /^ratedSpeedRpm/],
    [{ ratedSpeedRpm: 1500 }, /^ratedSpeedRpm: expected less than a synchronous speed, found 1500/],
    [{ ratedSpeedRpm: -1460 }, /^ratedSpeedRpm/],
    [{ efficiencyRatio: 0.98 }, /^efficiencyRatio: expected less than 0.9733, which the slip/],
    [{ lockedRotorCurrentRatio: 0.9 }, /^lockedRotorCurrentRatio/],
    [{ lockedRotorTorqueRatio: 0 }, /^lockedRotorTorqueRatio/],
    [{ lockedRotorTorqueRatio: 3.2 }, /^lockedRotorTorqueRatio: expected at most breakdownTorqueRatio, 3.1/],
    [{ lockedRotorCurrentRatio: 1.5 }, /^lockedRotorTorqueRatio: expected less than .* carries the power/],
    [{ breakdownTorqueRatio: 0.8, lockedRotorTorqueRatio: 0.5 }, /^breakdownTorqueRatio/],
    [{ breakdownTorqueRatio: 30 }, /^breakdownTorqueRatio: expected about .* found 30/],
  ])('refuses %j and names the field', (wrong, message) => {
    expect(() => fitFromCatalogue({ ...exampleRow, ...wrong })).toThrow(RangeError);
    expect(() => fitFromCatalogue({ ...exampleRow, ...wrong })).toThrow(message);
  });
});
