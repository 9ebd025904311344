import type { MachineAnswer } from '../run-up/run-up-machine.ts';

/** What the source sees and what the motor gets, through a starter, for 1 V at the source. */
export interface StarterTerms {
  /** admittance seen by the source, one phase [S] */
  conductanceS: number;
  susceptanceS: number;
  /** r.m.s. of all harmonic current the source must carry, per volt [S] */
  harmonicS: number;
  /** r.m.s. current in the motor's conductors, per volt of the source [S] */
  motorS: number;
  /** torque and rotor loss as a share of what the motor gives at full voltage */
  torqueRatio: number;
}

/** When a stage gives way to the next: at a share of synchronous speed, after a time, or whichever comes first. */
export interface StageEnd {
  readonly atSpeedRatio?: number;
  readonly afterS?: number;
}

/** One position of a starter. */
export interface StarterStage {
  /** false while something changes with time alone */
  readonly isSteady: boolean;
  /** absent in the last stage */
  readonly end?: StageEnd;
  /** fills `into` from the motor's answer at `inStageS` seconds into the stage */
  readonly connect: (answer: MachineAnswer, inStageS: number, into: StarterTerms) => void;
}

/** A way of starting a motor: one or more stages, the last of them the running connection. */
export interface Starter {
  readonly kind: 'direct' | 'star-delta' | 'autotransformer' | 'series-impedance' | 'soft';
  readonly stages: readonly StarterStage[];
}

/** Terms to be filled. */
export const emptyTerms = (): StarterTerms => ({
  conductanceS: 0,
  susceptanceS: 0,
  harmonicS: 0,
  motorS: 0,
  torqueRatio: 0,
});

/** A stage that scales the line current, the motor current and the torque by fixed ratios. */
export const scaledStage = (given: {
  lineRatio: number;
  motorRatio: number;
  torqueRatio: number;
  end?: StageEnd;
}): StarterStage => ({
  isSteady: true,
  ...(given.end ? { end: given.end } : {}),
  connect: (answer, _inStageS, into) => {
    const { conductanceS, susceptanceS } = answer;
    into.conductanceS = given.lineRatio * conductanceS;
    into.susceptanceS = given.lineRatio * susceptanceS;
    into.harmonicS = 0;
    into.motorS = given.motorRatio * Math.sqrt(conductanceS * conductanceS + susceptanceS * susceptanceS);
    into.torqueRatio = given.torqueRatio;
  },
});

/** Straight on the supply. */
export const runningStage: StarterStage = scaledStage({ lineRatio: 1, motorRatio: 1, torqueRatio: 1 });

/** Nothing connected. */
export const openStage = (afterS: number): StarterStage =>
  scaledStage({ lineRatio: 0, motorRatio: 0, torqueRatio: 0, end: { afterS } });

/** Hands a stage's end through if it can come. */
export const checkedEnd = (end: StageEnd): StageEnd => {
  const { atSpeedRatio, afterS } = end;
  if (atSpeedRatio === undefined && afterS === undefined) {
    throw new RangeError('switchOver: expected atSpeedRatio or afterS, found neither');
  }
  if (atSpeedRatio !== undefined && !(atSpeedRatio > 0 && atSpeedRatio < 1)) {
    throw new RangeError(`switchOver.atSpeedRatio: expected above 0 and below 1, found ${atSpeedRatio}`);
  }
  if (afterS !== undefined && !(afterS > 0)) {
    throw new RangeError(`switchOver.afterS: expected more than 0 s, found ${afterS}`);
  }
  return end;
};
