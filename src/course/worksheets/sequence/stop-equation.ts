import type { Equation, Formula } from '../formula.ts';
import { difference, equation, exp, fraction, product, sum } from '../formula.ts';
import { fastShare, fastTime, lossFormula, slowShare, slowTime } from '../heat/heat-formula.ts';

/**
 * The heat at a stop, told by superposition: every switch-on adds a rise, every stop takes it away again from then on.
 * Both nodes together make up the loss allowed. The worksheet names its load `loadA` and its unit `inverter`.
 *
 * @param time      path of the moment of the stop
 * @param restarts  moments at which the unit came on again
 * @param stops     moments of the stops before this one
 */
export function stopEquation(
  time: string,
  restarts: readonly Formula[],
  stops: readonly Formula[],
): Equation {
  const since = (start: Formula, timeConstant: string): Formula =>
    exp(fraction(difference(start, time), timeConstant));
  const fromStart = (timeConstant: string): Formula => fraction(1, exp(fraction(time, timeConstant)));
  const node = (timeConstant: string): Formula =>
    difference(
      sum(1, ...stops.map((stop) => since(stop, timeConstant))),
      sum(fromStart(timeConstant), ...restarts.map((restart) => since(restart, timeConstant))),
    );
  const bothNodes = (part: (timeConstant: string) => Formula): Formula =>
    sum(product(fastShare, part(fastTime)), product(slowShare, part(slowTime)));
  return equation(
    sum(
      product(lossFormula('loadA'), bothNodes(node)),
      product('inverter.losses.constantW', bothNodes(fromStart)),
    ),
    'inverter.continuousLossW',
  );
}
