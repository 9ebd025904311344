import { checkedNumber } from '../../ac/checked-number.ts';
import type { ShaftLoad } from '../shaft-loads/shaft-load.ts';
import type { EquivalentCircuit } from '../three-phase/equivalent-circuit.ts';
import { dormandPrince, stepFactor } from './dormand-prince.ts';
import { DQ_SIZE, dqMachine, ROTOR_D, ROTOR_Q, SHAFT, STATOR_D, STATOR_Q } from './dq-machine.ts';

export interface DqStartSetup {
  readonly circuit: EquivalentCircuit;
  readonly motorInertiaKgM2: number;
  readonly load: ShaftLoad;
  readonly lineVoltageV: number;
  readonly frequencyHz: number;
  readonly untilS: number;
  /** spacing of the samples [s] */
  readonly sampleEveryS: number;
  /** where the wave of phase a stands at the moment of switching on, from its peak [°]; default 0 */
  readonly switchOnDeg?: number;
  /** default 1e-6 */
  readonly toleranceRatio?: number;
}

/** Evenly spaced samples and the highest values between them. */
export interface DqStart {
  readonly everyS: number;
  readonly speedRadPerS: Float64Array;
  readonly torqueNm: Float64Array;
  /** instantaneous current in the conductor of phase a [A] */
  readonly currentA: Float64Array;
  readonly peakTorqueNm: number;
  readonly peakTorqueS: number;
  /** highest magnitude of the instantaneous current of phase a [A] */
  readonly peakCurrentA: number;
  readonly peakCurrentS: number;
  readonly steps: number;
}

/** Looks for the highest value of a function of time by looking often and laying a parabola over the best three. */
const peakSeeker = () => {
  const last = { t0: 0, v0: 0, t1: 0, v1: 0 };
  const best = { value: 0, atS: 0 };
  return {
    best,
    see: (timeS: number, value: number): void => {
      const { t0, v0, t1, v1 } = last;
      if (v1 >= v0 && v1 >= value && v1 >= best.value * 0.999 && timeS > t1 && t1 > t0) {
        const left = (v1 - v0) / (t1 - t0);
        const curve = ((value - v1) / (timeS - t1) - left) / (timeS - t0);
        const topS = curve < 0 ? (t0 + t1) / 2 - left / (2 * curve) : t1;
        const top = v1 + (topS - t1) * (left + curve * (topS - t0));
        if (top > best.value) {
          best.value = top;
          best.atS = topS;
        }
      }
      last.t0 = t1;
      last.v0 = v1;
      last.t1 = timeS;
      last.v1 = value;
    },
  };
};

const looks = [0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875, 1] as const;

/** Below this share of the peak so far, at both ends of a step, the step cannot hold a higher one. */
const farBelow = 0.85;
/** Looks lie within 8° of each other: beside a peak the current is at least this share of it. */
const besidePeak = 0.98;

/**
 * The first cycles after switching on, with the currents that the quasi-steady run-up leaves out: peak current and
 * peak torque. Fifth-order model in a frame turning with the supply, where a constant voltage makes the states smooth.
 *
 * @param setup.circuit           constants of the motor; rotor values at standstill where stated
 * @param setup.motorInertiaKgM2  rotor [kg·m²], > 0
 * @param setup.load              torque [N·m] against speed [rad/s], inertia [kg·m²]
 * @param setup.lineVoltageV      line to line, constant [V], > 0
 * @param setup.frequencyHz       [Hz], > 0
 * @param setup.untilS            length [s], > 0
 * @param setup.sampleEveryS      spacing of samples [s], > 0
 * @param setup.switchOnDeg       angle of phase a's voltage at switching on, from its peak [°], default 0
 * @param setup.toleranceRatio    local error per step, 1e-12 to 1e-3, default 1e-6
 * @returns samples of speed, torque, current; peaks between them and when they come
 * @throws  {RangeError} a value outside its limits
 * Valid for: a supply without limit: the peaks are what a source would have to carry for a clean start
 * Source:  krause (fifth-order model; from memory)
 * Example: dqStart({ circuit: exampleCircuit, motorInertiaKgM2: 0.02, load: { torqueNm: () => 0, inertiaKgM2: 0 }, lineVoltageV: 400, frequencyHz: 50, untilS: 0.1, sampleEveryS: 0.001 }).speedRadPerS.length → 101
 */
export const dqStart = (setup: DqStartSetup): DqStart => {
  const { load, untilS, sampleEveryS: everyS } = setup;
  checkedNumber('motorInertiaKgM2', setup.motorInertiaKgM2, { above: 0 });
  checkedNumber('load.inertiaKgM2', load.inertiaKgM2, { min: 0 });
  checkedNumber('lineVoltageV', setup.lineVoltageV, { above: 0 });
  checkedNumber('frequencyHz', setup.frequencyHz, { above: 0 });
  checkedNumber('untilS', untilS, { above: 0 });
  checkedNumber('sampleEveryS', everyS, { above: 0 });
  const tolerance = checkedNumber('toleranceRatio', setup.toleranceRatio ?? 1e-6, { min: 1e-12, max: 1e-3 });
  const machine = dqMachine(setup.circuit);
  const supplyRadPerS = 2 * Math.PI * setup.frequencyHz;
  const peakV = setup.lineVoltageV * Math.SQRT2 * (1 / Math.sqrt(3));
  const offset = (checkedNumber('switchOnDeg', setup.switchOnDeg ?? 0) * Math.PI) / 180;
  const drive = {
    supplyRadPerS,
    voltageQ: peakV * Math.cos(offset),
    voltageD: -peakV * Math.sin(offset),
    inertiaKgM2: setup.motorInertiaKgM2 + load.inertiaKgM2,
    loadTorqueNm: load.torqueNm,
  };
  const stepper = dormandPrince(DQ_SIZE, machine.rates(drive));
  const fluxScale = 1 / (tolerance * (peakV / supplyRadPerS));
  const speedScale = 1 / (tolerance * (supplyRadPerS / machine.polePairs));

  const size = Math.floor(untilS / everyS + 1e-9) + 1;
  const speed = new Float64Array(size);
  const torque = new Float64Array(size);
  const current = new Float64Array(size);
  const torquePeak = peakSeeker();
  const currentPeak = peakSeeker();
  const between = new Float64Array(DQ_SIZE);
  /** magnitude of current and torque at the start of the step */
  let currentBefore = 0;
  let torqueBefore = 0;
  let count = 0;
  let steps = 0;
  let timeS = 0;
  let stepS = 1e-4;

  const { a, m } = machine;
  const alongQ = (state: Float64Array): number =>
    a * (state[STATOR_Q] as number) - m * (state[ROTOR_Q] as number);
  const alongD = (state: Float64Array): number =>
    a * (state[STATOR_D] as number) - m * (state[ROTOR_D] as number);
  const phaseCurrentA = (state: Float64Array, angle: number): number =>
    alongQ(state) * Math.cos(angle) + alongD(state) * Math.sin(angle);
  const lookForPeaks = (triedS: number): void => {
    const { next } = stepper;
    const afterQ = alongQ(next);
    const afterD = alongD(next);
    const currentAfter = Math.sqrt(afterQ * afterQ + afterD * afterD);
    const torqueAfter = machine.torqueNm(next);
    const isCurrentFar = Math.max(currentBefore, currentAfter) < farBelow * currentPeak.best.value;
    const isTorqueFar = Math.max(torqueBefore, torqueAfter) < farBelow * torquePeak.best.value;
    currentBefore = currentAfter;
    torqueBefore = torqueAfter;
    if (isCurrentFar && isTorqueFar) return;
    for (let n = 0; n < looks.length; n++) {
      const lookS = timeS + (looks[n] as number) * triedS;
      stepper.blend(looks[n] as number, between);
      if (!isTorqueFar) torquePeak.see(lookS, machine.torqueNm(between));
      const iq = alongQ(between);
      const id = alongD(between);
      // No phase carries more than the magnitude: only where that is high the angle matters.
      const isHigh = Math.sqrt(iq * iq + id * id) > besidePeak * currentPeak.best.value;
      currentPeak.see(lookS, isHigh ? Math.abs(phaseCurrentA(between, supplyRadPerS * lookS)) : 0);
    }
  };
  const takeSamples = (triedS: number): void => {
    while (count < size && count * everyS <= timeS + triedS + 1e-12) {
      stepper.blend(Math.min(1, (count * everyS - timeS) / triedS), between);
      speed[count] = between[SHAFT] as number;
      torque[count] = machine.torqueNm(between);
      current[count] = phaseCurrentA(between, supplyRadPerS * count * everyS);
      count += 1;
    }
  };

  stepper.begin(0);
  while (timeS < untilS - 1e-12) {
    const triedS = Math.min(stepS, untilS - timeS);
    stepper.attempt(timeS, triedS);
    const { error } = stepper;
    let worst = Math.abs(error[SHAFT] as number) * speedScale;
    for (let i = 0; i < SHAFT; i++) worst = Math.max(worst, Math.abs(error[i] as number) * fluxScale);
    stepS = triedS * stepFactor(worst);
    if (worst > 1) continue;
    stepper.prepareAll(triedS);
    takeSamples(triedS);
    lookForPeaks(triedS);
    stepper.accept();
    timeS += triedS;
    steps += 1;
  }
  return {
    everyS,
    speedRadPerS: speed,
    torqueNm: torque,
    currentA: current,
    peakTorqueNm: torquePeak.best.value,
    peakTorqueS: torquePeak.best.atS,
    peakCurrentA: currentPeak.best.value,
    peakCurrentS: currentPeak.best.atS,
    steps,
  };
};
