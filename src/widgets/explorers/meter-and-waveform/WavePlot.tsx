import type { VNode } from 'preact';
import { useMemo } from 'preact/hooks';
import { Axes } from '../../shared/chart/Axes.tsx';
import { frameOf, linearScale, type PlotFrame, type Scale } from '../../shared/chart/frame.ts';
import { linePath, px } from '../../shared/chart/line-path.ts';
import { linearTicks, roundUp } from '../../shared/chart/ticks.ts';
import { usePlotSize } from '../../shared/chart/use-plot-size.ts';
import { amperes, axisNumber, words } from '../words.ts';
import { type MeterAnswer, type MeterSetting, waveAt, waveShapeOf } from './meter-answer.ts';

const text = words.meter;
const room = { left: 44, right: 78, top: 30, bottom: 46 };
const firstSize = { width: 640, height: 340 };
const periods = 2;
const pointsPerPeriod = 160;
/** Two labels need this much between them [px]. */
const labelPx = 17;

/** The square's edges are drawn upright: two points for each. */
function wavePathOf(setting: MeterSetting, peakA: number, x: Scale, y: Scale): string {
  const shape = waveShapeOf(setting);
  if (shape.kind === 'square') {
    const edges = Array.from({ length: 2 * periods }, (_, i) => i / 2);
    return linePath(
      edges.flatMap((at) => {
        const level = y(waveAt(shape, at + 0.25) * peakA);
        return [
          { x: x(at), y: level },
          { x: x(at + 0.5), y: level },
        ];
      }),
    );
  }
  const count = periods * pointsPerPeriod;
  return linePath(
    Array.from({ length: count + 1 }, (_, i) => {
      const at = (i * periods) / count;
      return { x: x(at), y: y(waveAt(shape, at) * peakA) };
    }),
  );
}

interface WavePlotProps {
  setting: MeterSetting;
  answer: MeterAnswer;
  label: string;
}

/** Two periods of the current, with the true value and the meter's as levels across them. */
export function WavePlot({ setting, answer, label }: WavePlotProps): VNode {
  const { ref, size } = usePlotSize(firstSize);
  const frame = useMemo(() => frameOf(size, room), [size]);
  const topA = roundUp(answer.peakA);
  const { x, y, axes } = useMemo(() => {
    const x = linearScale({ from: 0, to: periods, start: frame.left, end: frame.right });
    const y = linearScale({ from: -topA, to: topA, start: frame.bottom, end: frame.top });
    const axes = (
      <Axes
        frame={frame}
        x={{ scale: x, ticks: [0, 0.5, 1, 1.5, 2], label: axisNumber, title: text.xTitle }}
        y={{
          scale: y,
          ticks: linearTicks({ from: -topA, to: topA, most: 9 }),
          label: axisNumber,
          title: text.yTitle,
        }}
      />
    );
    return { x, y, axes };
  }, [frame, topA]);
  const wave = useMemo(() => wavePathOf(setting, answer.peakA, x, y), [setting, answer, x, y]);
  const zeroY = px(y(0));
  const levels = labelPlaces(y(setting.rmsA), y(answer.readingA), frame);
  return (
    <svg
      ref={ref}
      class="plot-svg"
      viewBox={`0 0 ${size.width} ${size.height}`}
      role="img"
      aria-label={label}
    >
      {axes}
      <path class="plot-axis" d={`M${frame.left} ${zeroY}H${frame.right}`} />
      <path class="plot-line" d={wave} />
      <path class="plot-line plot-line-3" d={`M${frame.left} ${px(y(setting.rmsA))}H${frame.right}`} />
      <path class="plot-line plot-line-2" d={`M${frame.left} ${px(y(answer.readingA))}H${frame.right}`} />
      <text class="plot-tag plot-ink-3" x={frame.right + 8} y={px(levels.first + 4.5)}>
        {amperes(setting.rmsA)}
      </text>
      <text class="plot-tag plot-ink-2" x={frame.right + 8} y={px(levels.second + 4.5)}>
        {amperes(answer.readingA)}
      </text>
    </svg>
  );
}

/** Where the two labels stand: beside their lines, pushed apart where those are too close. */
function labelPlaces(first: number, second: number, frame: PlotFrame): { first: number; second: number } {
  const gap = second - first;
  if (Math.abs(gap) >= labelPx) return { first, second };
  const middle = Math.max(frame.top + labelPx / 2, (first + second) / 2);
  // Equal readings: the true value stands above.
  const sign = gap < 0 ? -1 : 1;
  return { first: middle - (sign * labelPx) / 2, second: middle + (sign * labelPx) / 2 };
}
