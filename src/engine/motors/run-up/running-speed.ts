import { bracketedRoot } from '../../inverter/bracketed-root.ts';
import type { Plant } from './plant.ts';

/** Torque left over in the last stage at a slip, with the voltage that the source then gives. */
const surplusAt = (plant: Plant, slipRatio: number): number => {
  const speed = (1 - slipRatio) * plant.fieldRadPerS;
  plant.isLimited = false;
  plant.evaluate(plant.stageStartS, speed);
  if (plant.demandRatio > 1) {
    plant.isLimited = true;
    plant.evaluate(plant.stageStartS, speed);
  }
  return plant.airGapTorqueNm - plant.brakeTorqueNm;
};

/** Whether the motor, at full voltage, pulls harder when slowed a little: before its breakdown, not beyond. */
const isBeforeBreakdown = (plant: Plant, slipRatio: number): boolean => {
  plant.isLimited = false;
  plant.evaluate(plant.stageStartS, (1 - slipRatio * 1.001) * plant.fieldRadPerS);
  const slower = plant.airGapTorqueNm;
  plant.evaluate(plant.stageStartS, (1 - slipRatio) * plant.fieldRadPerS);
  return slower > plant.airGapTorqueNm;
};

/**
 * The highest speed at which the motor, in its last stage and beside everything else, can run: searched from
 * synchronous speed downward. Null when it is nowhere stronger than its load, or only beyond its breakdown, where it
 * would crawl and draw its starting current. The plant's discrete part is the caller's to restore.
 */
export const runningSpeed = (plant: Plant, lastStage: number): number | null => {
  plant.stage = lastStage;
  plant.isSwitchOpen = true;
  const surplus = (slipRatio: number): number => surplusAt(plant, slipRatio);
  if (surplus(0) >= 0) return plant.fieldRadPerS;
  let before = 0;
  for (let slip = 1e-4; before < 1; slip = Math.min(1, slip * 1.15)) {
    if (surplus(slip) > 0) {
      const root = bracketedRoot({ lower: before, upper: slip, valueAt: surplus });
      return isBeforeBreakdown(plant, root) ? (1 - root) * plant.fieldRadPerS : null;
    }
    before = slip;
  }
  return null;
};
