/** Steps people count in: 1, 2 or 5 times a power of ten. */
const decimalSteps = [1, 2, 5] as const;

/** Steps of time people count in [s]: as on a clock. */
const clockStepsS = [
  0.1, 0.2, 0.5, 1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 10_800, 21_600, 43_200,
  86_400,
] as const;

/** Times that divide a logarithmic axis evenly enough and are still round on a clock [s]. */
const logTimesS = [0.001, 0.01, 0.1, 1, 10, 60, 600, 3600, 36_000, 360_000] as const;

interface Range {
  readonly from: number;
  readonly to: number;
}

function multiplesOf(step: number, { from, to }: Range): number[] {
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  // Fifteen digits: 3 × 0.1 is written 0.3.
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) =>
    Number(((first + i) * step).toPrecision(15)),
  );
}

/** How many multiples of a step lie inside a range. */
function countOf(step: number, { from, to }: Range): number {
  return Math.floor(to / step + 1e-9) - Math.ceil(from / step - 1e-9) + 1;
}

/** Round values inside a range for a linear axis: as many as there may be, at most `most` (2 or more). */
export function linearTicks(given: Range & { readonly most: number }): number[] {
  const span = given.to - given.from;
  if (!(span > 0 && Number.isFinite(span))) return [given.from];
  for (let power = 10 ** Math.floor(Math.log10(span / given.most)); ; power *= 10) {
    const factor = decimalSteps.find((candidate) => countOf(candidate * power, given) <= given.most);
    if (factor !== undefined) return multiplesOf(factor * power, given);
  }
}

/** Round clock times inside a range [s] for a linear axis, at most `most`. */
export function timeTicks(given: Range & { readonly most: number }): number[] {
  const step = clockStepsS.find((candidate) => countOf(candidate, given) <= given.most);
  return step === undefined ? linearTicks(given) : multiplesOf(step, given);
}

/** Round times inside a range [s] for a logarithmic axis. */
export function logTimeTicks({ from, to }: Range): number[] {
  return logTimesS.filter((timeS) => timeS >= from * (1 - 1e-9) && timeS <= to * (1 + 1e-9));
}

/** The next round value at or above a positive one: the end of an axis that begins at nought. */
export function roundUp(value: number): number {
  const power = 10 ** Math.floor(Math.log10(value));
  const factor = [1, 1.5, 2, 3, 4, 5, 6, 8, 10].find((candidate) => candidate * power >= value * (1 - 1e-9));
  return Number(((factor ?? 10) * power).toPrecision(15));
}
