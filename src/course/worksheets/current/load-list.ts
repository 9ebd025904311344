import { powerTriangle } from '../../../engine/index.ts';
import { difference, type Formula, fraction, power, root, sum } from '../formula.ts';

/** A load as its nameplate states it: watts and a lagging power factor. */
export interface NameplateLoad {
  name: string;
  realPowerW: number;
  powerFactor: number;
}

export const add = (figures: readonly number[]): number =>
  figures.reduce((total, figure) => total + figure, 0);

export const realPowersW = (loads: readonly NameplateLoad[]): number[] =>
  loads.map((load) => load.realPowerW);

export const apparentPowersVa = (loads: readonly NameplateLoad[]): number[] =>
  loads.map((load) => powerTriangle(load).apparentPowerVa);

export const reactivePowersVar = (loads: readonly NameplateLoad[]): number[] =>
  loads.map((load) => powerTriangle(load).reactivePowerVar);

/** The triangle over all loads: watts and vars are added each on their own side. */
export const totalApparentPowerVa = (loads: readonly NameplateLoad[]): number =>
  Math.hypot(add(realPowersW(loads)), add(reactivePowersVar(loads)));

/** Q = √((P / PF)² − P²) for the load with this path. */
export const reactivePowerFormula = (path: string): Formula =>
  root(
    difference(
      power(fraction(`${path}.realPowerW`, `${path}.powerFactor`), 2),
      power(`${path}.realPowerW`, 2),
    ),
  );

export const realPowerSum = (loads: readonly NameplateLoad[]): Formula =>
  sum(...loads.map((_, place) => `loads.${place}.realPowerW`));

/** A load of power factor 1 adds nothing here and is left out. */
export const reactivePowerSum = (loads: readonly NameplateLoad[]): Formula => {
  const terms = loads.flatMap((load, place) =>
    load.powerFactor < 1 ? [reactivePowerFormula(`loads.${place}`)] : [],
  );
  return terms.length === 0 ? sum(0) : sum(...terms);
};
