import { checkedNumber } from '../../ac/index.ts';
import { fieldImpedances } from './field-impedances.ts';
import { checkSinglePhaseCircuit, type SinglePhaseCircuit } from './single-phase-circuit.ts';
import { type SinglePhaseState, stateFromCurrents } from './single-phase-state.ts';

const NONE = { re: 0, im: 0 };

/**
 * A single-phase induction motor on its main winding alone, by the double revolving field.
 *
 * @param circuit          the equivalent circuit
 * @param point.voltageV   supply voltage [V], ≥ 0
 * @param point.slipRatio  slip against the forward field [1]: 0 at synchronous speed, 1 at standstill, 2 at full speed backwards
 * @returns currents [A], power factor, powers and losses [W], torques [N·m], speed [rad/s], efficiency [1]
 * @throws  {RangeError} a value outside its limits
 * Formula: I = V / (R₁ + jX₁ + Z_f + Z_b), P_f = I²·R_f, P_b = I²·R_b, T = (P_f − P_b)/ω_s
 * Valid for: sinusoidal supply, linear iron; core loss is taken from the shaft, rotational loss grows with speed squared.
 * Source:  fitzgerald, ch. 9, ex. 9.2
 * Example: mainWindingState({ mainResistanceOhm: 2.02, mainReactanceOhm: 2.79, magnetizingReactanceOhm: 66.8, rotorResistanceOhm: 4.12, rotorReactanceOhm: 2.12, frequencyHz: 60, polePairs: 2, rotationalLossW: 37, rotationalLossSpeedRpm: 1710 }, { voltageV: 110, slipRatio: 0.05 }).shaftPowerW → 147.4
 */
export const mainWindingState = (
  circuit: SinglePhaseCircuit,
  point: { voltageV: number; slipRatio: number },
): SinglePhaseState => {
  checkSinglePhaseCircuit(circuit);
  const voltageV = checkedNumber('voltageV', point.voltageV, { min: 0 });
  const fields = fieldImpedances(circuit, checkedNumber('slipRatio', point.slipRatio));
  const resistance = circuit.mainResistanceOhm + fields.forwardOhm + fields.backwardOhm;
  const reactance = circuit.mainReactanceOhm + fields.forwardReactanceOhm + fields.backwardReactanceOhm;
  const square = resistance ** 2 + reactance ** 2;
  return stateFromCurrents(circuit, point, fields, {
    main: { re: (voltageV * resistance) / square, im: (-voltageV * reactance) / square },
    auxiliary: NONE,
    turnsRatio: 0,
    auxiliaryOhm: 0,
    series: NONE,
  });
};
