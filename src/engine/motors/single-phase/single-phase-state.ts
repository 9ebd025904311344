import type { Complex } from '../../ac/index.ts';
import type { FieldImpedances } from './field-impedances.ts';
import type { SinglePhaseCircuit } from './single-phase-circuit.ts';

/** A single-phase motor at one slip and voltage. Phasors are r.m.s. with the supply voltage at 0°. */
export interface SinglePhaseState {
  readonly slipRatio: number;
  readonly speedRadPerS: number;
  readonly mainCurrent: Complex;
  readonly auxiliaryCurrent: Complex;
  readonly lineCurrent: Complex;
  /** magnitude of the line current [A] */
  readonly currentA: number;
  readonly inputPowerW: number;
  /** positive when the motor draws lagging current [var] */
  readonly reactivePowerVar: number;
  readonly apparentPowerVa: number;
  readonly powerFactor: number;
  /** power that each field carries over the air gap [W] */
  readonly forwardAirGapPowerW: number;
  readonly backwardAirGapPowerW: number;
  /** torque of each field [N·m]; the backward one counts negative, so that both add up to torqueNm */
  readonly forwardTorqueNm: number;
  readonly backwardTorqueNm: number;
  /** torque across the air gap [N·m] */
  readonly torqueNm: number;
  /** loss in the stator windings and in what is in series with the auxiliary winding [W] */
  readonly statorLossW: number;
  readonly rotorLossW: number;
  readonly rotationalLossW: number;
  /** power of the shaft before rotational losses [W] */
  readonly mechanicalPowerW: number;
  readonly shaftPowerW: number;
  readonly shaftTorqueNm: number;
  /** shaft power by input power; nought when the shaft gives no power */
  readonly efficiencyRatio: number;
  /** across the capacitor (or whatever is in series with the auxiliary winding) [V] */
  readonly capacitorVoltageV: number;
}

/** What the solution of the windings hands over. */
export interface WindingCurrents {
  readonly main: Complex;
  readonly auxiliary: Complex;
  readonly turnsRatio: number;
  /** in the auxiliary branch: the winding's own resistance with what is in series, and that series impedance [Ω] */
  readonly auxiliaryOhm: number;
  readonly series: Complex;
}

/** Synchronous speed of the forward field [rad/s]. */
export const synchronousRadPerS = (circuit: SinglePhaseCircuit): number =>
  (2 * Math.PI * circuit.frequencyHz) / circuit.polePairs;

/** Powers and torques from the currents of both windings. */
export const stateFromCurrents = (
  circuit: SinglePhaseCircuit,
  point: { voltageV: number; slipRatio: number },
  fields: FieldImpedances,
  currents: WindingCurrents,
): SinglePhaseState => {
  const { main, auxiliary, turnsRatio: a } = currents;
  const { voltageV, slipRatio } = point;
  const synchronous = synchronousRadPerS(circuit);
  const speedRadPerS = (1 - slipRatio) * synchronous;
  // Forward and backward components in turns of the main winding: I_main ∓ j·a·I_aux.
  const forwardSquare = (main.re + a * auxiliary.im) ** 2 + (main.im - a * auxiliary.re) ** 2;
  const backwardSquare = (main.re - a * auxiliary.im) ** 2 + (main.im + a * auxiliary.re) ** 2;
  const forwardAirGapPowerW = forwardSquare * fields.forwardOhm;
  const backwardAirGapPowerW = backwardSquare * fields.backwardOhm;
  const torqueNm = (forwardAirGapPowerW - backwardAirGapPowerW) / synchronous;
  const mainSquare = main.re ** 2 + main.im ** 2;
  const auxiliarySquare = auxiliary.re ** 2 + auxiliary.im ** 2;
  const lineCurrent = { re: main.re + auxiliary.re, im: main.im + auxiliary.im };
  const currentA = Math.hypot(lineCurrent.re, lineCurrent.im);
  const inputPowerW = voltageV * lineCurrent.re;
  const apparentPowerVa = voltageV * currentA;
  const mechanicalPowerW = torqueNm * speedRadPerS;
  const lossSpeed = (circuit.rotationalLossSpeedRpm * Math.PI) / 30;
  // Loss torque in proportion to speed: exact where the loss was found, and no brake at standstill.
  const lossTorqueNm = (circuit.rotationalLossW * speedRadPerS) / lossSpeed ** 2;
  const shaftTorqueNm = torqueNm - lossTorqueNm;
  const shaftPowerW = shaftTorqueNm * speedRadPerS;
  return {
    slipRatio,
    speedRadPerS,
    mainCurrent: main,
    auxiliaryCurrent: auxiliary,
    lineCurrent,
    currentA,
    inputPowerW,
    reactivePowerVar: -voltageV * lineCurrent.im,
    apparentPowerVa,
    powerFactor: apparentPowerVa > 0 ? inputPowerW / apparentPowerVa : 0,
    forwardAirGapPowerW,
    backwardAirGapPowerW,
    forwardTorqueNm: forwardAirGapPowerW / synchronous,
    backwardTorqueNm: -backwardAirGapPowerW / synchronous,
    torqueNm,
    statorLossW: mainSquare * circuit.mainResistanceOhm + auxiliarySquare * currents.auxiliaryOhm,
    rotorLossW: slipRatio * forwardAirGapPowerW + (2 - slipRatio) * backwardAirGapPowerW,
    rotationalLossW: lossTorqueNm * speedRadPerS,
    mechanicalPowerW,
    shaftPowerW,
    shaftTorqueNm,
    efficiencyRatio: shaftPowerW > 0 && inputPowerW > 0 ? shaftPowerW / inputPowerW : 0,
    capacitorVoltageV: Math.sqrt(auxiliarySquare) * Math.hypot(currents.series.re, currents.series.im),
  };
};
