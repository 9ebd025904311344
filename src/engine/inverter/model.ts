import type { InverterDatasheet } from './datasheet.ts';

/** Loss of the inverter as a polynomial of its r.m.s. output current: a + b·I + c·I². */
export interface LossCoefficients {
  /** a: loss at no load [W] */
  readonly constantW: number;
  /** b [W/A] */
  readonly linearWPerA: number;
  /** c [W/A²] */
  readonly squareWPerA2: number;
}

/** Two heat nodes side by side (a Foster network), normalised: together they settle at 1 under the continuous rating. */
export interface HeatNetwork {
  /** share of the settled heat that sits in the fast node (0–1) */
  readonly fastShareRatio: number;
  readonly fastTimeConstantS: number;
  readonly slowTimeConstantS: number;
}

/**
 * Heat of both nodes. Their sum is the temperature rise over ambient divided by the rise allowed at the
 * reference ambient: 1 is the rise at which the unit stops when the ambient is the reference ambient.
 */
export interface HeatState {
  readonly fast: number;
  readonly slow: number;
}

/** A datasheet with everything that follows from it. Made by `solveHeatNetwork`. */
export interface InverterModel {
  readonly datasheet: InverterDatasheet;
  /** the datasheet's points as r.m.s. output currents [A] */
  readonly continuousA: number;
  readonly hotA: number;
  readonly longDurationA: number;
  readonly surgeA: number;
  readonly limitA: number;
  readonly losses: LossCoefficients;
  /** loss at the continuous rating [W] */
  readonly continuousLossW: number;
  readonly network: HeatNetwork;
  /** internal temperature at which the unit stops itself [°C] */
  readonly limitC: number;
}
