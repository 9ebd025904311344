/** The first `count` seeds: enough that a rare draw is met, the same in every run. */
export const seeds = (count: number): number[] => Array.from({ length: count }, (_, place) => place + 1);
