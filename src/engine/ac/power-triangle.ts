import { checkedNumber } from './checked-number.ts';

/** Exactly two of the four sides; `direction` says which way the current is shifted where no reactive power tells it. */
export type PowerTriangleInput = {
  /** Real power [W], ≥ 0. */
  realPowerW?: number;
  /** Reactive power [var], above 0 for a lagging (inductive) current. */
  reactivePowerVar?: number;
  /** Apparent power [VA], ≥ 0. */
  apparentPowerVa?: number;
  /** Power factor, 0–1. */
  powerFactor?: number;
  /** Default 'lagging'. Not allowed together with reactivePowerVar, whose sign tells it. */
  direction?: 'lagging' | 'leading';
};

/** All four sides. With no power at all the power factor is given as 1. */
export type PowerTriangle = {
  realPowerW: number;
  reactivePowerVar: number;
  apparentPowerVa: number;
  powerFactor: number;
  direction: 'lagging' | 'leading' | 'in-phase';
};

function fromSides(realPowerW: number, reactivePowerVar: number): PowerTriangle {
  const apparentPowerVa = Math.hypot(realPowerW, reactivePowerVar);
  return {
    realPowerW,
    reactivePowerVar,
    apparentPowerVa,
    powerFactor: apparentPowerVa === 0 ? 1 : realPowerW / apparentPowerVa,
    direction: reactivePowerVar === 0 ? 'in-phase' : reactivePowerVar > 0 ? 'lagging' : 'leading',
  };
}

/** Third side of a right-angled triangle, in a form that keeps its digits when the two are nearly equal. */
function otherSide(longest: number, side: number): number {
  return Math.sqrt((longest - side) * (longest + side));
}

/**
 * Completes the power triangle of a sinusoidal load from any two of real, reactive and apparent power and power factor.
 *
 * @param given.realPowerW        real power [W], ≥ 0
 * @param given.reactivePowerVar  reactive power [var], any sign, positive for lagging current
 * @param given.apparentPowerVa   apparent power [VA], ≥ 0, at least as large as either side
 * @param given.powerFactor       power factor [1], 0–1
 * @param given.direction         'lagging' (default) or 'leading', where reactive power is not given
 * @returns all four, with the direction of the current against the voltage
 * @throws   {RangeError} not exactly two given, a value outside its limits, or two that fit no triangle
 * Formula:  S² = P² + Q²;  PF = P/S
 * Valid for: sinusoidal voltage and current; with distortion S also holds a part that is neither P nor Q.
 * Source:   bird, ch. 15
 * Example:  powerTriangle({ realPowerW: 3, reactivePowerVar: 4 }).apparentPowerVa → 5
 */
export function powerTriangle(given: PowerTriangleInput): PowerTriangle {
  const { realPowerW: p, reactivePowerVar: q, apparentPowerVa: s, powerFactor: pf } = given;
  const count = [p, q, s, pf].filter((value) => value !== undefined).length;
  if (count !== 2)
    throw new RangeError(`powerTriangle: expected exactly two of the four sides, found ${count}`);
  if (p !== undefined) checkedNumber('realPowerW', p, { min: 0 });
  if (q !== undefined) checkedNumber('reactivePowerVar', q);
  if (s !== undefined) checkedNumber('apparentPowerVa', s, { min: Math.max(p ?? 0, Math.abs(q ?? 0)) });
  if (pf !== undefined) checkedNumber('powerFactor', pf, { min: 0, max: 1 });
  if (q !== undefined && given.direction !== undefined) {
    throw new RangeError('direction: expected none beside reactivePowerVar, whose sign tells it');
  }
  const sign = given.direction === 'leading' ? -1 : 1;
  // `|| 0` takes the sign off a nought, so that "leading" with nothing to lead gives 0, not −0.
  if (q !== undefined) {
    if (p !== undefined) return fromSides(p, q);
    if (s !== undefined) return { ...fromSides(otherSide(s, q), q), apparentPowerVa: s };
    checkedNumber('|reactivePowerVar|', Math.abs(q), { above: 0 });
    const ratio = checkedNumber('powerFactor', pf ?? 1, { below: 1 });
    return { ...fromSides((Math.abs(q) * ratio) / otherSide(1, ratio), q), powerFactor: ratio };
  }
  if (s !== undefined) {
    const real = p ?? s * (pf ?? 1);
    const reactive = sign * (p === undefined ? s * otherSide(1, pf ?? 1) : otherSide(s, p)) || 0;
    return { ...fromSides(real, reactive), apparentPowerVa: s };
  }
  const real = p ?? 0;
  const ratio = checkedNumber('powerFactor', pf ?? 1, { above: 0 });
  return fromSides(real, sign * (real / ratio) * otherSide(1, ratio) || 0);
}
