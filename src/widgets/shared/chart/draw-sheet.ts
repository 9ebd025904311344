import type { ChartArea } from 'chart.js';
import type { Inks } from './read-inks.ts';
import type { StackedSpec } from './stacked-spec.ts';

/** Room around the panels for their numbers [px]. */
export const room = { left: 44, right: 26, top: 18, bottom: 26 } as const;

interface Panel {
  readonly top: number;
  readonly bottom: number;
  getPixelForValue(value: number): number;
}

/** What the chart has worked out: where its panels are. */
export interface Sheet {
  readonly spec: StackedSpec;
  readonly inks: Inks;
  readonly chartArea: ChartArea;
  readonly scales: Readonly<Record<string, Panel>>;
  readonly width: number;
}

/** Grid, axis lines and numbers, under the curves: one stroke for all of one colour. */
export function drawSheet(ctx: CanvasRenderingContext2D, sheet: Sheet): void {
  const { spec, inks, chartArea, scales, width } = sheet;
  const { left, right, top, bottom } = chartArea;
  const { x: across } = scales;
  if (!across) return;
  ctx.save();
  ctx.font = `13px ${inks.font}`;
  ctx.fillStyle = inks.axis;
  ctx.lineWidth = 1;
  ctx.textAlign = 'center';
  const grid = new Path2D();
  const axes = new Path2D();
  for (const timeS of spec.timeTicks(width)) {
    const x = across.getPixelForValue(timeS);
    grid.moveTo(x, top);
    grid.lineTo(x, bottom);
    ctx.fillText(spec.timeLabel(timeS), x, bottom + 18);
  }
  ctx.textAlign = 'end';
  spec.panels.forEach(({ ticks }, place) => {
    const panel = scales[`y${place}`];
    if (!panel) return;
    for (const value of ticks) {
      const y = panel.getPixelForValue(value);
      grid.moveTo(left, y);
      grid.lineTo(right, y);
      ctx.fillText(spec.numberLabel(value), left - 8, y + 4.5);
    }
    axes.moveTo(left, panel.top);
    axes.lineTo(left, panel.bottom);
    axes.lineTo(right, panel.bottom);
  });
  ctx.strokeStyle = inks.grid;
  ctx.stroke(grid);
  ctx.strokeStyle = inks.axis;
  ctx.stroke(axes);
  ctx.restore();
}

/** Names of the panels and marks of events, over the curves. */
export function drawMarks(ctx: CanvasRenderingContext2D, sheet: Sheet): void {
  const { spec, inks, chartArea, scales } = sheet;
  const { left, top, bottom } = chartArea;
  const { x: across } = scales;
  ctx.save();
  ctx.font = `600 13px ${inks.font}`;
  ctx.lineWidth = 4;
  ctx.lineJoin = 'round';
  ctx.strokeStyle = inks.paper;
  ctx.fillStyle = inks.soft;
  spec.panels.forEach(({ title }, place) => {
    const y = (scales[`y${place}`]?.top ?? 0) + 17;
    ctx.strokeText(title, left + 8, y);
    ctx.fillText(title, left + 8, y);
  });
  ctx.lineWidth = 1;
  ctx.textAlign = 'center';
  ctx.setLineDash([2, 3]);
  for (const { timeS, letter, ink, shown } of spec.marks) {
    const x = across?.getPixelForValue(timeS) ?? left;
    ctx.strokeStyle = inks[ink];
    ctx.fillStyle = inks[ink];
    ctx.beginPath();
    ctx.moveTo(x, top);
    ctx.lineTo(x, bottom);
    ctx.stroke();
    if (shown) ctx.fillText(letter, x, top - 5);
  }
  ctx.restore();
}
