import type { VNode } from 'preact';
import type { PlotFrame, Scale } from './frame.ts';
import { px } from './line-path.ts';

export interface Axis {
  readonly scale: Scale;
  readonly ticks: readonly number[];
  readonly label: (value: number) => string;
  /** What is measured, with its unit. */
  readonly title: string;
}

interface AxesProps {
  frame: PlotFrame;
  x: Axis;
  y: Axis;
  /** Room between the plot and the title above it [px]. */
  titleGap?: number;
}

/** Grid, axis lines, tick labels and titles: two paths and a few words. */
export function Axes({ frame, x, y, titleGap = 12 }: AxesProps): VNode {
  const { left, right, top, bottom } = frame;
  const grid =
    x.ticks.map((value) => `M${px(x.scale(value))} ${top}V${bottom}`).join('') +
    y.ticks.map((value) => `M${left} ${px(y.scale(value))}H${right}`).join('');
  return (
    <g>
      <path class="plot-grid" d={grid} />
      <path class="plot-axis" d={`M${left} ${top}V${bottom}H${right}`} />
      <g class="plot-ticks" text-anchor="middle">
        {x.ticks.map((value) => (
          <text key={value} x={px(x.scale(value))} y={bottom + 18}>
            {x.label(value)}
          </text>
        ))}
      </g>
      <g class="plot-ticks" text-anchor="end">
        {y.ticks.map((value) => (
          <text key={value} x={left - 8} y={px(y.scale(value) + 4.5)}>
            {y.label(value)}
          </text>
        ))}
      </g>
      <text class="plot-title" x={right} y={bottom + 38} text-anchor="end">
        {x.title}
      </text>
      <text class="plot-title" x="0" y={top - titleGap}>
        {y.title}
      </text>
    </g>
  );
}
