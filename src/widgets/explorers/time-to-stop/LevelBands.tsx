import type { VNode } from 'preact';
import type { OverloadLevel } from '../../../engine/index.ts';
import { clamp, type PlotFrame, type Scale } from '../../shared/chart/frame.ts';
import { px } from '../../shared/chart/line-path.ts';
import { words } from '../words.ts';
import type { LevelBounds } from './overload-curve.ts';

interface LevelBandsProps {
  frame: PlotFrame;
  x: Scale;
  from: number;
  to: number;
  bounds: LevelBounds;
  level: OverloadLevel;
}

/** About the width of a letter [px]. */
const letterPx = 7;
/** Height of the strip [px]. */
export const stripPx = 22;

/** The levels as a strip above the plot, with their borders drawn down through it. The level of the load is inked. */
export function LevelBands({ frame, x, from, to, bounds, level }: LevelBandsProps): VNode {
  const { continuousA, longDurationA, limitA } = bounds;
  const at = (currentA: number) => px(x(clamp(currentA, from, to)));
  const marks = [at(from), at(continuousA), at(longDurationA), at(limitA), at(to)] as const;
  const bands = (['none', 'heat', 'surge', 'voltage-lost'] as const).map((id, i) => ({
    id,
    left: marks[i] ?? 0,
    right: marks[i + 1] ?? 0,
  }));
  const top = frame.top - stripPx;
  const borders = marks.slice(1, 4).map((mark) => `M${mark} ${top}V${frame.bottom}`);
  return (
    <g class="level-bands">
      {bands.map(({ id, left, right }) => {
        const width = right - left;
        const name = words.levels[id];
        return (
          <g key={id} class={id === level ? 'level-band level-band-now' : 'level-band'}>
            <rect x={left} y={top} width={px(Math.max(0, width))} height={stripPx} />
            <BandName
              name={name}
              middle={px((left + right) / 2)}
              width={width}
              frame={frame}
              atTop={id === 'voltage-lost'}
            />
          </g>
        );
      })}
      <path class="plot-border" d={borders.join('')} />
    </g>
  );
}

interface BandNameProps {
  name: string;
  middle: number;
  width: number;
  frame: PlotFrame;
  /** Upright names stand below the curve, at the foot of the plot; the last one above it. */
  atTop: boolean;
}

/** The name of a level in its strip, or upright in the plot where the band is too narrow. */
function BandName({ name, middle, width, frame, atTop }: BandNameProps): VNode | null {
  if (width > name.length * letterPx + 4) {
    return (
      <text x={middle} y={frame.top - stripPx + 15.5} text-anchor="middle">
        {name}
      </text>
    );
  }
  if (width < 13) return null;
  const y = atTop ? frame.top + 10 : frame.bottom - 10;
  return (
    <text
      class="plot-note plot-upright"
      transform={`translate(${px(middle + 4.5)} ${y})rotate(-90)`}
      text-anchor={atTop ? 'end' : 'start'}
    >
      {name}
    </text>
  );
}
