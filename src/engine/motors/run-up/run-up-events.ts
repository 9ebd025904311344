import { bracketedRoot } from '../../inverter/bracketed-root.ts';
import type { StageEnd } from '../starters/starter.ts';
import type { Stepper } from './dormand-prince.ts';
import { FAST_HEAT, type Plant, SLOW_HEAT, SPEED } from './plant.ts';
import type { RunUpSetup } from './run-up-types.ts';

/** Things that change the equations, or end the run, in the middle of a step. */
export type RunUpEvent = 'limit' | 'held' | 'stage' | 'speed-switch' | 'standing' | 'heat';

const order: readonly RunUpEvent[] = ['limit', 'held', 'stage', 'speed-switch', 'standing', 'heat'];

/** Below this a crossing is rounding. */
const rounding = 1e-12;

/** How far beyond each event the plant stands after `evaluate`; below 0: not yet. */
const beyond = (
  event: RunUpEvent,
  given: { plant: Plant; state: Float64Array; setup: RunUpSetup; isLost: boolean; end: StageEnd | undefined },
): number => {
  const { plant, state, setup } = given;
  const share = (state[SPEED] as number) / plant.fieldRadPerS;
  const protection = setup.source.protection;
  switch (event) {
    case 'limit':
      return plant.isLimited ? 1 - plant.demandRatio : plant.demandRatio - 1;
    case 'held': {
      if (!protection) return -1;
      const above = plant.voltageRatio - protection.model.datasheet.voltageHeldRatio;
      return given.isLost ? above : -above;
    }
    case 'stage':
      return given.end?.atSpeedRatio === undefined ? -1 : share - given.end.atSpeedRatio;
    case 'speed-switch': {
      const speedSwitch = setup.machine.speedSwitch;
      if (!speedSwitch) return -1;
      return plant.isSwitchOpen ? speedSwitch.closesAtRatio - share : share - speedSwitch.opensAtRatio;
    }
    case 'standing':
      return plant.isStanding
        ? (plant.airGapTorqueNm - plant.brakeTorqueNm) / (plant.inertiaKgM2 * plant.fieldRadPerS)
        : -share;
    case 'heat':
      if (!protection) return -1;
      return (state[FAST_HEAT] as number) + (state[SLOW_HEAT] as number) - protection.allowedHeatRatio;
  }
};

/** The earliest event in the step tried last. */
export interface FoundEvent {
  readonly event: RunUpEvent;
  readonly stepS: number;
}

/**
 * Looks whether the step tried last went through an event and, if so, finds the step that ends just on it by trying
 * steps, so that no step reaches over a kink. Null when there is none; the step tried last is then still in place.
 */
export const findEvent = (given: {
  plant: Plant;
  stepper: Stepper;
  setup: RunUpSetup;
  isLost: boolean;
  end: StageEnd | undefined;
  timeS: number;
  stepS: number;
}): FoundEvent | null => {
  const { plant, stepper, timeS, stepS } = given;
  const measure = (event: RunUpEvent, state: Float64Array): number => beyond(event, { ...given, state });
  let fired: RunUpEvent[] | null = null;
  for (const event of order) {
    if (measure(event, stepper.next) > rounding) {
      fired ??= [];
      fired.push(event);
    }
  }
  if (!fired) return null;
  let first: FoundEvent | null = null;
  for (const event of fired) {
    plant.evaluate(timeS, stepper.state[SPEED] as number);
    const valueAt = (triedS: number): number => {
      if (triedS === 0) plant.evaluate(timeS, stepper.state[SPEED] as number);
      else stepper.attempt(timeS, triedS);
      return measure(event, triedS === 0 ? stepper.state : stepper.next);
    };
    const isAlready = measure(event, stepper.state) >= 0;
    const foundS = isAlready ? 0 : bracketedRoot({ lower: 0, upper: stepS, valueAt });
    if (!first || foundS < first.stepS) first = { event, stepS: foundS };
  }
  return first;
};
