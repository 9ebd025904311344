import { loadCurrent, type PowerTriangle, powerTriangle } from '../../../engine/index.ts';

/** What the learner has set: two loads of the same real power. */
export interface PowerSetting {
  readonly voltageV: 120 | 230;
  readonly realPowerW: number;
  readonly powerFactorA: number;
  readonly powerFactorB: number;
}

export interface ShownLoad extends PowerTriangle {
  readonly currentA: number;
}

export interface PowerAnswer {
  readonly a: ShownLoad;
  readonly b: ShownLoad;
  /** current of B by current of A */
  readonly currentRatio: number;
  /** heat of B in the same wire by that of A: current squared */
  readonly heatRatio: number;
}

function shownLoad({ voltageV, realPowerW }: PowerSetting, powerFactor: number): ShownLoad {
  const { currentA } = loadCurrent({ realPowerW, powerFactor, voltageV, phases: 1 });
  return { ...powerTriangle({ realPowerW, powerFactor }), currentA };
}

export function powerAnswer(setting: PowerSetting): PowerAnswer {
  const a = shownLoad(setting, setting.powerFactorA);
  const b = shownLoad(setting, setting.powerFactorB);
  const currentRatio = b.currentA / a.currentA;
  return { a, b, currentRatio, heatRatio: currentRatio ** 2 };
}

export const firstPowerSetting: PowerSetting = {
  voltageV: 230,
  realPowerW: 1000,
  powerFactorA: 1,
  powerFactorB: 0.6,
};

/** Power that one square of the paper stands for [VA], so that the larger triangle fits into so many squares. */
export function squareVa(answer: PowerAnswer, squares: { across: number; up: number }): number {
  const widest = answer.a.realPowerW / squares.across;
  const highest = Math.max(answer.a.reactivePowerVar, answer.b.reactivePowerVar) / squares.up;
  const least = Math.max(widest, highest);
  const power = 10 ** Math.floor(Math.log10(least));
  const factor =
    [1, 1.5, 2, 2.5, 3, 4, 5, 6, 8].find((candidate) => candidate * power >= least * (1 - 1e-9)) ?? 10;
  return Number((factor * power).toPrecision(12));
}
