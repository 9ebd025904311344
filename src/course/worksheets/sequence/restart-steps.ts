import type { HeatState, InverterModel } from '../../../engine/index.ts';
import type { Formula } from '../formula.ts';
import { difference, equation, product, sum } from '../formula.ts';
import { fastShare, fastTime, idleHeat, slowShare, slowTime, stillToGo } from '../heat/heat-formula.ts';
import type { NumericStep } from '../worksheet.ts';
import { runOf } from './runs-between-stops.ts';

interface RunValues {
  inverter: InverterModel;
  rowA: number;
  demandRatio: number;
}

type Term = Formula | string;

const wait = 'inverter.datasheet.waitS';
const parts = {
  fast: { share: fastShare, timeConstant: fastTime },
  slow: { share: slowShare, timeConstant: slowTime },
} as const satisfies Record<keyof HeatState, { share: Term; timeConstant: string }>;

/** Where a part is heading under the load: its share of the heat demand. */
const target = (part: keyof HeatState): Formula => product(parts[part].share, 'demandRatio');

/**
 * How far one part still has to go at a restart, up to where the load is heading: the run before has taken it up, the wait
 * has let it cool.
 */
export function toGoStep<V extends RunValues>(given: {
  id: keyof V & string;
  part: keyof HeatState;
  /** Number of the run before, 0 for the first. */
  run: number;
  runTime: Term;
  /** Path of how far the part had to go at the start of that run; from no load when absent. */
  before?: string;
  needs: readonly (keyof V & string)[];
}): NumericStep<V> {
  const { share, timeConstant } = parts[given.part];
  const afterRun = stillToGo(given.runTime, timeConstant);
  const afterWait = stillToGo(wait, timeConstant);
  const cooled = (heading: Term, toGo: Term): Formula =>
    difference(heading, product(difference(heading, product(toGo, afterRun)), afterWait));
  return {
    kind: 'numeric',
    id: given.id,
    needs: ['inverter', 'rowA', 'demandRatio', ...given.needs],
    solve: ({ inverter, rowA, demandRatio }) => {
      const { fastShareRatio } = inverter.network;
      const heading = (given.part === 'fast' ? fastShareRatio : 1 - fastShareRatio) * demandRatio;
      return heading - runOf(inverter, rowA, given.run).heatAtRestart[given.part];
    },
    formula:
      given.before === undefined
        ? product(share, cooled('demandRatio', difference('demandRatio', idleHeat)))
        : cooled(target(given.part), given.before),
    tolerance: { relative: 0.02 },
    source: 'derived',
    slips: [],
  };
}

/** A run from a restart: at the stop, what both parts have still to go is what the demand goes beyond 1. */
export const runStep = <V extends RunValues>(given: {
  id: keyof V & string;
  /** Number of the run, 1 for the second. */
  run: number;
  /** Steps that give how far the parts have to go at the restart. */
  small: keyof V & string;
  big: keyof V & string;
}): NumericStep<V> => ({
  kind: 'numeric',
  id: given.id,
  needs: ['inverter', 'rowA', 'demandRatio', given.small, given.big],
  solve: ({ inverter, rowA }) => runOf(inverter, rowA, given.run).durationS,
  formula: equation(
    sum(
      product(given.small, stillToGo(given.id, fastTime)),
      product(given.big, stillToGo(given.id, slowTime)),
    ),
    difference('demandRatio', 1),
  ),
  tolerance: { relative: 0.03 },
  source: 'derived',
  slips: [],
});
