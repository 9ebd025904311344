/** Median time of one call [ns] over several batches, after a warm-up. Results are kept so that no call can be dropped. */
export function medianNs(call: () => unknown, callsPerBatch: number, batches = 15): number {
  const kept: unknown[] = [];
  const batch = (): number => {
    const start = process.hrtime.bigint();
    for (let n = 0; n < callsPerBatch; n += 1) kept[0] = call();
    return Number(process.hrtime.bigint() - start) / callsPerBatch;
  };
  for (let n = 0; n < 3; n += 1) batch();
  const times = Array.from({ length: batches }, batch).sort((a, b) => a - b);
  return times[Math.floor(batches / 2)] ?? Number.NaN;
}

const inWords = (ns: number): string =>
  ns < 1e3 ? `${ns.toFixed(1)} ns` : ns < 1e6 ? `${(ns / 1e3).toFixed(2)} µs` : `${(ns / 1e6).toFixed(2)} ms`;

export interface Figure {
  name: string;
  ns: number;
  /** Measured in the same run. */
  reference?: { name: string; ns: number };
  /** For what the figure is divided by, such as "per event". */
  per?: { name: string; count: number };
}

export function printFigure({ name, ns, reference, per }: Figure): void {
  const each = per ? `, ${inWords(ns / per.count)} ${per.name}` : '';
  const ratio = reference
    ? `; ${reference.name} ${inWords(reference.ns)}: ${(reference.ns / ns).toFixed(1)}×`
    : '';
  console.log(`${name}: ${inWords(ns)}${each}${ratio}`);
}
