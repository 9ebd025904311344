import { checkedCircuit, type EquivalentCircuit } from '../three-phase/equivalent-circuit.ts';

/** States of the fifth-order machine: flux linkages [V·s] in a frame turning with the supply, speed of the shaft [rad/s]. */
export const STATOR_Q = 0;
export const STATOR_D = 1;
export const ROTOR_Q = 2;
export const ROTOR_D = 3;
export const SHAFT = 4;
export const DQ_SIZE = 5;

/** What the machine is connected to and drives. */
export interface DqDrive {
  /** of the frame and the supply [rad/s] */
  readonly supplyRadPerS: number;
  /** peak voltage of one phase, counted as star, along q and d [V] */
  readonly voltageQ: number;
  readonly voltageD: number;
  readonly inertiaKgM2: number;
  readonly loadTorqueNm: (speedRadPerS: number) => number;
}

/** The constants as the equations need them, one phase counted as star. */
export interface DqMachine {
  readonly polePairs: number;
  readonly statorOhm: number;
  readonly rotorOhm: number;
  /** currents from flux linkages: i_s = a·λ_s − m·λ_r, i_r = b·λ_r − m·λ_s [1/H] */
  readonly a: number;
  readonly b: number;
  readonly m: number;
  readonly frictionNmS: number;
  readonly rates: (drive: DqDrive) => (timeS: number, state: Float64Array, rate: Float64Array) => void;
  readonly torqueNm: (state: Float64Array) => number;
}

const at = (from: Float64Array, place: number): number => from[place] as number;

/**
 * The fifth-order model of a cage motor. Constant rotor values: those at standstill where the circuit states them,
 * for the first cycles are what the model is for. Core loss is left out.
 */
export const dqMachine = (circuit: EquivalentCircuit): DqMachine => {
  const { polePairs, connection, referenceFrequencyHz, magnetisingReactanceOhm } = checkedCircuit(circuit);
  if (magnetisingReactanceOhm === null) {
    throw new RangeError('magnetisingReactanceOhm: expected a reactance, found null: flux needs it');
  }
  const rotor = circuit.atStandstill ?? circuit;
  const share = connection === 'delta' ? 1 / 3 : 1;
  const perOhm = share / (2 * Math.PI * referenceFrequencyHz);
  const mutual = magnetisingReactanceOhm * perOhm;
  const stator = mutual + circuit.statorReactanceOhm * perOhm;
  const cage = mutual + rotor.rotorReactanceOhm * perOhm;
  const determinant = stator * cage - mutual * mutual;
  if (!(determinant > 0)) {
    throw new RangeError('statorReactanceOhm + rotorReactanceOhm: expected more than 0, found 0');
  }
  const a = cage / determinant;
  const b = stator / determinant;
  const m = mutual / determinant;
  const rs = circuit.statorResistanceOhm * share;
  const rr = rotor.rotorResistanceOhm * share;
  const frictionNmS =
    (circuit.rotationalLossW ?? 0) / ((2 * Math.PI * referenceFrequencyHz) / polePairs) ** 2;
  const torquePerFlux = 1.5 * polePairs * m;
  return {
    polePairs,
    statorOhm: rs,
    rotorOhm: rr,
    a,
    b,
    m,
    frictionNmS,
    torqueNm: (state) =>
      torquePerFlux * (at(state, STATOR_Q) * at(state, ROTOR_D) - at(state, STATOR_D) * at(state, ROTOR_Q)),
    rates: ({ supplyRadPerS: w, voltageQ, voltageD, inertiaKgM2, loadTorqueNm }) => {
      const perInertia = 1 / inertiaKgM2;
      return (_timeS, state, rate) => {
        const sq = at(state, STATOR_Q);
        const sd = at(state, STATOR_D);
        const rq = at(state, ROTOR_Q);
        const rd = at(state, ROTOR_D);
        const speed = at(state, SHAFT);
        const slip = w - polePairs * speed;
        rate[STATOR_Q] = voltageQ - rs * (a * sq - m * rq) - w * sd;
        rate[STATOR_D] = voltageD - rs * (a * sd - m * rd) + w * sq;
        rate[ROTOR_Q] = -rr * (b * rq - m * sq) - slip * rd;
        rate[ROTOR_D] = -rr * (b * rd - m * sd) + slip * rq;
        rate[SHAFT] =
          (torquePerFlux * (sq * rd - sd * rq) - loadTorqueNm(speed) - frictionNmS * speed) * perInertia;
      };
    },
  };
};
