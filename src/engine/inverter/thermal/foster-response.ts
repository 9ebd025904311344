/** One resistor–capacitor pair of a Foster network. */
export interface FosterNode {
  /** what the node contributes when settled, per unit of cause (K/W, or a share) */
  readonly weight: number;
  readonly timeConstantS: number;
}

/**
 * Step response of any number of heat nodes side by side: the rise per unit of cause after a time.
 *
 * @param network.nodes      weight [K/W or share] and time constant [s] of each node
 * @param network.durationS  time since the step [s], ≥ 0; Infinity for the settled value
 * @returns rise per unit of cause, in the unit of the weights
 * @throws  nothing
 * Formula: Z(t) = Σ R·(1 − e^(−t/τ))
 * Source:  foster-notebook
 * Example: fosterResponse({ nodes: [{ weight: 0.3, timeConstantS: 60 }, { weight: 0.7, timeConstantS: 1800 }], durationS: 60 }) → 0.2126
 */
export const fosterResponse = (network: { nodes: readonly FosterNode[]; durationS: number }): number => {
  let rise = 0;
  for (const node of network.nodes) rise -= node.weight * Math.expm1(-network.durationS / node.timeConstantS);
  return rise;
};
