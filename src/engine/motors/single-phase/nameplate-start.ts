import type { SinglePhaseMotor } from './single-phase-motor-state.ts';
import type { RatedPoint, SinglePhaseNameplate } from './single-phase-nameplate.ts';

/** A motor of ordinary build with about the plate's currents, from which the search starts. All of it is assumed. */
export const nameplateStart = (
  plate: SinglePhaseNameplate,
  rated: RatedPoint,
  spread: { turns: number; rotor: number },
): SinglePhaseMotor => {
  const { voltageV, frequencyHz, kind } = plate;
  const isSplit = kind === 'split-phase';
  const hasRunCapacitor = kind === 'capacitor-run' || kind === 'permanent-capacitor';
  // At full load a balanced motor with run capacitor: the tangent of each winding's angle is the turns ratio.
  const windingAngle = Math.PI / 2 - Math.asin(Math.min(0.98, plate.powerFactor)) / 2;
  const balancedTurns = Math.tan(windingAngle);
  const turnsRatio = spread.turns * (hasRunCapacitor ? Math.min(2, balancedTurns) : 1.2);
  const mainA = hasRunCapacitor ? rated.currentA / Math.hypot(1, 1 / turnsRatio) : rated.currentA;
  const lockedOhm = voltageV / (0.8 * rated.lockedRotorA);
  const windings = hasRunCapacitor ? 2 : 1;
  const mainResistanceOhm = Math.min(0.4 * lockedOhm, (0.35 * rated.lossW) / windings / mainA ** 2);
  const rotorResistanceOhm = spread.rotor * 0.45 * lockedOhm;
  const resistance = mainResistanceOhm + rotorResistanceOhm;
  const leakage = 0.5 * Math.sqrt(Math.max(0.3 * lockedOhm ** 2, lockedOhm ** 2 - resistance ** 2));
  const balance = hasRunCapacitor ? 1 : 2;
  const magnetizingReactanceOhm = Math.max(8 * leakage, (balance * voltageV) / (0.7 * mainA) - 3 * leakage);
  const auxiliaryOhm = (isSplit ? 3 : hasRunCapacitor ? 1 : 1.5) * turnsRatio ** 2 * mainResistanceOhm;
  const omega = 2 * Math.PI * frequencyHz;
  const lockedReactance = 2 * leakage;
  const startReactance =
    turnsRatio ** 2 * lockedReactance +
    ((auxiliaryOhm + turnsRatio ** 2 * rotorResistanceOhm) * resistance) / lockedReactance;
  const runReactance = (voltageV / mainA) * turnsRatio * Math.hypot(1, turnsRatio);
  return {
    kind,
    circuit: {
      mainResistanceOhm,
      mainReactanceOhm: leakage,
      magnetizingReactanceOhm,
      rotorResistanceOhm,
      rotorReactanceOhm: leakage,
      frequencyHz,
      polePairs: rated.polePairs,
      rotationalLossW: 0.2 * rated.lossW,
      rotationalLossSpeedRpm: plate.ratedSpeedRpm,
    },
    auxiliary: { turnsRatio, resistanceOhm: auxiliaryOhm, reactanceOhm: turnsRatio ** 2 * leakage },
    ...(kind === 'capacitor-start' || kind === 'capacitor-run'
      ? { startCapacitorF: 1 / (omega * startReactance) }
      : {}),
    ...(hasRunCapacitor ? { runCapacitorF: 1 / (omega * runReactance) } : {}),
  };
};
