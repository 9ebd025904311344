import type { SinglePhaseKind } from './auxiliary-for.ts';
import { type NameplateMotor, singlePhaseFromNameplate } from './single-phase-from-nameplate.ts';
import type { SinglePhaseNameplate } from './single-phase-nameplate.ts';

const plates: Readonly<
  Record<SinglePhaseKind, Omit<SinglePhaseNameplate, 'kind' | 'voltageV' | 'frequencyHz'>>
> = {
  'split-phase': {
    ratedPowerW: 250,
    efficiencyRatio: 0.6,
    powerFactor: 0.62,
    ratedSpeedRpm: 1425,
    lockedRotorCurrentRatio: 6,
    lockedRotorTorqueRatio: 1.6,
  },
  'capacitor-start': {
    ratedPowerW: 750,
    efficiencyRatio: 0.7,
    powerFactor: 0.72,
    ratedSpeedRpm: 1430,
    lockedRotorCurrentRatio: 4.5,
    lockedRotorTorqueRatio: 2.5,
  },
  'capacitor-run': {
    ratedPowerW: 1500,
    efficiencyRatio: 0.76,
    powerFactor: 0.93,
    ratedSpeedRpm: 2830,
    lockedRotorCurrentRatio: 4.5,
    lockedRotorTorqueRatio: 2,
  },
  'permanent-capacitor': {
    ratedPowerW: 370,
    efficiencyRatio: 0.66,
    powerFactor: 0.92,
    ratedSpeedRpm: 2800,
    lockedRotorCurrentRatio: 3.5,
    lockedRotorTorqueRatio: 0.6,
  },
};

/** Invented plate of the example motor of a kind, for 230 V and 50 Hz. */
export const exampleSinglePhasePlate = (kind: SinglePhaseKind): SinglePhaseNameplate => ({
  ...plates[kind],
  voltageV: 230,
  frequencyHz: 50,
  kind,
});

/**
 * The invented motor that examples and tests compute with, for 230 V and 50 Hz.
 *
 * @param kind  how its auxiliary winding is fed
 * @returns the motor made from its plate
 * @throws  nothing
 * Valid for: examples; it proves nothing about a real motor.
 * Source:  invented-data
 * Example: exampleSinglePhaseMotor('permanent-capacitor').circuit.polePairs → 1
 */
export const exampleSinglePhaseMotor = (kind: SinglePhaseKind): NameplateMotor =>
  singlePhaseFromNameplate(exampleSinglePhasePlate(kind));
