import { checkDatasheet } from './check-datasheet.ts';
import type { InverterDatasheet, StatedPower } from './datasheet.ts';
import { datasheetError } from './datasheet-error.ts';
import { fitHeatNetwork } from './fit-heat-network.ts';
import { currentForLossA, lossCoefficients, lossesW } from './losses.ts';
import type { InverterModel } from './model.ts';
import { ratedCurrentA } from './rated-current.ts';

/** Internal temperatures outside these are no electronics: the hot rating is misprinted. */
const plausibleLimitC = { from: 60, upTo: 150 };

const inAmperes = (currentA: number): string => `${currentA.toPrecision(4)} A`;

const checkOrder = (lower: [string, number], higher: [string, number], equalToo = false): void => {
  if (equalToo ? lower[1] <= higher[1] : lower[1] < higher[1]) return;
  throw datasheetError({
    field: higher[0],
    expected: `${equalToo ? 'at least' : 'more than'} ${lower[0]} (${inAmperes(lower[1])})`,
    found: inAmperes(higher[1]),
    change: `raise ${higher[0]} or lower ${lower[0]}`,
  });
};

const solveLosses = (datasheet: InverterDatasheet, continuousA: number) => {
  const losses = lossCoefficients({ ...datasheet, continuousA });
  // A hair below zero is rounding, not a contradiction.
  const hairW = 1e-9 * lossesW(losses, continuousA);
  const linearW = losses.linearWPerA * continuousA;
  const squareW = losses.squareWPerA2 * continuousA ** 2;
  if (linearW < -hairW) {
    throw datasheetError({
      field: 'efficiencyHalfRatio',
      expected: 'a loss at half load that leaves the linear part at 0 W or more',
      found: `${linearW.toPrecision(3)} W`,
      change: 'lower efficiencyHalfRatio, or lower idleLossW, or raise efficiencyFullRatio',
    });
  }
  if (squareW < -hairW) {
    throw datasheetError({
      field: 'efficiencyFullRatio',
      expected: 'a loss at full load that leaves the part growing with the square of current at 0 W or more',
      found: `${squareW.toPrecision(3)} W`,
      change: 'lower efficiencyFullRatio, or raise efficiencyHalfRatio',
    });
  }
  if (!(linearW + squareW > hairW)) {
    throw datasheetError({
      field: 'idleLossW',
      expected: 'less than the loss at full load',
      found: `${datasheet.idleLossW} W`,
      change: 'lower idleLossW or efficiencyFullRatio',
    });
  }
  return losses;
};

const solveLimitC = (datasheet: InverterDatasheet, hotHeatRatio: number): number => {
  // (limit − hot) / (limit − reference) = heat allowed when hot
  const limitC = (datasheet.hot.ambientC - hotHeatRatio * datasheet.referenceAmbientC) / (1 - hotHeatRatio);
  if (limitC >= plausibleLimitC.from && limitC <= plausibleLimitC.upTo) return limitC;
  const tooCool = limitC < plausibleLimitC.from;
  throw datasheetError({
    field: 'hot.power',
    expected: `a rating that puts the internal limit at ${plausibleLimitC.from} to ${plausibleLimitC.upTo} °C`,
    found: `a limit of ${limitC.toPrecision(4)} °C`,
    change: tooCool ? 'raise hot.power or lower hot.ambientC' : 'lower hot.power or raise hot.ambientC',
  });
};

/**
 * Solves a datasheet into a model: currents of its points, loss polynomial, the two heat nodes through the
 * continuous, long-duration and surge ratings, and the internal temperature limit through the hot rating.
 *
 * @param datasheet  as printed, SI units
 * @returns the model that every other function of this folder takes
 * @throws  {RangeError} a figure out of bounds, or a point that no such network satisfies: names the point, what was
 *          expected, what was found, and what to change
 * Valid for: ratings stated from "running at no load, settled" at the reference ambient; heat independent of power factor
 * Source:  derived (two-node network); foster-notebook; common-practice (rating points)
 * Example: solveHeatNetwork(exampleDatasheet).limitC → 100.45
 */
export const solveHeatNetwork = (datasheet: InverterDatasheet): InverterModel => {
  checkDatasheet(datasheet);
  const amperes = (power: StatedPower): number => ratedCurrentA(power, datasheet.acNominalV);
  const continuousA = amperes(datasheet.continuous.power);
  const hotA = amperes(datasheet.hot.power);
  const longDurationA = amperes(datasheet.longDuration.power);
  const surgeA = amperes(datasheet.surge.power);
  const limitA = amperes(datasheet.currentLimit.power);
  checkOrder(['hot.power', hotA], ['continuous.power', continuousA]);
  checkOrder(['continuous.power', continuousA], ['longDuration.power', longDurationA]);
  checkOrder(['longDuration.power', longDurationA], ['surge.power', surgeA]);
  checkOrder(['surge.power', surgeA], ['currentLimit.power', limitA], true);

  const losses = solveLosses(datasheet, continuousA);
  const continuousLossW = lossesW(losses, continuousA);
  const heatAt = (currentA: number): number => lossesW(losses, currentA) / continuousLossW;
  return {
    datasheet,
    continuousA,
    hotA,
    longDurationA,
    surgeA,
    limitA,
    losses,
    continuousLossW,
    network: fitHeatNetwork({
      idleHeatRatio: heatAt(0),
      longDuration: { heatRatio: heatAt(longDurationA), durationS: datasheet.longDuration.durationS },
      surge: { heatRatio: heatAt(surgeA), durationS: datasheet.surge.durationS },
      slowTimeConstantS: datasheet.heatSinkTimeConstantS,
      describeHeat: (heatRatio) =>
        `${((datasheet.acNominalV * currentForLossA(losses, heatRatio * continuousLossW)) / 1000).toPrecision(4)} kVA`,
    }),
    limitC: solveLimitC(datasheet, heatAt(hotA)),
  };
};
