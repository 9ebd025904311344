import { heatTarget, type InverterModel } from '../../../engine/index.ts';
import type { Equation, Formula } from '../formula.ts';
import { difference, equation, exp, fraction, negative, power, product, sum } from '../formula.ts';
import type { NumericStep, Quantity } from '../worksheet.ts';

type Term = Formula | string | number;

/** How the parts of the heat model are written, for a given called `inverter`. */
export const heatQuantities: Readonly<Record<string, Quantity>> = {
  'inverter.datasheet.acNominalV': { symbol: 'U_nom', dimension: 'voltage', unit: 'V' },
  'inverter.datasheet.referenceAmbientC': { symbol: 'T_ref', dimension: 'temperature' },
  'inverter.datasheet.hot.ambientC': { symbol: 'T_hot', dimension: 'temperature' },
  'inverter.datasheet.surge.durationS': { symbol: 't_surge', dimension: 'time' },
  'inverter.limitC': { symbol: 'T_stop', dimension: 'temperature', figures: 3 },
  'inverter.continuousA': { symbol: 'I_cont', dimension: 'current', unit: 'A', figures: 3 },
  'inverter.continuousLossW': { symbol: 'P_cont', dimension: 'real-power', unit: 'W', figures: 4 },
  'inverter.losses.constantW': { symbol: 'P_0', dimension: 'real-power', unit: 'W' },
  // Watts per ampere are volts, watts per ampere squared are ohms.
  'inverter.losses.linearWPerA': { symbol: 'b', dimension: 'voltage', unit: 'V', figures: 3 },
  'inverter.losses.squareWPerA2': { symbol: 'c', dimension: 'resistance', unit: 'Ω', figures: 3 },
  'inverter.network.fastShareRatio': { symbol: 'k', dimension: 'ratio', figures: 3 },
  'inverter.network.fastTimeConstantS': { symbol: 'τ_small', dimension: 'time', unit: 's', figures: 3 },
  'inverter.network.slowTimeConstantS': { symbol: 'τ_big', dimension: 'time', unit: 's', figures: 4 },
};

/** A time that a formula shows in seconds, whatever the answer is written in. */
export const timeInSeconds = (symbol: string): Quantity => ({
  symbol,
  dimension: 'time',
  unitInFormula: 's',
});

export const fastShare = 'inverter.network.fastShareRatio';
export const slowShare = difference(1, fastShare);
export const fastTime = 'inverter.network.fastTimeConstantS';
export const slowTime = 'inverter.network.slowTimeConstantS';

/** Heat at which the unit settles with nothing connected. */
export const idleHeat = fraction('inverter.losses.constantW', 'inverter.continuousLossW');

/** Demand: the heat at which a current would settle, 1 under the continuous rating. */
export const demandFormula = (current: Term): Formula =>
  fraction(
    sum(
      'inverter.losses.constantW',
      product('inverter.losses.linearWPerA', current),
      product('inverter.losses.squareWPerA2', power(current, 2)),
    ),
    'inverter.continuousLossW',
  );

/** What a part has still to go after a time, as a share of its way: e^(−t/τ). */
export const stillToGo = (time: Term, timeConstant: string): Formula =>
  exp(negative(fraction(time, timeConstant)));

/**
 * The line that a time-to-stop table is drawn from: the heat demand above what is allowed, as a share of the whole climb,
 * equals what both parts have still to go at that time.
 *
 * @param given.demand   path of the heat demand
 * @param given.allowed  heat allowed in these surroundings; 1 when absent
 * @param given.start    settled heat at the start; that at no load when absent
 */
export const stopTimeEquation = (given: {
  demand: string;
  time: string;
  allowed?: Term;
  start?: Term;
}): Equation =>
  equation(
    fraction(difference(given.demand, given.allowed ?? 1), difference(given.demand, given.start ?? idleHeat)),
    sum(
      product(fastShare, stillToGo(given.time, fastTime)),
      product(slowShare, stillToGo(given.time, slowTime)),
    ),
  );

/** The heat demand of a load, worked out once for the lines that follow. */
export const demandStep = <V extends { inverter: InverterModel }>(given: {
  id: keyof V & string;
  needs: readonly (keyof V & string)[];
  currentA(values: V): number;
  current: Term | ((values: V) => Term);
}): NumericStep<V> => ({
  kind: 'numeric',
  id: given.id,
  needs: given.needs,
  solve: (values) => heatTarget(values.inverter, given.currentA(values)),
  formula: (values) =>
    demandFormula(typeof given.current === 'function' ? given.current(values) : given.current),
  tolerance: { relative: 0.02 },
  source: 'derived',
  slips: [],
});
