/**
 * Limits of locked-rotor apparent power by rated power for three-phase cage motors of designs N and H (IEC 60034-12), from memory.
 * A band takes in its upper end.
 */
export const apparentPowerLimits: readonly { aboveW: number; upToW: number; limitVaPerW: number }[] = [
  { aboveW: 0, upToW: 6_300, limitVaPerW: 13 },
  { aboveW: 6_300, upToW: 25_000, limitVaPerW: 12 },
  { aboveW: 25_000, upToW: 63_000, limitVaPerW: 11 },
  { aboveW: 63_000, upToW: 630_000, limitVaPerW: 10 },
  { aboveW: 630_000, upToW: 1_600_000, limitVaPerW: 9 },
];
