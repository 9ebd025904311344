import { checkedNumber } from '../../ac/checked-number.ts';

/** What a motor may take at standstill, as wide as the source leaves it; null where the source sets no limit on that side. */
export type StartingRange = {
  fromA: number | null;
  toA: number | null;
  fromVa: number | null;
  toVa: number | null;
  /** Id of the source. */
  basis: string;
};

/** The supply of a motor: voltage between its two conductors, or line to line. */
export type MotorSupply = { voltageV: number; phases: 1 | 3 };

/** Volt-amperes per ampere. */
export function voltsOfSupply({ voltageV, phases }: MotorSupply): number {
  if (phases !== 1 && phases !== 3) throw new RangeError(`phases: expected 1 or 3, found ${String(phases)}`);
  return checkedNumber('voltageV', voltageV, { above: 0 }) * (phases === 3 ? Math.sqrt(3) : 1);
}

/** A range from volt-amperes. */
export function rangeOfVa(
  supply: MotorSupply,
  fromVa: number | null,
  toVa: number | null,
  basis: string,
): StartingRange {
  const volts = voltsOfSupply(supply);
  return {
    fromA: fromVa === null ? null : fromVa / volts,
    toA: toVa === null ? null : toVa / volts,
    fromVa,
    toVa,
    basis,
  };
}

/** A range from amperes. */
export function rangeOfA(
  supply: MotorSupply,
  fromA: number | null,
  toA: number | null,
  basis: string,
): StartingRange {
  const volts = voltsOfSupply(supply);
  return {
    fromA,
    toA,
    fromVa: fromA === null ? null : fromA * volts,
    toVa: toA === null ? null : toA * volts,
    basis,
  };
}
