import type { EquivalentCircuit, RunUpMachine } from '../../src/engine/motors/index.ts';

/** A motor that gives one torque and draws one current at any speed, stated at a phase voltage. */
export const unchangingMachine = (given: {
  phaseV: number;
  currentA: number;
  torqueNm: number;
  powerFactor?: number;
  polePairs?: number;
}): RunUpMachine => {
  const { phaseV, currentA, torqueNm, powerFactor = 0.4, polePairs = 2 } = given;
  return {
    phases: 3,
    polePairs,
    frictionNmS: 0,
    answer: (_slip, _frequencyHz, _isSwitchOpen, into) => {
      into.conductanceS = (powerFactor * currentA) / phaseV;
      into.susceptanceS = (-Math.sqrt(1 - powerFactor ** 2) * currentA) / phaseV;
      into.torqueNmPerV2 = torqueNm / phaseV ** 2;
      into.rotorLossWPerV2 = 0;
    },
  };
};

/** Torque after Kloss, without current. */
export const klossMachine = (given: {
  phaseV: number;
  breakdownTorqueNm: number;
  breakdownSlip: number;
  polePairs: number;
}): RunUpMachine => ({
  phases: 3,
  polePairs: given.polePairs,
  frictionNmS: 0,
  answer: (slip, _frequencyHz, _isSwitchOpen, into) => {
    into.conductanceS = 0;
    into.susceptanceS = 0;
    into.rotorLossWPerV2 = 0;
    const s = given.breakdownSlip;
    into.torqueNmPerV2 = (2 * given.breakdownTorqueNm * slip * s) / (slip * slip + s * s) / given.phaseV ** 2;
  },
});

export const starCircuit = (given: {
  polePairs: number;
  frequencyHz: number;
  r1: number;
  x1: number;
  r2: number;
  x2: number;
  xm: number | null;
}): EquivalentCircuit => ({
  connection: 'star',
  polePairs: given.polePairs,
  referenceFrequencyHz: given.frequencyHz,
  statorResistanceOhm: given.r1,
  statorReactanceOhm: given.x1,
  magnetisingReactanceOhm: given.xm,
  coreLossResistanceOhm: null,
  rotorResistanceOhm: given.r2,
  rotorReactanceOhm: given.x2,
});

/** Machines of Krause's table: 60 Hz, four poles; J is motor and load together. */
export const krauseMachines = {
  '3 hp': { lineVoltageV: 220, r1: 0.435, x: 0.754, xm: 26.13, r2: 0.816, inertiaKgM2: 0.089 },
  '50 hp': { lineVoltageV: 460, r1: 0.087, x: 0.302, xm: 13.08, r2: 0.228, inertiaKgM2: 1.662 },
  '500 hp': { lineVoltageV: 2300, r1: 0.262, x: 1.206, xm: 54.02, r2: 0.187, inertiaKgM2: 11.06 },
  '2250 hp': { lineVoltageV: 2300, r1: 0.029, x: 0.226, xm: 13.04, r2: 0.022, inertiaKgM2: 63.87 },
} as const;

export type KrauseName = keyof typeof krauseMachines;

export const krauseCircuit = (name: KrauseName): EquivalentCircuit => {
  const { r1, x, xm, r2 } = krauseMachines[name];
  return starCircuit({ polePairs: 2, frequencyHz: 60, r1, x1: x, r2, x2: x, xm });
};
