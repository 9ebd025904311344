import { largestRoot } from '../../inverter/voltage/largest-root.ts';
import type { ZipLoad } from '../../inverter/voltage/zip-load.ts';

/**
 * The voltage of a current-limited output whose impedance share changes all the time: `voltageUnderLimit` for the
 * inner loop of a run-up. Everything is counted per unit of nominal voltage × limit.
 */
export interface LimitedOutput {
  /** current asked for at nominal voltage, as a share of the limit */
  readonly demandRatio: (re: number, im: number, harmonic: number) => number;
  /**
   * Voltage ratio at which the loads draw just the limit. Above demand 1 it is the highest such voltage, 0 when there
   * is none; just below demand 1 the same branch goes on above 1, so that the moment it passes 1 can be found.
   */
  readonly ratioAtLimit: (re: number, im: number, harmonic: number) => number;
}

/** `re`, `im`, `harmonic`: the varying impedance share at nominal voltage over nominal voltage × limit. */
export const limitedOutput = (others: ZipLoad, limitVa: number): LimitedOutput => {
  const zRe = others.impedance.realW / limitVa;
  const zIm = others.impedance.reactiveVar / limitVa;
  const iRe = others.current.realW / limitVa;
  const iIm = others.current.reactiveVar / limitVa;
  const pRe = others.power.realW / limitVa;
  const pIm = others.power.reactiveVar / limitVa;
  const ii = iRe * iRe + iIm * iIm;
  const pp = pRe * pRe + pIm * pIm;
  const ip2 = 2 * (iRe * pRe + iIm * pIm);

  const withPower = (zz: number, zi2: number, rest: number): number => {
    if (zz + zi2 + rest + ip2 + pp > 1e-3) return largestRoot([zz, zi2, rest, ip2, pp]) ?? 0;
    // Next to demand 1 the root lies next to 1, perhaps above it: Newton's steps from there.
    let v = 1;
    for (let round = 0; round < 20; round++) {
      const value = (((zz * v + zi2) * v + rest) * v + ip2) * v + pp;
      const slope = ((4 * zz * v + 3 * zi2) * v + 2 * rest) * v + ip2;
      const next = v - value / slope;
      if (!(slope > 0 && Math.abs(next - 1) < 0.5)) return largestRoot([zz, zi2, rest, ip2, pp]) ?? 0;
      if (Math.abs(next - v) < 1e-15) return next;
      v = next;
    }
    return v;
  };

  return {
    demandRatio: (re, im, harmonic) => {
      const real = re + zRe + iRe + pRe;
      const reactive = im + zIm + iIm + pIm;
      return Math.sqrt(real * real + reactive * reactive + harmonic * harmonic);
    },
    ratioAtLimit: (re, im, harmonic) => {
      const allRe = re + zRe;
      const allIm = im + zIm;
      const zz = allRe * allRe + allIm * allIm + harmonic * harmonic;
      const zi = allRe * iRe + allIm * iIm;
      if (pp > 0) {
        return withPower(zz, 2 * zi, ii + 2 * (allRe * pRe + allIm * pIm) - 1);
      }
      const inside = zi * zi + zz * (1 - ii);
      if (!(inside >= 0)) return 0;
      return zz > 0 ? Math.max(0, (Math.sqrt(inside) - zi) / zz) : Number.POSITIVE_INFINITY;
    },
  };
};
