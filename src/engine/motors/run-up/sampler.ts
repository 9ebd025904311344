import type { Stepper } from './dormand-prince.ts';
import { FAST_HEAT, type Plant, SLOW_HEAT, SPEED } from './plant.ts';
import type { RunUpSamples } from './run-up-types.ts';

/** Collects evenly spaced samples while the run steps on. */
export interface Sampler {
  /** takes the sample of the start, from the plant as evaluated there */
  readonly begin: () => void;
  /** takes the samples that lie in the step tried last, before it is accepted */
  readonly take: (timeS: number, stepS: number) => void;
  readonly finish: () => RunUpSamples;
}

export const makeSampler = (given: {
  everyS: number;
  untilS: number;
  plant: Plant;
  stepper: Stepper;
  nominalV: number;
  hasHeat: boolean;
}): Sampler => {
  const { everyS, plant, stepper } = given;
  const size = Math.floor(given.untilS / everyS + 1e-9) + 1;
  const column = (): Float64Array => new Float64Array(size);
  const speed = column();
  const voltage = column();
  const motor = column();
  const output = column();
  const torque = column();
  const heat = column();
  let count = 0;

  const addHeat = (component: number, from: number, timeS: number, stepS: number): void => {
    stepper.prepare(component, stepS);
    for (let n = from; n < count; n++) {
      heat[n] = (heat[n] as number) + stepper.between((n * everyS - timeS) / stepS);
    }
  };

  const put = (speedRadPerS: number): void => {
    speed[count] = speedRadPerS;
    voltage[count] = plant.voltageRatio * given.nominalV;
    motor[count] = plant.motorA;
    output[count] = plant.outputA;
    torque[count] = plant.airGapTorqueNm;
    count += 1;
  };

  return {
    begin: () => {
      const { state } = stepper;
      heat[0] = (state[FAST_HEAT] as number) + (state[SLOW_HEAT] as number);
      put(state[SPEED] as number);
    },
    take: (timeS, stepS) => {
      const from = count;
      const endS = timeS + stepS;
      stepper.prepare(SPEED, stepS);
      while (count < size && count * everyS <= endS) {
        const sampleS = count * everyS;
        const speedRadPerS = stepper.between((sampleS - timeS) / stepS);
        plant.evaluate(sampleS, speedRadPerS);
        put(speedRadPerS);
      }
      if (given.hasHeat && count > from) {
        addHeat(FAST_HEAT, from, timeS, stepS);
        addHeat(SLOW_HEAT, from, timeS, stepS);
      }
    },
    finish: () => ({
      everyS,
      speedRadPerS: speed.subarray(0, count),
      voltageV: voltage.subarray(0, count),
      motorA: motor.subarray(0, count),
      outputA: output.subarray(0, count),
      motorTorqueNm: torque.subarray(0, count),
      heatRatio: heat.subarray(0, count),
    }),
  };
};
