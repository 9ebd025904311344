import { linePath, type PlotPoint } from '../../shared/chart/line-path.ts';

export interface WaveStrip {
  /** cycles at nominal voltage before the loads come on */
  readonly cyclesBefore: number;
  /** cycles drawn after that */
  readonly cyclesAfter: number;
  readonly voltageRatio: number;
  /** after this many cycles the unit is off; null: it stays on */
  readonly stopAfterCycles: number | null;
}

const pointsPerCycle = 12;

/** The output voltage as a sine wave cycle by cycle: before, under the load, and after the stop. */
export function wavePath(
  strip: WaveStrip,
  box: { left: number; right: number; middle: number; amplitude: number },
): string {
  const cycles = strip.cyclesBefore + strip.cyclesAfter;
  const stop = strip.stopAfterCycles === null ? cycles : strip.cyclesBefore + strip.stopAfterCycles;
  const perCycle = (box.right - box.left) / cycles;
  const points: PlotPoint[] = [];
  for (let i = 0; i <= cycles * pointsPerCycle; i++) {
    const at = i / pointsPerCycle;
    const ratio = at > stop ? 0 : at > strip.cyclesBefore ? strip.voltageRatio : 1;
    points.push({
      x: box.left + at * perCycle,
      y: box.middle - box.amplitude * ratio * Math.sin(2 * Math.PI * at),
    });
  }
  return linePath(points);
}
