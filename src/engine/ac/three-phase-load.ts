import { checkedNumber } from './checked-number.ts';
import { type Complex, complexMagnitude } from './complex.ts';

/**
 * Currents and powers of three equal impedances in star or delta.
 *
 * @param load.connection    'star' or 'delta'
 * @param load.impedance     impedance of one branch [Ω], not nought
 * @param load.lineVoltageV  r.m.s. voltage line to line [V], above 0
 * @returns phaseVoltageV [V] and phaseCurrentA [A] of one branch, lineCurrentA [A], realPowerW [W], reactivePowerVar [var, positive
 *          lagging], apparentPowerVa [VA] of all three, and powerFactor [1]
 * @throws   {RangeError} a value outside its limits
 * Formula:  star: V_ph = V/√3, I = I_ph;  delta: V_ph = V, I = √3·I_ph;  S = 3·V_ph·I_ph
 * Valid for: balanced supply and load, sinusoidal steady state. The same branches in delta draw three times the power.
 * Source:   bird, ch. 19, ex. 19.7, 19.10 and 19.13
 * Example:  threePhaseLoad({ connection: 'delta', impedance: { re: 30, im: 40 }, lineVoltageV: 400 }).lineCurrentA → 13.86
 */
export function threePhaseLoad(load: {
  connection: 'star' | 'delta';
  impedance: Complex;
  lineVoltageV: number;
}): {
  phaseVoltageV: number;
  phaseCurrentA: number;
  lineCurrentA: number;
  realPowerW: number;
  reactivePowerVar: number;
  apparentPowerVa: number;
  powerFactor: number;
} {
  const lineVoltageV = checkedNumber('lineVoltageV', load.lineVoltageV, { above: 0 });
  const impedanceOhm = checkedNumber('|impedance|', complexMagnitude(load.impedance), { above: 0 });
  const isStar = load.connection === 'star';
  const phaseVoltageV = isStar ? lineVoltageV / Math.sqrt(3) : lineVoltageV;
  const phaseCurrentA = phaseVoltageV / impedanceOhm;
  return {
    phaseVoltageV,
    phaseCurrentA,
    lineCurrentA: isStar ? phaseCurrentA : phaseCurrentA * Math.sqrt(3),
    realPowerW: 3 * phaseCurrentA ** 2 * load.impedance.re,
    reactivePowerVar: 3 * phaseCurrentA ** 2 * load.impedance.im,
    apparentPowerVa: 3 * phaseVoltageV * phaseCurrentA,
    powerFactor: load.impedance.re / impedanceOhm,
  };
}
