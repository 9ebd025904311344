import {
  type Complex,
  complexConjugate,
  complexMagnitude,
  complexProduct,
  complexQuotient,
} from '../../ac/complex.ts';
import { bracketedRoot } from '../../inverter/bracketed-root.ts';
import type { CatalogueRow, FitTarget } from './catalogue-row.ts';
import type { EquivalentCircuit, RotorValues } from './equivalent-circuit.ts';

/** What a catalogue does not say: how the losses outside the rotor split, and the stator's share of the leakage. */
export type FitAssumption = {
  /** Of the losses outside the rotor: winding of the stator; of the rest, 4/7 iron and 3/7 rotational. */
  statorLossShare: number;
  /** Of the leakage reactance at standstill: the stator. */
  statorReactanceShare: number;
};

/** The stator at the rated point, and what is left for the shunt and the rotor. */
export type FitStator = {
  statorResistanceOhm: number;
  statorReactanceOhm: number;
  coreLossResistanceOhm: number;
  rotationalLossW: number;
  gapVoltageV: number;
  /** Of one phase, across the gap. */
  gapPowerW: number;
  /** Of one phase, for shunt and rotor leakage together. */
  gapReactiveVar: number;
};

const IRON_SHARE_OF_REST = 4 / 7;

/** Splits the losses of the row and finds the gap voltage at the rated point. */
export function fitStator(row: CatalogueRow, target: FitTarget, assumed: FitAssumption): FitStator {
  const { slipRatio: s, currentA, voltageV } = target;
  const inputW = row.ratedPowerW / row.efficiencyRatio;
  // Loss in the rotor is s/(1 − s) of shaft power and rotational loss together, so it is part of the split.
  const rotational = (1 - assumed.statorLossShare) * (1 - IRON_SHARE_OF_REST);
  const outsideW = ((1 - s) * inputW - row.ratedPowerW) / (1 - s + s * rotational);
  const rotationalW = rotational * outsideW;
  const coreW = (1 - assumed.statorLossShare) * IRON_SHARE_OF_REST * outsideW;
  const statorResistanceOhm = (assumed.statorLossShare * outsideW) / (3 * currentA ** 2);
  const lockedVa = 3 * voltageV * target.lockedCurrentA;
  const lockedW =
    target.lockedTorqueNm * target.synchronousRadPerS + 3 * target.lockedCurrentA ** 2 * statorResistanceOhm;
  const lockedReactanceOhm =
    Math.sqrt(Math.max(0, lockedVa ** 2 - lockedW ** 2)) / (3 * target.lockedCurrentA ** 2);
  const statorReactanceOhm = assumed.statorReactanceShare * lockedReactanceOhm;

  const current = { re: currentA * row.powerFactor, im: -currentA * Math.sqrt(1 - row.powerFactor ** 2) };
  const drop = complexProduct({ re: statorResistanceOhm, im: statorReactanceOhm }, current);
  const gap = { re: voltageV - drop.re, im: -drop.im };
  const gapVoltageV = complexMagnitude(gap);
  return {
    statorResistanceOhm,
    statorReactanceOhm,
    coreLossResistanceOhm: (3 * gapVoltageV ** 2) / coreW,
    rotationalLossW: rotationalW / (1 - s) ** 2,
    gapVoltageV,
    gapPowerW: (row.ratedPowerW + rotationalW) / (1 - s) / 3,
    gapReactiveVar: complexProduct(gap, complexConjugate(current)).im,
  };
}

/** Rotor resistance and magnetising reactance that the rated point leaves for a rotor reactance; null where none does. */
function runningValues(
  stator: FitStator,
  slipRatio: number,
  rotorReactanceOhm: number,
): { rotorResistanceOhm: number; magnetisingReactanceOhm: number } | null {
  const { gapVoltageV, gapPowerW, gapReactiveVar } = stator;
  const active = gapPowerW / gapVoltageV;
  const under = gapVoltageV ** 2 - (2 * rotorReactanceOhm * active) ** 2;
  if (under < 0) return null;
  // Of the two currents that carry the same power the smaller one runs; written so that no reactance gives no reactive current.
  const reactive = (2 * rotorReactanceOhm * active ** 2) / (gapVoltageV + Math.sqrt(under));
  const left = gapReactiveVar - reactive * gapVoltageV;
  if (!(left > 0)) return null;
  return {
    rotorResistanceOhm: (slipRatio * gapVoltageV * active) / (active ** 2 + reactive ** 2),
    magnetisingReactanceOhm: gapVoltageV ** 2 / left,
  };
}

/** Rotor values with which the locked machine takes the row's current and gives its torque; null where none do. */
function standstillValues(
  target: FitTarget,
  stator: FitStator,
  magnetisingReactanceOhm: number,
): RotorValues | null {
  const { voltageV, lockedCurrentA } = target;
  const wantedW = (target.lockedTorqueNm * target.synchronousRadPerS) / 3;
  const at = (lag: number): { gap: Complex; rotor: Complex } => {
    const current = { re: lockedCurrentA * Math.cos(lag), im: -lockedCurrentA * Math.sin(lag) };
    const drop = complexProduct({ re: stator.statorResistanceOhm, im: stator.statorReactanceOhm }, current);
    const gap = { re: voltageV - drop.re, im: -drop.im };
    const shunt = { re: 1 / stator.coreLossResistanceOhm, im: -1 / magnetisingReactanceOhm };
    const taken = complexProduct(gap, shunt);
    return { gap, rotor: { re: current.re - taken.re, im: current.im - taken.im } };
  };
  const surplusAt = (lag: number): number => {
    const { gap, rotor } = at(lag);
    return complexProduct(gap, complexConjugate(rotor)).re - wantedW;
  };
  if (!(surplusAt(0) > 0 && surplusAt(Math.PI / 2) < 0)) return null;
  const { gap, rotor } = at(bracketedRoot({ lower: 0, upper: Math.PI / 2, valueAt: surplusAt }));
  const impedance = complexQuotient(gap, rotor);
  if (!(impedance.re > 0 && impedance.im > 0)) return null;
  return { rotorResistanceOhm: impedance.re, rotorReactanceOhm: impedance.im };
}

/** The circuit that meets rated point and standstill exactly for a rotor reactance at rated slip; null where none does. */
export function fitCandidate(
  row: CatalogueRow,
  target: FitTarget,
  stator: FitStator,
  ratedReactanceOhm: number,
): EquivalentCircuit | null {
  const s = target.slipRatio;
  const running = runningValues(stator, s, ratedReactanceOhm);
  const held = running && standstillValues(target, stator, running.magnetisingReactanceOhm);
  if (!held) return null;
  // The line through the values at rated slip and at standstill, carried on to no slip.
  const rotorResistanceOhm = (running.rotorResistanceOhm - s * held.rotorResistanceOhm) / (1 - s);
  const rotorReactanceOhm = (ratedReactanceOhm - s * held.rotorReactanceOhm) / (1 - s);
  if (!(rotorResistanceOhm > 0 && rotorReactanceOhm >= 0)) return null;
  return {
    connection: row.connection,
    polePairs: target.polePairs,
    referenceFrequencyHz: row.frequencyHz,
    statorResistanceOhm: stator.statorResistanceOhm,
    statorReactanceOhm: stator.statorReactanceOhm,
    magnetisingReactanceOhm: running.magnetisingReactanceOhm,
    coreLossResistanceOhm: stator.coreLossResistanceOhm,
    rotorResistanceOhm,
    rotorReactanceOhm,
    atStandstill: held,
    rotationalLossW: stator.rotationalLossW,
  };
}
