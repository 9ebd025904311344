import { checkedNumber } from './checked-number.ts';

/** How capacitors are joined: one alone, or three to a star or a delta. */
export type CapacitorConnection = 'single-phase' | 'star' | 'delta';

/**
 * Capacitance that supplies a given reactive power.
 *
 * @param given.reactivePowerVar  reactive power to supply, all capacitors together [var], ≥ 0
 * @param given.voltageV          voltage [V], above 0; line to line for star and delta
 * @param given.frequencyHz       frequency [Hz], above 0
 * @param given.connection        'single-phase', 'star' or 'delta'
 * @returns capacitanceF of each capacitor [F] and lineCurrentA, r.m.s. [A]
 * @throws   {RangeError} a value outside its limits
 * Formula:  single and star: C = Q/(2πf·V²);  delta: C = Q/(3·2πf·V²)
 * Valid for: sinusoidal voltage; harmonics raise the current.
 * Source:   bird, ex. 16.12; masters, ex. 2.7; derived (star and delta)
 * Example:  reactivePowerCapacitor({ reactivePowerVar: 4400, voltageV: 230, frequencyHz: 60, connection: 'single-phase' }).capacitanceF → 0.000221
 */
export function reactivePowerCapacitor(given: {
  reactivePowerVar: number;
  voltageV: number;
  frequencyHz: number;
  connection: CapacitorConnection;
}): { capacitanceF: number; lineCurrentA: number } {
  const reactive = checkedNumber('reactivePowerVar', given.reactivePowerVar, { min: 0 });
  const voltageV = checkedNumber('voltageV', given.voltageV, { above: 0 });
  const omega = 2 * Math.PI * checkedNumber('frequencyHz', given.frequencyHz, { above: 0 });
  // In star each of three has V/√3 and a third of the power: the two thirds cancel, and the formula is that of one alone.
  const share = given.connection === 'delta' ? 3 : 1;
  const phaseFactor = given.connection === 'single-phase' ? 1 : Math.sqrt(3);
  return {
    capacitanceF: reactive / (share * omega * voltageV ** 2),
    lineCurrentA: reactive / (phaseFactor * voltageV),
  };
}
