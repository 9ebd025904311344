import { SWITCH_OPENS_AT_SLIP } from './auxiliary-for.ts';
import { nameplateStart } from './nameplate-start.ts';
import { nearestRoot } from './nearest-root.ts';
import { type SinglePhaseMotor, singlePhaseMotorState } from './single-phase-motor-state.ts';
import { type RatedPoint, ratedPointOf, type SinglePhaseNameplate } from './single-phase-nameplate.ts';

/** Unknowns as factors on the start: main resistance, leakage, rotor, magnetizing, loss, turns, auxiliary, capacitors. */
const scaled = (start: SinglePhaseMotor, logs: readonly number[]): SinglePhaseMotor => {
  const factor = (index: number): number => Math.exp(logs[index] ?? 0);
  const { circuit, auxiliary } = start;
  const turnsRatio = auxiliary.turnsRatio * factor(5);
  const leakage = circuit.mainReactanceOhm * factor(1);
  return {
    ...start,
    circuit: {
      ...circuit,
      mainResistanceOhm: circuit.mainResistanceOhm * factor(0),
      mainReactanceOhm: leakage,
      rotorReactanceOhm: leakage,
      rotorResistanceOhm: circuit.rotorResistanceOhm * factor(2),
      magnetizingReactanceOhm: circuit.magnetizingReactanceOhm * factor(3),
      rotationalLossW: circuit.rotationalLossW * factor(4),
    },
    auxiliary: {
      turnsRatio,
      resistanceOhm: auxiliary.resistanceOhm * factor(6),
      reactanceOhm: turnsRatio ** 2 * leakage,
    },
    ...(start.startCapacitorF === undefined ? {} : { startCapacitorF: start.startCapacitorF * factor(7) }),
    ...(start.runCapacitorF === undefined ? {} : { runCapacitorF: start.runCapacitorF * factor(8) }),
  };
};

const misfits = (motor: SinglePhaseMotor, plate: SinglePhaseNameplate, rated: RatedPoint): number[] => {
  const { voltageV } = plate;
  const running = singlePhaseMotorState(motor, { voltageV, slipRatio: rated.slipRatio });
  const locked = singlePhaseMotorState(motor, { voltageV, slipRatio: 1 });
  const apparentPowerVa = voltageV * rated.currentA;
  return [
    running.shaftPowerW / plate.ratedPowerW - 1,
    (running.inputPowerW - rated.inputPowerW) / apparentPowerVa,
    (running.reactivePowerVar - rated.reactivePowerVar) / apparentPowerVa,
    locked.currentA / rated.lockedRotorA - 1,
    locked.torqueNm / rated.lockedRotorNm - 1,
  ];
};

const FIELDS = [
  'ratedPowerW',
  'efficiencyRatio',
  'powerFactor',
  'lockedRotorCurrentRatio',
  'lockedRotorTorqueRatio',
] as const;

/** Starts of the search, the likeliest first. */
const SPREADS = [
  { turns: 1, rotor: 1 },
  { turns: 1.4, rotor: 0.7 },
  { turns: 1, rotor: 0.5 },
  { turns: 1.4, rotor: 1 },
  { turns: 0.7, rotor: 0.5 },
  { turns: 1, rotor: 1.5 },
] as const;

/** Pull-out torque on the running side by rated torque that is taken as ordinary, and how far off is near enough. */
const PULL_OUT_RATIO = 2.2;
const NEAR_ENOUGH = Math.log(1.25);

/** Greatest misfit that counts as reproducing the plate [1]. */
const TOLERANCE_RATIO = 1e-6;

/** What a plate does not say and the model takes as given. */
export type SinglePhaseAssumption =
  /** main winding and rotor have equal leakage reactance, the auxiliary winding the same by turns squared */
  | 'equal-leakage'
  /** rotor resistance is the same at standstill and running */
  | 'constant-rotor-resistance'
  /** share of core and friction among the losses lies near a fifth */
  | 'rotational-loss-share'
  /** pull-out torque on the running side is as near 2.2 times rated torque as the plate allows */
  | 'pull-out-torque'
  /** turns ratio, auxiliary resistance and how current divides between the windings lie near an ordinary build */
  | 'ordinary-auxiliary-winding'
  /** the capacitors' values are those that fit, not those of the maker */
  | 'fitted-capacitors'
  /** the centrifugal switch opens at 75 % of synchronous speed */
  | 'switch-speed';

/** A motor made from its plate, with what had to be assumed. */
export interface NameplateMotor extends SinglePhaseMotor {
  readonly assumed: readonly SinglePhaseAssumption[];
}

const assumptionsOf = (plate: SinglePhaseNameplate): SinglePhaseAssumption[] => [
  'equal-leakage',
  'constant-rotor-resistance',
  'rotational-loss-share',
  'pull-out-torque',
  'ordinary-auxiliary-winding',
  ...(plate.kind === 'split-phase' ? [] : (['fitted-capacitors'] as const)),
  ...(plate.kind === 'permanent-capacitor' ? [] : (['switch-speed'] as const)),
];

/** How far the pull-out torque of the running side lies from an ordinary one, as a logarithm. */
const pullOutMisfit = (motor: SinglePhaseMotor, plate: SinglePhaseNameplate): number => {
  const running = { ...motor, switchSlipRatio: 0.99, recloseSlipRatio: 1 };
  let most = 0;
  for (let slipRatio = 0.04; slipRatio < 0.5; slipRatio += 0.02) {
    most = Math.max(most, singlePhaseMotorState(running, { voltageV: plate.voltageV, slipRatio }).torqueNm);
  }
  const ratedNm = plate.ratedPowerW / ((plate.ratedSpeedRpm * Math.PI) / 30);
  return Math.abs(Math.log(most / ratedNm / PULL_OUT_RATIO));
};

const isOrdinary = (motor: SinglePhaseMotor, rated: RatedPoint): boolean =>
  motor.auxiliary.turnsRatio > 0.4 &&
  motor.auxiliary.turnsRatio < 3 &&
  motor.circuit.magnetizingReactanceOhm > 5 * motor.circuit.mainReactanceOhm &&
  motor.circuit.rotationalLossW < 0.6 * rated.lossW;

/** Says which figure of the plate the nearest motor misses most, and what that motor would have there. */
const noSuchMotor = (plate: SinglePhaseNameplate, found: readonly number[]): RangeError => {
  const worst = found.reduce(
    (best, value, i) => (Math.abs(value) > Math.abs(found[best] ?? 0) ? i : best),
    0,
  );
  const field = FIELDS[worst] ?? 'lockedRotorTorqueRatio';
  // More input or reactive power than the plate's means a lower efficiency or power factor.
  const isInverse = field === 'efficiencyRatio' || field === 'powerFactor';
  const side = (found[worst] ?? 0) > 0 === isInverse ? 'lower' : 'higher';
  return new RangeError(
    `${field}: expected a value that a ${plate.kind} motor with the rest of this plate can have, which is ${side}, found ${plate[field]}`,
  );
};

/**
 * A single-phase motor that has the figures on its plate. A plate gives five of them and a circuit has seven to nine
 * values, so what is left open stays near a motor of ordinary build; `assumed` says what.
 *
 * @param plate.ratedPowerW             power at the shaft [W], above 0
 * @param plate.voltageV                rated voltage [V], above 0
 * @param plate.frequencyHz             rated frequency [Hz], above 0
 * @param plate.efficiencyRatio         at rated power [1], above 0, below 1
 * @param plate.powerFactor             lagging, at rated power [1], above 0 up to 1
 * @param plate.ratedSpeedRpm           speed at rated power [rpm], up to 20 % below a synchronous speed
 * @param plate.lockedRotorCurrentRatio line current at standstill by rated current [1], above 1
 * @param plate.lockedRotorTorqueRatio  torque at standstill by rated torque [1], above 0
 * @param plate.kind                    how the auxiliary winding is fed
 * @returns the motor, for singlePhaseMotorState, with the list of what is assumed
 * @throws  {RangeError} naming the field that cannot be: a value outside its limits, more rotor loss than losses, more starting torque than the locked-rotor current can carry, or no such motor of ordinary build
 * Valid for: shaft power, input power, reactive power, current and torque at standstill to one part in a million;
 *          what lies between (pull-out torque, current at half speed, capacitor values) is plausible, not known.
 * Source:  derived (double revolving field and symmetrical components, solved for the plate); common-practice (what ordinary build is)
 * Example: singlePhaseMotorState(singlePhaseFromNameplate({ ratedPowerW: 750, voltageV: 230, frequencyHz: 50, efficiencyRatio: 0.7, powerFactor: 0.72, ratedSpeedRpm: 1430, lockedRotorCurrentRatio: 4.5, lockedRotorTorqueRatio: 2.5, kind: 'capacitor-start' }), { voltageV: 230, slipRatio: 1 }).currentA → 29.11
 */
export const singlePhaseFromNameplate = (plate: SinglePhaseNameplate): NameplateMotor => {
  const rated = ratedPointOf(plate);
  let best: SinglePhaseMotor | undefined;
  let bestPullOut = Number.POSITIVE_INFINITY;
  let nearest: readonly number[] = [];
  let least = Number.POSITIVE_INFINITY;
  for (const spread of SPREADS) {
    const start = nameplateStart(plate, rated, spread);
    const { point, residuals } = nearestRoot({
      start: new Array<number>(9).fill(0),
      residualsAt: (logs) => misfits(scaled(start, logs), plate, rated),
      rounds: 80,
    });
    const motor = scaled(start, point);
    const worst = Math.max(...residuals.map(Math.abs));
    if (worst < TOLERANCE_RATIO && isOrdinary(motor, rated)) {
      const pullOut = pullOutMisfit(motor, plate);
      if (pullOut < bestPullOut) {
        best = motor;
        bestPullOut = pullOut;
      }
      if (pullOut < NEAR_ENOUGH) break;
    } else if (worst < least) {
      least = worst;
      nearest = residuals;
    }
  }
  if (best === undefined) throw noSuchMotor(plate, nearest);
  return {
    ...best,
    ...(plate.kind === 'permanent-capacitor' ? {} : { switchSlipRatio: SWITCH_OPENS_AT_SLIP }),
    assumed: assumptionsOf(plate),
  };
};
