/** How the loads divide, in whole per cent; together 100. */
export interface Shares {
  readonly impedance: number;
  readonly current: number;
  readonly power: number;
}

export type ShareName = keyof Shares;

/** Sets one share and lets the other two give way in proportion, so that all three still make 100. */
export function rebalance(shares: Shares, name: ShareName, value: number): Shares {
  const rest = 100 - value;
  const [first, second] = (['impedance', 'current', 'power'] as const).filter((other) => other !== name) as [
    ShareName,
    ShareName,
  ];
  const before = shares[first] + shares[second];
  // With nothing to divide in proportion to, both give way alike.
  const firstShare = Math.round(before === 0 ? rest / 2 : (rest * shares[first]) / before);
  return { ...shares, [name]: value, [first]: firstShare, [second]: rest - firstShare };
}
