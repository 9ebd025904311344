import { checkedNumber } from './checked-number.ts';
import { powerTriangle } from './power-triangle.ts';
import { type CapacitorConnection, reactivePowerCapacitor } from './reactive-power-capacitor.ts';

/**
 * Capacitors that raise a lagging power factor to a wanted one.
 *
 * @param load.realPowerW         real power drawn [W], ≥ 0
 * @param load.powerFactor        lagging power factor before [1], above 0 up to 1
 * @param load.targetPowerFactor  lagging power factor after [1], from powerFactor up to 1
 * @param load.voltageV           voltage [V], above 0; line to line for star and delta
 * @param load.frequencyHz        frequency [Hz], above 0
 * @param load.connection         'single-phase', 'star' or 'delta'
 * @returns reactivePowerVar of all capacitors [var], capacitanceF of each [F], and their lineCurrentA [A]
 * @throws   {RangeError} a value outside its limits
 * Formula:  Q = P·(tan φ₁ − tan φ₂)
 * Valid for: sinusoidal voltage and current; capacitors do not mend a power factor that is low by distortion.
 * Source:   bird, ex. 16.12 and 26.6
 * Example:  correctionCapacitor({ realPowerW: 6000, powerFactor: 0.625, targetPowerFactor: 0.95, voltageV: 240, frequencyHz: 50, connection: 'single-phase' }).reactivePowerVar → 5521.9
 */
export function correctionCapacitor(load: {
  realPowerW: number;
  powerFactor: number;
  targetPowerFactor: number;
  voltageV: number;
  frequencyHz: number;
  connection: CapacitorConnection;
}): { reactivePowerVar: number; capacitanceF: number; lineCurrentA: number } {
  const { realPowerW, powerFactor, targetPowerFactor, ...supply } = load;
  checkedNumber('targetPowerFactor', targetPowerFactor, { min: powerFactor, max: 1 });
  const before = powerTriangle({ realPowerW, powerFactor }).reactivePowerVar;
  const after = powerTriangle({ realPowerW, powerFactor: targetPowerFactor }).reactivePowerVar;
  const reactivePowerVar = before - after;
  return { reactivePowerVar, ...reactivePowerCapacitor({ reactivePowerVar, ...supply }) };
}
