import type { ZipLoad } from '../../src/engine/inverter/index.ts';

/** Current the loads draw at a share of nominal voltage. */
export const currentAt = (load: ZipLoad, nominalV: number, v: number): number =>
  Math.hypot(
    load.impedance.realW * v + load.current.realW + load.power.realW / v,
    load.impedance.reactiveVar * v + load.current.reactiveVar + load.power.reactiveVar / v,
  ) / nominalV;

/** Walks the voltage down from nominal until the limit is enough, then halves the last step. */
export const voltageByWalking = (load: ZipLoad, nominalV: number, limitA: number): number => {
  if (currentAt(load, nominalV, 1) <= limitA) return 1;
  const step = 1 / 4000;
  for (let v = 1 - step; v > step; v -= step) {
    if (currentAt(load, nominalV, v) > limitA) continue;
    let low = v;
    let high = v + step;
    while (high - low > 1e-12) {
      const middle = (low + high) / 2;
      if (currentAt(load, nominalV, middle) > limitA) high = middle;
      else low = middle;
    }
    return low;
  }
  return 0;
};
