import {
  type InverterModel,
  type LimitedVoltage,
  voltageUnderLimit,
  type ZipLoad,
  zipCurrentA,
} from '../../../engine/index.ts';
import type { Shares } from './shares.ts';

/** What the learner has set. */
export interface VoltsSetting {
  readonly inverterId: string;
  readonly totalVa: number;
  readonly shares: Shares;
}

export type VoltsOutcome = 'held' | 'sagging' | 'lost' | 'collapse';

export interface VoltsAnswer extends LimitedVoltage {
  readonly outcome: VoltsOutcome;
  /** null: no stop, the voltage is held */
  readonly stopS: number | null;
}

/** The loads as the engine takes them; all of power factor 1. */
export function zipLoadOf({ totalVa, shares }: VoltsSetting): ZipLoad {
  const share = (percent: number) => ({ realW: (totalVa * percent) / 100, reactiveVar: 0 });
  return { impedance: share(shares.impedance), current: share(shares.current), power: share(shares.power) };
}

export function voltsAnswer(model: InverterModel, setting: VoltsSetting): VoltsAnswer {
  const { datasheet, limitA } = model;
  const voltage = voltageUnderLimit({ load: zipLoadOf(setting), nominalV: datasheet.acNominalV, limitA });
  const counts = voltage.voltageRatio < datasheet.voltageHeldRatio;
  return {
    ...voltage,
    outcome: voltage.collapsed ? 'collapse' : counts ? 'lost' : voltage.held ? 'held' : 'sagging',
    stopS: counts ? datasheet.voltageLostCycles / datasheet.frequencyHz : null,
  };
}

/** Highest voltage on the plot, as a share of nominal. */
export const highestRatio = 1.1;
/** Current axis as a multiple of the limit. */
export const highestCurrentRatio = 2.25;

const pointCount = 80;

/** The current the loads draw against voltage share, from nominal down to where it leaves the plot. */
export function drawCurve(
  model: InverterModel,
  setting: VoltsSetting,
): { ratio: number; currentA: number }[] {
  const load = zipLoadOf(setting);
  const mostA = model.limitA * highestCurrentRatio;
  const points: { ratio: number; currentA: number }[] = [];
  for (let i = 0; i <= pointCount; i++) {
    // Closer together towards nought, where a constant power bends the curve most.
    const ratio = Math.max(0.004, highestRatio * (1 - i / pointCount) ** 2);
    const currentA = zipCurrentA(load, model.datasheet.acNominalV, ratio);
    if (currentA > mostA) {
      points.push(cutAt(points.at(-1), { ratio, currentA }, mostA));
      break;
    }
    points.push({ ratio, currentA });
  }
  return points;
}

/** Where the line between two points crosses the upper edge. */
function cutAt(
  inside: { ratio: number; currentA: number } | undefined,
  outside: { ratio: number; currentA: number },
  currentA: number,
): { ratio: number; currentA: number } {
  if (!inside) return { ratio: outside.ratio, currentA };
  const part = (currentA - inside.currentA) / (outside.currentA - inside.currentA);
  return { ratio: inside.ratio + part * (outside.ratio - inside.ratio), currentA };
}

/** The greatest load that can be set [VA]: twice the limit, on a round raster. */
export function greatestTotalVa({ limitA, datasheet }: InverterModel): number {
  return Math.ceil((2 * limitA * datasheet.acNominalV) / 100) * 100;
}

/** The setting an inverter begins with: a quarter more than it can give, mostly heaters. */
export function firstVoltsSetting(inverterId: string, model: InverterModel): VoltsSetting {
  return {
    inverterId,
    totalVa: Math.round((1.25 * model.limitA * model.datasheet.acNominalV) / 50) * 50,
    shares: { impedance: 80, current: 10, power: 10 },
  };
}
