import { allowedHeat, type Surroundings } from './allowed-heat.ts';
import { bracketedRoot } from './bracketed-root.ts';
import { currentForHeatTargetA, settledHeat } from './heat-target.ts';
import type { HeatState } from './model.ts';
import { fosterResponse } from './thermal/foster-response.ts';
import { curveExtremes } from './thermal/time-to-rise.ts';

/**
 * The largest constant current that lasts a given time before heat stops the unit: the inverse of `timeToStop`.
 * Heat at a time grows in proportion to the settled heat, so the end of the time gives it directly; only when the
 * unit starts with a hot heat sink and a cool fast node can an inner peak bind earlier, and then a root is sought.
 *
 * @param given.model      a solved inverter
 * @param given.timeS      time to last [s], > 0; Infinity for ever
 * @param given.ambientC   air around the unit [°C]
 * @param given.altitudeM  height of the site [m], ≥ 0, default 0
 * @param given.heat       heat of both nodes at the start; default: settled at no load
 * @returns current [A]; 0 when not even no load lasts the time. Not capped by the current limit.
 * @throws  {RangeError} time not above 0; as `allowedHeat`
 * Source:  derived
 * Example: currentForTime({ model: exampleModel, timeS: 1800, ambientC: 25 }) → 15.00
 */
export const currentForTime = (
  given: Surroundings & { readonly timeS: number; readonly heat?: HeatState },
): number => {
  const { model, timeS, heat = settledHeat(model, 0) } = given;
  if (!(timeS > 0)) throw new RangeError(`timeS: expected more than 0 s, found ${timeS} s`);
  const { fastShareRatio, fastTimeConstantS, slowTimeConstantS } = model.network;
  const allowed = allowedHeat(given);
  if (heat.fast + heat.slow > allowed * (1 + 1e-12)) return 0;
  const leftOver =
    heat.fast * Math.exp(-timeS / fastTimeConstantS) + heat.slow * Math.exp(-timeS / slowTimeConstantS);
  const response = fosterResponse({
    nodes: [
      { weight: fastShareRatio, timeConstantS: fastTimeConstantS },
      { weight: 1 - fastShareRatio, timeConstantS: slowTimeConstantS },
    ],
    durationS: timeS,
  });
  const peakExcess = (heatRatio: number): number =>
    curveExtremes({
      curve: {
        steady: heatRatio,
        fastPart: heat.fast - fastShareRatio * heatRatio,
        slowPart: heat.slow - (1 - fastShareRatio) * heatRatio,
        fastTimeConstantS,
        slowTimeConstantS,
      },
      durationS: timeS,
    }).peak.value - allowed;
  const byEnd = (allowed - leftOver) / response;
  const slack = 1e-12 * allowed;
  const inner = peakExcess(byEnd) > slack && peakExcess(0) < 0;
  const heatRatio = inner ? bracketedRoot({ lower: 0, upper: byEnd, valueAt: peakExcess }) : byEnd;
  return currentForHeatTargetA(model, heatRatio);
};
