import { type HeatState, heatTarget, type InverterModel, settledHeat } from '../../../engine/index.ts';
import { areApart } from '../are-apart.ts';
import { stopTimeOrNull } from './stop-time.ts';
import { liesBetweenRows, multipleRows, rowFor, timeBetweenRows } from './table-rows.ts';

/** What the unit carried before, and what it carries from now on. */
interface LoadAfterLoad {
  inverter: InverterModel;
  previousRatio: number;
  loadRatio: number;
}

/** Previous loads that the printed table of losses has a row for. */
export const previousLoads = [0, 0.5, 0.6, 0.7, 0.8] as const;

/** A previous load whose column stands beside the right one. */
export const otherPrevious = (previousRatio: number): number => (previousRatio < 0.65 ? 0.8 : 0.5);
export const columnsOf = (previousRatio: number): number[] =>
  [0, previousRatio, otherPrevious(previousRatio)].sort((left, right) => left - right);

const settledAt = (inverter: InverterModel, loadRatio: number): HeatState =>
  settledHeat(inverter, loadRatio * inverter.continuousA);

/** Heat of both nodes when their sum is known and has settled. */
export const spread = (inverter: InverterModel, heatRatio: number): HeatState => {
  const fast = inverter.network.fastShareRatio * heatRatio;
  return { fast, slow: heatRatio - fast };
};

export const curveAfter = (inverter: InverterModel, previousRatio: number) => (loadRatio: number) =>
  stopTimeOrNull({
    model: inverter,
    currentA: loadRatio * inverter.continuousA,
    heat: settledAt(inverter, previousRatio),
  });

export const demandAt = (inverter: InverterModel, loadRatio: number): number =>
  heatTarget(inverter, loadRatio * inverter.continuousA);

/** Whether the slips can be told from each other and from the key. */
export function isTellingLoad({ inverter, previousRatio, loadRatio }: LoadAfterLoad): boolean {
  const rows = multipleRows(inverter);
  const row = rowFor(rows, loadRatio);
  if (row === null || !liesBetweenRows(rows, loadRatio)) return false;
  if (!previousLoads.some((previous) => previous === previousRatio)) return false;
  const [fromNoLoadS, leftS] = [curveAfter(inverter, 0)(row), curveAfter(inverter, previousRatio)(row)];
  if (fromNoLoadS === null || leftS === null) return false;
  const { surge, longDuration } = inverter.datasheet;
  const lost = 1 - leftS / fromNoLoadS;
  const betweenS = (previous: number) => timeBetweenRows(curveAfter(inverter, previous), rows, loadRatio);
  return (
    areApart([fromNoLoadS, leftS, betweenS(0), surge.durationS, longDuration.durationS], 0.035) &&
    // Where the overload lasts only minutes, time and missing heat are nearly in proportion: the slip would be no slip.
    areApart(
      [
        leftS,
        fromNoLoadS,
        betweenS(previousRatio),
        curveAfter(inverter, otherPrevious(previousRatio))(row),
        fromNoLoadS * (1 - demandAt(inverter, previousRatio)),
        fromNoLoadS * (1 - previousRatio),
      ],
      0.035,
    ) &&
    [1 - lost, lost / (1 - lost)].every((slip) => Math.abs(slip - lost) > 0.05) &&
    Math.abs(lost / (1 - lost) - (1 - lost)) > 0.05
  );
}
