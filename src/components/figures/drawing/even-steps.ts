/** `count` numbers evenly spaced from `from` to `to`, both included. */
export function evenSteps(from: number, to: number, count: number): number[] {
  return Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));
}
