import { type Complex, checkedNumber, complexProduct, complexQuotient } from '../../ac/index.ts';
import { fieldImpedances } from './field-impedances.ts';
import {
  type AuxiliaryWinding,
  checkAuxiliaryWinding,
  checkSinglePhaseCircuit,
  type SinglePhaseCircuit,
} from './single-phase-circuit.ts';
import { type SinglePhaseState, stateFromCurrents } from './single-phase-state.ts';

/**
 * A single-phase induction motor on main and auxiliary winding, by symmetrical components of the two windings.
 * The auxiliary winding leads: a leading auxiliary current drives forward.
 *
 * @param circuit             the equivalent circuit of the main winding
 * @param branch.auxiliary    auxiliary winding
 * @param branch.series       impedance in series with it [Ω]: a capacitor has im = −1/(2πfC), nought for none
 * @param branch.isReversed   true with the ends of the auxiliary winding swapped; default false
 * @param point.voltageV      supply voltage over both branches [V], ≥ 0
 * @param point.slipRatio     slip against the forward field [1]
 * @returns currents of both windings and the line [A], capacitor voltage [V], powers [W], torques [N·m]
 * @throws  {RangeError} a value outside its limits
 * Formula: V = (Z₁ + Z_f + Z_b)·I_m − ja(Z_f − Z_b)·I_a = ja(Z_f − Z_b)·I_m + (Z_a + Z_c + a²(Z_f + Z_b))·I_a
 * Valid for: windings a quarter wave apart, sinusoidal supply, linear iron.
 * Source:  fitzgerald, ch. 9; derived (power over the air gap equals |I_m ∓ jaI_a|²·R)
 * Example: twoWindingState({ mainResistanceOhm: 2.02, mainReactanceOhm: 2.79, magnetizingReactanceOhm: 66.8, rotorResistanceOhm: 4.12, rotorReactanceOhm: 2.12, frequencyHz: 60, polePairs: 2, rotationalLossW: 37, rotationalLossSpeedRpm: 1710 }, { auxiliary: { turnsRatio: 1.2, resistanceOhm: 9, reactanceOhm: 4 }, series: { re: 0, im: -15 } }, { voltageV: 110, slipRatio: 1 }).torqueNm → 4.330
 */
export const twoWindingState = (
  circuit: SinglePhaseCircuit,
  branch: { auxiliary: AuxiliaryWinding; series: Complex; isReversed?: boolean },
  point: { voltageV: number; slipRatio: number },
): SinglePhaseState => {
  checkSinglePhaseCircuit(circuit);
  const { turnsRatio, resistanceOhm, reactanceOhm } = checkAuxiliaryWinding(branch.auxiliary);
  const voltageV = checkedNumber('voltageV', point.voltageV, { min: 0 });
  const fields = fieldImpedances(circuit, checkedNumber('slipRatio', point.slipRatio));
  const { forwardOhm, forwardReactanceOhm, backwardOhm, backwardReactanceOhm } = fields;
  const a = branch.isReversed ? -turnsRatio : turnsRatio;
  const auxiliaryOhm = resistanceOhm + branch.series.re;
  const main: Complex = {
    re: circuit.mainResistanceOhm + forwardOhm + backwardOhm,
    im: circuit.mainReactanceOhm + forwardReactanceOhm + backwardReactanceOhm,
  };
  const auxiliary: Complex = {
    re: auxiliaryOhm + a * a * (forwardOhm + backwardOhm),
    im: reactanceOhm + branch.series.im + a * a * (forwardReactanceOhm + backwardReactanceOhm),
  };
  // ja(Z_f − Z_b): from main to auxiliary winding; with the opposite sign the other way.
  const mutual: Complex = {
    re: -a * (forwardReactanceOhm - backwardReactanceOhm),
    im: a * (forwardOhm - backwardOhm),
  };
  const product = complexProduct(main, auxiliary);
  const square = complexProduct(mutual, mutual);
  const perDeterminant = complexQuotient(
    { re: voltageV, im: 0 },
    { re: product.re + square.re, im: product.im + square.im },
  );
  return stateFromCurrents(circuit, point, fields, {
    main: complexProduct(perDeterminant, { re: auxiliary.re + mutual.re, im: auxiliary.im + mutual.im }),
    auxiliary: complexProduct(perDeterminant, { re: main.re - mutual.re, im: main.im - mutual.im }),
    turnsRatio: a,
    auxiliaryOhm,
    series: branch.series,
  });
};
