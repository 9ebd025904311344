import { checkedNumber } from '../../ac/index.ts';
import type { SinglePhaseKind } from './auxiliary-for.ts';

/** What the plate and the catalogue say of a single-phase motor. */
export interface SinglePhaseNameplate {
  /** power at the shaft [W] */
  readonly ratedPowerW: number;
  readonly voltageV: number;
  readonly frequencyHz: number;
  readonly efficiencyRatio: number;
  /** lagging */
  readonly powerFactor: number;
  readonly ratedSpeedRpm: number;
  /** current of the line at standstill by rated current [1] */
  readonly lockedRotorCurrentRatio: number;
  /** torque at standstill by rated torque [1] */
  readonly lockedRotorTorqueRatio: number;
  readonly kind: SinglePhaseKind;
}

/** What follows from a plate that can be. */
export interface RatedPoint {
  readonly polePairs: number;
  readonly slipRatio: number;
  readonly inputPowerW: number;
  readonly reactivePowerVar: number;
  readonly currentA: number;
  readonly lossW: number;
  readonly lockedRotorA: number;
  readonly lockedRotorNm: number;
}

const refuse = (field: string, expected: string, found: string): RangeError =>
  new RangeError(`${field}: expected ${expected}, found ${found}`);

/** The rated point of a plate; refuses one that breaks the balance of powers. */
export const ratedPointOf = (plate: SinglePhaseNameplate): RatedPoint => {
  checkedNumber('ratedPowerW', plate.ratedPowerW, { above: 0 });
  checkedNumber('voltageV', plate.voltageV, { above: 0 });
  checkedNumber('frequencyHz', plate.frequencyHz, { above: 0 });
  checkedNumber('efficiencyRatio', plate.efficiencyRatio, { above: 0, below: 1 });
  checkedNumber('powerFactor', plate.powerFactor, { above: 0, max: 1 });
  checkedNumber('ratedSpeedRpm', plate.ratedSpeedRpm, { above: 0, below: 60 * plate.frequencyHz });
  checkedNumber('lockedRotorCurrentRatio', plate.lockedRotorCurrentRatio, { above: 1 });
  checkedNumber('lockedRotorTorqueRatio', plate.lockedRotorTorqueRatio, { above: 0 });
  const polePairs = Math.floor((60 * plate.frequencyHz) / plate.ratedSpeedRpm);
  const synchronousRpm = (60 * plate.frequencyHz) / polePairs;
  const slipRatio = 1 - plate.ratedSpeedRpm / synchronousRpm;
  if (!(slipRatio > 0 && slipRatio < 0.2)) {
    throw refuse(
      'ratedSpeedRpm',
      `up to 20 % below ${synchronousRpm} rpm, the speed of the field with ${polePairs} pole pairs`,
      `${plate.ratedSpeedRpm}`,
    );
  }
  const inputPowerW = plate.ratedPowerW / plate.efficiencyRatio;
  const apparentPowerVa = inputPowerW / plate.powerFactor;
  const lossW = inputPowerW - plate.ratedPowerW;
  const leastRotorLossW = (plate.ratedPowerW * slipRatio) / (1 - slipRatio);
  if (leastRotorLossW >= lossW) {
    const most = plate.ratedPowerW / (plate.ratedPowerW + leastRotorLossW);
    throw refuse(
      'efficiencyRatio',
      `below ${most.toFixed(3)}, because the slip at ${plate.ratedSpeedRpm} rpm alone costs the rest in the rotor`,
      `${plate.efficiencyRatio}`,
    );
  }
  const currentA = apparentPowerVa / plate.voltageV;
  const lockedRotorA = currentA * plate.lockedRotorCurrentRatio;
  const ratedNm = plate.ratedPowerW / ((plate.ratedSpeedRpm * Math.PI) / 30);
  const lockedRotorNm = ratedNm * plate.lockedRotorTorqueRatio;
  const synchronousRadPerS = (synchronousRpm * Math.PI) / 30;
  if (lockedRotorNm * synchronousRadPerS >= plate.voltageV * lockedRotorA) {
    const most = (plate.voltageV * lockedRotorA) / synchronousRadPerS / ratedNm;
    throw refuse(
      'lockedRotorTorqueRatio',
      `below ${most.toFixed(2)}, because the locked-rotor current carries no more power`,
      `${plate.lockedRotorTorqueRatio}`,
    );
  }
  const reactivePowerVar = Math.sqrt(apparentPowerVa ** 2 - inputPowerW ** 2);
  return {
    polePairs,
    slipRatio,
    inputPowerW,
    reactivePowerVar,
    currentA,
    lossW,
    lockedRotorA,
    lockedRotorNm,
  };
};
