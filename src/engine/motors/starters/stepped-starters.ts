import { checkedNumber } from '../../ac/checked-number.ts';
import { checkedEnd, openStage, runningStage, type StageEnd, type Starter, scaledStage } from './starter.ts';

/** Straight on the supply: full current, full torque. */
export const directStarter: Starter = { kind: 'direct', stages: [runningStage] };

/**
 * Star first, then delta. In star each winding has 1/√3 of its voltage: line current and torque are a third.
 *
 * @param given.switchOver  when the windings change over: at a share of synchronous speed, after a time [s], or the first of both
 * @param given.gapS        time without current between the two [s], ≥ 0, default 0.05
 * @returns the starter, for a motor whose circuit is that of the delta connection
 * @throws  {RangeError} a switch-over that cannot come, a negative gap
 * Valid for: quasi-steady currents; the short blow of current on reconnection is not part of it
 * Formula: I = I_Δ/3, T = T_Δ/3
 * Source:  theraja-machines (ex. 35.15); common-practice (gap)
 * Example: starDeltaStarter({ switchOver: { atSpeedRatio: 0.9 } }).stages.length → 3
 */
export const starDeltaStarter = (given: { switchOver: StageEnd; gapS?: number }): Starter => {
  const gapS = checkedNumber('gapS', given.gapS ?? 0.05, { min: 0 });
  const star = scaledStage({
    lineRatio: 1 / 3,
    motorRatio: 1 / 3,
    torqueRatio: 1 / 3,
    end: checkedEnd(given.switchOver),
  });
  return { kind: 'star-delta', stages: [star, ...(gapS > 0 ? [openStage(gapS)] : []), runningStage] };
};

/**
 * A transformer tap first, then the full voltage, without a gap.
 *
 * @param given.tapRatio    motor voltage by line voltage, above 0 up to 1
 * @param given.switchOver  when the tap gives way: at a share of synchronous speed, after a time [s], or the first of both
 * @returns the starter
 * @throws  {RangeError} a tap or switch-over that cannot be
 * Valid for: a transformer without losses and magnetising current
 * Formula: I_motor = k·I, I_line = k²·I, T = k²·T
 * Source:  theraja-machines (ex. 35.16)
 * Example: autotransformerStarter({ tapRatio: 0.6, switchOver: { afterS: 3 } }).stages.length → 2
 */
export const autotransformerStarter = (given: { tapRatio: number; switchOver: StageEnd }): Starter => {
  const tap = checkedNumber('tapRatio', given.tapRatio, { above: 0, max: 1 });
  const tapped = scaledStage({
    lineRatio: tap * tap,
    motorRatio: tap,
    torqueRatio: tap * tap,
    end: checkedEnd(given.switchOver),
  });
  return { kind: 'autotransformer', stages: [tapped, runningStage] };
};

/**
 * A resistor or choke in each line first, then the full voltage. It takes less voltage away as the motor speeds up.
 *
 * @param given.resistanceOhm  per phase [Ω], ≥ 0
 * @param given.reactanceOhm   per phase at the supply's frequency [Ω], ≥ 0
 * @param given.switchOver     when it is bridged: at a share of synchronous speed, after a time [s], or the first of both
 * @returns the starter
 * @throws  {RangeError} a negative resistance or reactance, a switch-over that cannot come
 * Valid for: a choke that does not saturate
 * Formula: Y' = Y/(1 + Z·Y), T' = T/|1 + Z·Y|²
 * Source:  derived
 * Example: seriesStarter({ resistanceOhm: 2, reactanceOhm: 0, switchOver: { afterS: 2 } }).kind → series-impedance
 */
export const seriesStarter = (given: {
  resistanceOhm: number;
  reactanceOhm: number;
  switchOver: StageEnd;
}): Starter => {
  const r = checkedNumber('resistanceOhm', given.resistanceOhm, { min: 0 });
  const x = checkedNumber('reactanceOhm', given.reactanceOhm, { min: 0 });
  return {
    kind: 'series-impedance',
    stages: [
      {
        isSteady: true,
        end: checkedEnd(given.switchOver),
        connect: ({ conductanceS: g, susceptanceS: b }, _inStageS, into) => {
          const re = 1 + r * g - x * b;
          const im = r * b + x * g;
          const square = re * re + im * im;
          into.conductanceS = (g * re + b * im) / square;
          into.susceptanceS = (b * re - g * im) / square;
          into.harmonicS = 0;
          into.motorS = Math.sqrt((g * g + b * b) / square);
          into.torqueRatio = 1 / square;
        },
      },
      runningStage,
    ],
  };
};
