import { largestRoot } from './largest-root.ts';
import { type LoadPower, type ZipLoad, zipCurrentA } from './zip-load.ts';

/** Where a current-limited output settles. */
export interface LimitedVoltage {
  /** the demand is within the limit: full voltage */
  readonly held: boolean;
  readonly voltageRatio: number;
  readonly voltageV: number;
  readonly currentA: number;
  /** current the loads would draw at nominal voltage [A] */
  readonly demandA: number;
  /** no voltage exists at which the limit would be enough */
  readonly collapsed: boolean;
}

const dot = (a: LoadPower, b: LoadPower): number => a.realW * b.realW + a.reactiveVar * b.reactiveVar;

/** Highest voltage share at which the loads draw just the limit; null when there is none. */
const limitedRatio = (load: ZipLoad, limitVa: number): number | null => {
  const { impedance: z, current: i, power: p } = load;
  // |z·v² + i·v + p|² = (limit·v)², everything divided by the limit
  const scale = 1 / (limitVa * limitVa);
  const zz = dot(z, z) * scale;
  const ii = dot(i, i) * scale;
  const pp = dot(p, p) * scale;
  if (pp === 0) return ii === 0 ? 1 / Math.sqrt(zz) : largestRoot([zz, 2 * dot(z, i) * scale, ii - 1]);
  return largestRoot([zz, 2 * dot(z, i) * scale, ii + 2 * dot(z, p) * scale - 1, 2 * dot(i, p) * scale, pp]);
};

/**
 * Voltage of an output whose current is limited: full while the demand is within the limit, else the highest voltage
 * at which the loads together draw just the limit.
 *
 * Of several such voltages the highest is the one where the output rests: there a rising voltage makes the loads draw
 * more than the limit can give, which pulls it down again, and a falling one makes them draw less. At the next lower
 * one it is the other way round: the constant-power share draws more as the voltage falls, so the output slides away
 * from it. When no such voltage exists the output collapses.
 *
 * @param given.load      shares at nominal voltage [W, var]
 * @param given.nominalV  nominal voltage [V], > 0
 * @param given.limitA    current limit, r.m.s. [A], > 0
 * @returns held, voltageRatio (0–1), voltageV [V], currentA [A], demandA [A], collapsed; a collapsed output has no
 *          voltage and gives its limit
 * @throws  {RangeError} voltage or limit not above 0
 * Formula: |v·Sz + Si + Sp/v| = V·I_limit; impedance alone: V = I_limit / |Y|
 * Valid for: quasi-steady sinusoidal quantities, power shares that keep their power down to the voltage found
 * Source:  common-practice (ZIP load model); derived (stability)
 * Example: voltageUnderLimit({ load: { impedance: { realW: 4600, reactiveVar: 0 }, current: { realW: 0, reactiveVar: 0 }, power: { realW: 0, reactiveVar: 0 } }, nominalV: 230, limitA: 16 }).voltageV → 184
 */
export const voltageUnderLimit = (given: {
  load: ZipLoad;
  nominalV: number;
  limitA: number;
}): LimitedVoltage => {
  const { load, nominalV, limitA } = given;
  if (!(nominalV > 0)) throw new RangeError(`nominalV: expected more than 0 V, found ${nominalV}`);
  if (!(limitA > 0)) throw new RangeError(`limitA: expected more than 0 A, found ${limitA}`);
  const demandA = zipCurrentA(load, nominalV, 1);
  if (demandA <= limitA * (1 + 1e-12)) {
    return { held: true, voltageRatio: 1, voltageV: nominalV, currentA: demandA, demandA, collapsed: false };
  }
  const voltageRatio = limitedRatio(load, nominalV * limitA) ?? 0;
  return {
    held: false,
    voltageRatio,
    voltageV: voltageRatio * nominalV,
    currentA: limitA,
    demandA,
    collapsed: voltageRatio === 0,
  };
};
