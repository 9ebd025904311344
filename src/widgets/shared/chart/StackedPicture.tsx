import type { VNode } from 'preact';
import { type MutableRef, useMemo } from 'preact/hooks';
import { room } from './draw-sheet.ts';
import { linearScale, type PlotSize } from './frame.ts';
import { linePath, px } from './line-path.ts';
import type { StackedSpec } from './stacked-spec.ts';
import { usePlotSize } from './use-plot-size.ts';
import { useSettled } from './use-settled.ts';

const firstSize = { width: 640, height: 440 };

/**
 * The panels as a drawing: what stands there before the chart is awake, without scripts, and on paper. Hidden under
 * the chart otherwise, so it follows only when the controls have come to rest.
 */
export function StackedPicture({ spec, label }: { spec: StackedSpec; label: string }): VNode {
  const settled = useSettled(spec, 250);
  const settledLabel = useSettled(label, 250);
  const { ref, size } = usePlotSize(firstSize);
  return useMemo(() => drawPicture(settled, settledLabel, size, ref), [settled, settledLabel, size, ref]);
}

function drawPicture(
  spec: StackedSpec,
  label: string,
  size: PlotSize,
  ref: MutableRef<SVGSVGElement | null>,
): VNode {
  const left = room.left;
  const right = size.width - room.right;
  const bottom = size.height - room.bottom;
  const x = linearScale({ from: 0, to: spec.untilS, start: left, end: right });
  const weights = spec.panels.reduce((sum, panel) => sum + panel.weight, 0);
  let above = 0;
  const panels = spec.panels.map((panel) => {
    const top = room.top + ((bottom - room.top) * above) / weights;
    above += panel.weight;
    const foot = room.top + ((bottom - room.top) * above) / weights;
    return { ...panel, top, foot, y: linearScale({ from: 0, to: panel.max, start: foot, end: top }) };
  });
  const times = spec.timeTicks(size.width);
  const grid =
    times.map((timeS) => `M${px(x(timeS))} ${room.top}V${bottom}`).join('') +
    panels.flatMap(({ ticks, y }) => ticks.map((value) => `M${left} ${px(y(value))}H${right}`)).join('');
  const axes = panels.map(({ top, foot }) => `M${left} ${px(top)}V${px(foot)}H${right}`).join('');
  return (
    <svg
      ref={ref}
      class="plot-svg timeline-picture"
      viewBox={`0 0 ${size.width} ${size.height}`}
      role="img"
      aria-label={label}
    >
      <path class="plot-grid" d={grid} />
      <path class="plot-axis" d={axes} />
      <g class="plot-ticks" text-anchor="middle">
        {times.map((timeS) => (
          <text key={timeS} x={px(x(timeS))} y={bottom + 18}>
            {spec.timeLabel(timeS)}
          </text>
        ))}
      </g>
      {panels.map(({ title, ticks, lines, top, y }) => (
        <g key={title}>
          <g class="plot-ticks" text-anchor="end">
            {ticks.map((value) => (
              <text key={value} x={left - 8} y={px(y(value) + 4.5)}>
                {spec.numberLabel(value)}
              </text>
            ))}
          </g>
          {lines.map(({ points, line }) => (
            <path
              key={line}
              class={line}
              d={linePath(points.map((point) => ({ x: x(point.x), y: y(point.y) })))}
            />
          ))}
          <text class="plot-title plot-tag" x={left + 8} y={px(top + 17)}>
            {title}
          </text>
        </g>
      ))}
      <path
        class="plot-lead"
        d={spec.marks.map(({ timeS }) => `M${px(x(timeS))} ${room.top}V${bottom}`).join('')}
      />
      <g text-anchor="middle">
        {spec.marks.map(({ timeS, letter, shown }, place) =>
          shown ? (
            <text key={place} class="plot-tag" x={px(x(timeS))} y={room.top - 5}>
              {letter}
            </text>
          ) : null,
        )}
      </g>
    </svg>
  );
}
