import { checkedNumber } from '../../ac/checked-number.ts';
import { apparentPowerLimits } from '../tables/apparent-power-limits.ts';
import { rangeOfVa, type StartingRange } from './starting-range.ts';

/**
 * The most that a three-phase cage motor of normal or high-torque design (N, H) may take at standstill. The limits are from memory.
 *
 * @param given.ratedPowerW   power at the shaft [W], above 0, up to 1.6 MW
 * @param given.lineVoltageV  voltage line to line [V], above 0
 * @returns the range, see StartingRange: an upper end only
 * @throws   {RangeError} a value outside its limits
 * Formula:  S = (S/P)·P;  I = S/(√3·V)
 * Valid for: rated voltage and frequency, started direct; motors of the designs for high efficiency (NE, HE) may take more.
 * Source:   iec-60034-12 (from memory)
 * Example:  startFromPowerLimit({ ratedPowerW: 4000, lineVoltageV: 400 }).toA → 75.1
 */
export function startFromPowerLimit(given: { ratedPowerW: number; lineVoltageV: number }): StartingRange {
  const last = apparentPowerLimits.at(-1)?.upToW ?? 0;
  const ratedPowerW = checkedNumber('ratedPowerW', given.ratedPowerW, { above: 0, max: last });
  const lineVoltageV = checkedNumber('lineVoltageV', given.lineVoltageV, { above: 0 });
  const limitVaPerW = apparentPowerLimits.find(({ upToW }) => ratedPowerW <= upToW)?.limitVaPerW ?? 0;
  return rangeOfVa({ voltageV: lineVoltageV, phases: 3 }, null, limitVaPerW * ratedPowerW, 'iec-60034-12');
}

/**
 * Starting by rated current of a motor whose apparent power at standstill is known by its rated power.
 *
 * @param given.vaPerW           locked-rotor apparent power by shaft power [1], above 0
 * @param given.efficiencyRatio  rated efficiency [1], above 0 up to 1
 * @param given.powerFactor      rated power factor [1], above 0 up to 1
 * @returns starting by rated current [1]
 * @throws   {RangeError} a value outside its limits
 * Formula:  I_s/I_r = (S/P)·η·cos φ
 * Valid for: any motor at rated voltage.
 * Source:   derived (P = η·cos φ·S_r)
 * Example:  currentRatioOfPowerLimit({ vaPerW: 13, efficiencyRatio: 0.886, powerFactor: 0.81 }) → 9.33
 */
export function currentRatioOfPowerLimit(given: {
  vaPerW: number;
  efficiencyRatio: number;
  powerFactor: number;
}): number {
  return (
    checkedNumber('vaPerW', given.vaPerW, { above: 0 }) *
    checkedNumber('efficiencyRatio', given.efficiencyRatio, { above: 0, max: 1 }) *
    checkedNumber('powerFactor', given.powerFactor, { above: 0, max: 1 })
  );
}
