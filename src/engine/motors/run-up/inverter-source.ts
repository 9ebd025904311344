import { allowedHeat, type Surroundings } from '../../inverter/allowed-heat.ts';
import { settledHeat } from '../../inverter/heat-target.ts';
import type { HeatState } from '../../inverter/model.ts';
import { noLoad, type ZipLoad } from '../../inverter/voltage/zip-load.ts';
import type { RunUpSource } from './run-up-types.ts';

/**
 * An inverter as the source of a start: its limit, its heat, its cycle counter. For a three-phase motor: one of three
 * alike, each on its phase.
 *
 * @param given.model      a solved inverter
 * @param given.ambientC   air around the unit [°C]
 * @param given.altitudeM  height of the site [m], ≥ 0, default 0
 * @param given.others     what else runs on the unit, at nominal voltage [W, var]; default nothing
 * @param given.heat       heat of both nodes before the start; default: settled at no load
 * @returns the source
 * @throws  {RangeError} as `allowedHeat`
 * Source:  none (a container)
 * Example: inverterSource({ model: exampleModel, ambientC: 25 }).limitA → 25
 */
export const inverterSource = (
  given: Surroundings & { readonly others?: ZipLoad; readonly heat?: HeatState },
): RunUpSource => {
  const { model, others = noLoad, heat = settledHeat(model, 0) } = given;
  return {
    nominalV: model.datasheet.acNominalV,
    frequencyHz: model.datasheet.frequencyHz,
    limitA: model.limitA,
    others,
    protection: { model, heat, allowedHeatRatio: allowedHeat(given) },
  };
};

/**
 * A supply without a limit, such as a strong mains.
 *
 * @param given.nominalV     across one phase of the motor, counted as star [V], > 0
 * @param given.frequencyHz  [Hz], > 0
 * @returns the source
 * @throws  nothing
 * Source:  none (a container)
 * Example: stiffSource({ nominalV: 230, frequencyHz: 50 }).nominalV → 230
 */
export const stiffSource = (given: { nominalV: number; frequencyHz: number }): RunUpSource => ({
  ...given,
  limitA: Number.POSITIVE_INFINITY,
  others: noLoad,
});
