import type { InverterModel } from '../../../engine/index.ts';

/** Computes once for each inverter: the rows of a table are asked for again with every draw of numbers. */
export function perModel<T>(compute: (model: InverterModel) => T): (model: InverterModel) => T {
  const known = new WeakMap<InverterModel, T>();
  return (model) => {
    const found = known.get(model) ?? compute(model);
    known.set(model, found);
    return found;
  };
}
