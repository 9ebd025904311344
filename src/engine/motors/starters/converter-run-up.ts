import { checkedNumber } from '../../ac/checked-number.ts';
import { heatAfter } from '../../inverter/heat-after.ts';
import type { HeatState } from '../../inverter/model.ts';
import { voltageUnderLimit } from '../../inverter/voltage/voltage-under-limit.ts';
import { fieldRadPerS, type RunUpMachine } from '../run-up/run-up-machine.ts';
import type { RunUpOutcome, RunUpSource } from '../run-up/run-up-types.ts';
import type { ShaftLoad } from '../shaft-loads/shaft-load.ts';
import { type ConverterDrive, type ConverterPoint, converterPoint } from './converter-motor.ts';
import { type RectifierInput, rectifierInput } from './rectifier-input.ts';

export interface ConverterSetup {
  readonly machine: RunUpMachine;
  readonly motorInertiaKgM2: number;
  readonly load: ShaftLoad;
  /** one phase of what feeds the converter */
  readonly source: RunUpSource;
  readonly input: RectifierInput;
  /** across one phase of the motor, counted as star, at the nominal frequency [V] */
  readonly motorPhaseV: number;
  readonly nominalHz: number;
  /** from standstill to the nominal frequency's speed [s] */
  readonly rampS: number;
  /** the most the converter gives to the motor, r.m.s. [A] */
  readonly motorLimitA: number;
  /** voltage at standstill by nominal voltage (0–1), default 0.05 */
  readonly boostRatio?: number;
}

export interface ConverterRunUp {
  readonly outcome: RunUpOutcome;
  /** why: the motor or the converter was too weak, or the source */
  readonly reason: 'at-speed' | 'motor-too-weak' | 'converter-limit' | 'voltage-not-held' | 'too-hot';
  readonly endS: number;
  readonly endSpeedRadPerS: number;
  readonly runUpTimeS: number | null;
  readonly peakMotorA: number;
  /** of the converter's input and of the source with everything else, r.m.s. [A] */
  readonly peakInputA: number;
  readonly peakOutputA: number;
  /** highest instantaneous input current with the others' peak [A], and what the source can give: √2 × its limit */
  readonly peakInstantA: number;
  readonly instantLimitA: number;
  readonly minimumVoltageRatio: number;
  readonly outputSquareA2S: number;
  readonly heatEnd: HeatState | null;
  readonly peakHeatRatio: number | null;
}

const parts = 400;

/** One phase of the source with the converter beside the others. */
const sourceAt = (setup: ConverterSetup, point: ConverterPoint) => {
  const { source, input } = setup;
  const drawn = rectifierInput({ input, outputPowerW: point.powerW, voltageV: source.nominalV });
  const realW = drawn.inputPowerW / input.phases;
  // Distortion is counted as if it were reactive: right for the r.m.s. value of the converter alone.
  const reactiveVar = realW * Math.sqrt(1 / input.powerFactor ** 2 - 1);
  const { power } = source.others;
  const load = {
    ...source.others,
    power: { realW: power.realW + realW, reactiveVar: power.reactiveVar + reactiveVar },
  };
  const output = voltageUnderLimit({ load, nominalV: source.nominalV, limitA: source.limitA });
  const alone = voltageUnderLimit({ load: source.others, nominalV: source.nominalV, limitA: source.limitA });
  return { drawn, output, peakA: drawn.peakA + Math.SQRT2 * alone.currentA };
};

/**
 * A motor runs up on a frequency converter: speed rises evenly, the slip stays small, the motor's current stays near
 * its rating, and the supply sees only the power, as a constant-power share with a rectifier's power factor.
 *
 * @param setup.machine           three-phase motor, see `threePhaseRunUpMachine`
 * @param setup.motorInertiaKgM2  rotor of the motor [kg·m²], > 0
 * @param setup.load              torque [N·m] against speed [rad/s], inertia [kg·m²]
 * @param setup.source            what feeds the converter, see `inverterSource`
 * @param setup.input             see `RectifierInput`
 * @param setup.motorPhaseV       rating of the motor's phase, counted as star [V], > 0
 * @param setup.nominalHz         frequency of that rating [Hz], > 0
 * @param setup.rampS             time to the synchronous speed of that frequency [s], > 0
 * @param setup.motorLimitA       r.m.s. limit of the converter's output [A], > 0
 * @param setup.boostRatio        voltage at standstill by nominal voltage (0–1), default 0.05
 * @returns outcome with its reason, currents of motor, input and source, heat of the inverter
 * @throws  {RangeError} a value outside its limits
 * Valid for: a converter that keeps its output while its supply sags; a peak above `instantLimitA` flattens the wave, which
 *            is reported and not calculated
 * Formula: T = T_load + J·dω/dt, V ∝ f, I_in = P/(η·PF·V)
 * Source:  dubey (constant volts per hertz); common-practice (rectifier)
 * Example: converterRunUp({ machine: threePhaseRunUpMachine(exampleCircuit), motorInertiaKgM2: 0.02, load: { torqueNm: () => 10, inertiaKgM2: 0.1 }, source: inverterSource({ model: exampleModel, ambientC: 25 }), input: threePhaseRectifier, motorPhaseV: 230, nominalHz: 50, rampS: 4, motorLimitA: 20 }).outcome → started
 */
export const converterRunUp = (setup: ConverterSetup): ConverterRunUp => {
  const { machine, load, source } = setup;
  const inertiaKgM2 =
    checkedNumber('motorInertiaKgM2', setup.motorInertiaKgM2, { above: 0 }) +
    checkedNumber('load.inertiaKgM2', load.inertiaKgM2, { min: 0 });
  const rampS = checkedNumber('rampS', setup.rampS, { above: 0 });
  const motorLimitA = checkedNumber('motorLimitA', setup.motorLimitA, { above: 0 });
  const drive: ConverterDrive = {
    machine,
    motorPhaseV: checkedNumber('motorPhaseV', setup.motorPhaseV, { above: 0 }),
    nominalHz: checkedNumber('nominalHz', setup.nominalHz, { above: 0 }),
    boostRatio: checkedNumber('boostRatio', setup.boostRatio ?? 0.05, { min: 0, below: 1 }),
  };
  const { protection } = source;
  const counterS = protection
    ? protection.model.datasheet.voltageLostCycles / source.frequencyHz
    : Number.POSITIVE_INFINITY;
  const heldRatio = protection?.model.datasheet.voltageHeldRatio ?? 0;
  const stepS = rampS / parts;
  const rateRadPerS2 = fieldRadPerS(machine.polePairs, drive.nominalHz) / rampS;
  let heat = protection?.heat ?? null;
  let peakHeat = heat ? heat.fast + heat.slow : 0;
  let lostS = 0;
  let square = 0;
  const peaks = { motorA: 0, inputA: 0, outputA: 0, instantA: 0, voltageRatio: 1 };
  const result = (outcome: RunUpOutcome, reason: ConverterRunUp['reason'], endS: number): ConverterRunUp => ({
    outcome,
    reason,
    endS,
    endSpeedRadPerS: rateRadPerS2 * endS,
    runUpTimeS: outcome === 'started' ? endS : null,
    peakMotorA: peaks.motorA,
    peakInputA: peaks.inputA,
    peakOutputA: peaks.outputA,
    peakInstantA: peaks.instantA,
    instantLimitA: Math.SQRT2 * source.limitA,
    minimumVoltageRatio: peaks.voltageRatio,
    outputSquareA2S: square,
    heatEnd: heat,
    peakHeatRatio: heat ? peakHeat : null,
  });
  for (let n = 0; n < parts; n++) {
    const timeS = (n + 0.5) * stepS;
    const speedRadPerS = rateRadPerS2 * timeS;
    const brakeNm = load.torqueNm(speedRadPerS) + machine.frictionNmS * speedRadPerS;
    const point = converterPoint(drive, speedRadPerS, brakeNm + inertiaKgM2 * rateRadPerS2);
    if (!point) return result('stalled', 'motor-too-weak', n * stepS);
    peaks.motorA = Math.max(peaks.motorA, point.currentA);
    if (point.currentA > motorLimitA) return result('stalled', 'converter-limit', n * stepS);
    const { drawn, output, peakA } = sourceAt(setup, point);
    peaks.inputA = Math.max(peaks.inputA, drawn.currentA);
    peaks.outputA = Math.max(peaks.outputA, output.currentA);
    peaks.instantA = Math.max(peaks.instantA, peakA);
    peaks.voltageRatio = Math.min(peaks.voltageRatio, output.voltageRatio);
    square += output.currentA ** 2 * stepS;
    lostS = output.voltageRatio < heldRatio ? lostS + stepS : 0;
    if (protection && heat) {
      heat = heatAfter({ model: protection.model, heat, currentA: output.currentA, durationS: stepS });
      peakHeat = Math.max(peakHeat, heat.fast + heat.slow);
      if (heat.fast + heat.slow > protection.allowedHeatRatio) {
        return result('tripped-by-heat', 'too-hot', timeS);
      }
    }
    if (lostS >= counterS) return result('tripped-by-cycle-counter', 'voltage-not-held', timeS);
  }
  return result('started', 'at-speed', rampS);
};
