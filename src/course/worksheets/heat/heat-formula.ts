import type { Equation, Formula } from '../formula.ts';
import { difference, equation, exp, fraction, power, product, sum } from '../formula.ts';
import type { Quantity } from '../worksheet.ts';

type Term = Formula | string | number;

/** How the parts of the heat model are written, for a given called `inverter`. */
export const heatQuantities: Readonly<Record<string, Quantity>> = {
  'inverter.datasheet.acNominalV': { symbol: 'U_nom', dimension: 'voltage', unit: 'V' },
  'inverter.datasheet.referenceAmbientC': { symbol: 'T_ref', dimension: 'temperature' },
  'inverter.datasheet.hot.ambientC': { symbol: 'T_hot', dimension: 'temperature' },
  'inverter.datasheet.surge.durationS': { symbol: 't_surge', dimension: 'time' },
  'inverter.limitC': { symbol: 'T_stop', dimension: 'temperature' },
  'inverter.continuousA': { symbol: 'I_cont', dimension: 'current', unit: 'A' },
  'inverter.continuousLossW': { symbol: 'P_cont', dimension: 'real-power', unit: 'W' },
  'inverter.losses.constantW': { symbol: 'P_0', dimension: 'real-power', unit: 'W' },
  // Watts per ampere are volts, watts per ampere squared are ohms.
  'inverter.losses.linearWPerA': { symbol: 'b', dimension: 'voltage', unit: 'V' },
  'inverter.losses.squareWPerA2': { symbol: 'c', dimension: 'resistance', unit: 'Ω' },
  'inverter.network.fastShareRatio': { symbol: 'k', dimension: 'ratio' },
  'inverter.network.fastTimeConstantS': { symbol: 'τ_fast', dimension: 'time', unit: 's' },
  'inverter.network.slowTimeConstantS': { symbol: 'τ_slow', dimension: 'time', unit: 's' },
};

export const fastShare = 'inverter.network.fastShareRatio';
export const slowShare = difference(1, fastShare);
export const fastTime = 'inverter.network.fastTimeConstantS';
export const slowTime = 'inverter.network.slowTimeConstantS';

/** Loss at a current: P₀ + b·I + c·I². */
export const lossFormula = (current: Term): Formula =>
  sum(
    'inverter.losses.constantW',
    product('inverter.losses.linearWPerA', current),
    product('inverter.losses.squareWPerA2', power(current, 2)),
  );

/** Demand: the heat at which a current would settle, 1 under the continuous rating. */
export const demandFormula = (current: Term): Formula =>
  fraction(lossFormula(current), 'inverter.continuousLossW');

/** What is left of a step after a time, summed over both nodes: k·e^(−t/τ_fast) + (1 − k)·e^(−t/τ_slow). */
export const stepLeft = (time: Term): Formula =>
  sum(fraction(fastShare, exp(fraction(time, fastTime))), fraction(slowShare, exp(fraction(time, slowTime))));

/**
 * The equation behind a time to stop: how far the loss lies above the loss allowed, as a share of the step from the loss at
 * the start, equals what is left of the step at that time.
 *
 * @param given.allowed  loss allowed in these surroundings; the continuous rating's when absent
 * @param given.before   loss that the unit had settled under; its loss at no load when absent
 */
export function stopTimeEquation(given: {
  current: Term;
  time: Term;
  allowed?: Term;
  before?: Term;
}): Equation {
  const loss = lossFormula(given.current);
  return equation(
    fraction(
      difference(loss, given.allowed ?? 'inverter.continuousLossW'),
      difference(loss, given.before ?? 'inverter.losses.constantW'),
    ),
    stepLeft(given.time),
  );
}
