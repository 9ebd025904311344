import { voltageUnderLimit, type ZipLoad } from '../../src/engine/inverter/index.ts';
import { type EquivalentCircuit, machineAdmittance, machineState } from '../../src/engine/motors/index.ts';

/** A direct run-up by small fixed steps (Runge–Kutta, fourth order), volts and torque asked for anew each time. */
export const runUpByWalking = (given: {
  circuit: EquivalentCircuit;
  inertiaKgM2: number;
  torqueNm: (speedRadPerS: number) => number;
  nominalV: number;
  frequencyHz: number;
  limitA: number;
  others: ZipLoad;
  stepS: number;
  stepsPerSample: number;
  samples: number;
}) => {
  const { circuit, frequencyHz, nominalV, limitA, others, stepS: h } = given;
  const field = (2 * Math.PI * frequencyHz) / circuit.polePairs;
  const at = (speed: number) => {
    const slipRatio = 1 - speed / field;
    const admittance = machineAdmittance({ circuit, frequencyHz, slipRatio });
    const { realW, reactiveVar } = others.impedance;
    const impedance = {
      realW: realW + nominalV ** 2 * admittance.re,
      reactiveVar: reactiveVar - nominalV ** 2 * admittance.im,
    };
    const { voltageV } = voltageUnderLimit({ load: { ...others, impedance }, nominalV, limitA });
    const state = machineState({ circuit, frequencyHz, slipRatio, lineVoltageV: Math.sqrt(3) * voltageV });
    return { voltageV, rate: (state.shaftTorqueNm - given.torqueNm(speed)) / given.inertiaKgM2 };
  };
  const speeds = [0];
  const volts = [at(0).voltageV];
  let speed = 0;
  for (let n = 1; n <= given.samples * given.stepsPerSample; n++) {
    const k1 = at(speed).rate;
    const k2 = at(speed + (h / 2) * k1).rate;
    const k3 = at(speed + (h / 2) * k2).rate;
    const k4 = at(speed + h * k3).rate;
    speed += (h / 6) * (k1 + 2 * k2 + 2 * k3 + k4);
    if (n % given.stepsPerSample === 0) {
      speeds.push(speed);
      volts.push(at(speed).voltageV);
    }
  }
  return { speeds, volts };
};

/**
 * The fifth-order machine by small fixed steps, in a frame that stands still, with currents found by inverting the
 * inductances: another frame and another integrator than the engine's.
 */
export const dqByWalking = (given: {
  circuit: EquivalentCircuit;
  inertiaKgM2: number;
  lineVoltageV: number;
  frequencyHz: number;
  stepS: number;
  stepsPerSample: number;
  samples: number;
}) => {
  const { circuit, stepS: h } = given;
  const p = circuit.polePairs;
  const perOhm = 1 / (2 * Math.PI * circuit.referenceFrequencyHz);
  const mutual = (circuit.magnetisingReactanceOhm ?? Number.NaN) * perOhm;
  const stator = mutual + circuit.statorReactanceOhm * perOhm;
  const rotor = mutual + circuit.rotorReactanceOhm * perOhm;
  const det = stator * rotor - mutual ** 2;
  const w = 2 * Math.PI * given.frequencyHz;
  const peakV = given.lineVoltageV * Math.sqrt(2 / 3);
  const currents = ([sa, sb, ra, rb]: number[]) => ({
    sa: (rotor * (sa ?? 0) - mutual * (ra ?? 0)) / det,
    sb: (rotor * (sb ?? 0) - mutual * (rb ?? 0)) / det,
    ra: (stator * (ra ?? 0) - mutual * (sa ?? 0)) / det,
    rb: (stator * (rb ?? 0) - mutual * (sb ?? 0)) / det,
  });
  const torque = (x: number[]): number => {
    const i = currents(x);
    return 1.5 * p * mutual * (i.sb * i.ra - i.sa * i.rb);
  };
  const rates = (t: number, x: number[]): number[] => {
    const i = currents(x);
    const turn = p * (x[4] ?? 0);
    return [
      peakV * Math.cos(w * t) - circuit.statorResistanceOhm * i.sa,
      peakV * Math.sin(w * t) - circuit.statorResistanceOhm * i.sb,
      -circuit.rotorResistanceOhm * i.ra - turn * (x[3] ?? 0),
      -circuit.rotorResistanceOhm * i.rb + turn * (x[2] ?? 0),
      torque(x) / given.inertiaKgM2,
    ];
  };
  const along = (x: number[], k: number[], by: number): number[] => x.map((v, n) => v + by * (k[n] ?? 0));
  let x = [0, 0, 0, 0, 0];
  const speeds = [0];
  const torques = [0];
  const phaseA = [0];
  for (let n = 1; n <= given.samples * given.stepsPerSample; n++) {
    const t = (n - 1) * h;
    const k1 = rates(t, x);
    const k2 = rates(t + h / 2, along(x, k1, h / 2));
    const k3 = rates(t + h / 2, along(x, k2, h / 2));
    const k4 = rates(t + h, along(x, k3, h));
    x = x.map((v, m) => v + (h / 6) * ((k1[m] ?? 0) + 2 * (k2[m] ?? 0) + 2 * (k3[m] ?? 0) + (k4[m] ?? 0)));
    if (n % given.stepsPerSample === 0) {
      speeds.push(x[4] ?? 0);
      torques.push(torque(x));
      phaseA.push(currents(x).sa);
    }
  }
  return { speeds, torques, phaseA };
};
