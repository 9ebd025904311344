import type { VNode } from 'preact';
import { formatQuantity } from '../../../engine/index.ts';
import { px } from '../../shared/chart/line-path.ts';
import { usePlotSize } from '../../shared/chart/use-plot-size.ts';
import { amperes, fill, plain, voltAmperes, watts, words } from '../words.ts';
import { type PowerAnswer, type ShownLoad, squareVa } from './two-loads.ts';

const text = words.power;
const firstSize = { width: 640, height: 420 };
const top = 26;
/** Height of the bars below the triangles [px]. */
const barsPx = 150;

/** Two triangles on squared paper, one scale for both, and bars for current and heat. */
export function PowerPlot({ answer, label }: { answer: PowerAnswer; label: string }): VNode {
  const { ref, size } = usePlotSize(firstSize);
  const half = size.width / 2;
  const narrow = size.width < 480;
  const squarePx = narrow ? 16 : 22;
  const paperPx = size.height - barsPx - top;
  const across = Math.floor((half - (narrow ? 52 : 90)) / squarePx);
  const up = Math.floor((paperPx - 24) / squarePx);
  const sizeVa = squareVa(answer, { across, up });
  const base = top + squarePx * Math.floor((paperPx - 10) / squarePx);
  const vertical = Array.from(
    { length: Math.floor(size.width / squarePx) + 1 },
    (_, i) => `M${i * squarePx} ${top}V${base}`,
  );
  const horizontal = Array.from(
    { length: Math.round((base - top) / squarePx) + 1 },
    (_, i) => `M0 ${top + i * squarePx}H${size.width}`,
  );
  const perVa = squarePx / sizeVa;
  const loads = [
    { load: answer.a, name: text.loadA, left: squarePx, line: 'plot-line' },
    {
      load: answer.b,
      name: text.loadB,
      left: Math.ceil(half / squarePx) * squarePx,
      line: 'plot-line plot-line-2',
    },
  ] as const;
  return (
    <svg
      ref={ref}
      class="plot-svg plot-svg-tall"
      viewBox={`0 0 ${size.width} ${size.height}`}
      role="img"
      aria-label={label}
    >
      <path class="plot-grid" d={vertical.join('') + horizontal.join('')} />
      <text class="plot-title" x={size.width} y={top - 9} text-anchor="end">
        {fill(text.square, {
          size: formatQuantity(sizeVa, 'apparent-power', { significantDigits: 'as-is' }),
        })}
      </text>
      {loads.map(({ load, name, left, line }) => (
        <Triangle
          key={name}
          load={load}
          name={name}
          left={left}
          base={base}
          perVa={perVa}
          line={line}
          narrow={narrow}
        />
      ))}
      <Bars answer={answer} top={size.height - barsPx + 34} width={size.width} />
    </svg>
  );
}

interface TriangleProps {
  load: ShownLoad;
  name: string;
  left: number;
  base: number;
  perVa: number;
  line: string;
  narrow: boolean;
}

function Triangle({ load, name, left, base, perVa, line, narrow }: TriangleProps): VNode {
  const right = px(left + load.realPowerW * perVa);
  const tip = px(base - load.reactivePowerVar * perVa);
  // With hardly any reactive power the words for it would lie on the base line.
  const flat = base - tip < 26;
  return (
    <g>
      <text class="plot-title" x={left} y={top - 9}>
        {narrow ? name.slice(-1) : name}
      </text>
      <path class="plot-area" d={`M${left} ${base}H${right}V${tip}Z`} />
      <path class="plot-side" d={`M${left} ${base}H${right}V${tip}`} />
      <path class={line} d={`M${left} ${base}L${right} ${tip}`} />
      <text class="plot-note" x={px((left + right) / 2)} y={base + 18} text-anchor="middle">
        {fill(text.real, { value: watts(load.realPowerW) })}
      </text>
      {!flat && (
        <text class="plot-note" x={right + 5} y={px((base + tip) / 2 + 4)}>
          {narrow
            ? 'Q'
            : fill(text.reactive, { value: formatQuantity(load.reactivePowerVar, 'reactive-power') })}
        </text>
      )}
      <text
        class="plot-tag"
        x={px((left + right) / 2 - (flat ? 0 : 8))}
        y={px((base + tip) / 2 - 10)}
        text-anchor={flat ? 'middle' : narrow ? 'middle' : 'end'}
      >
        {fill(text.apparent, { value: voltAmperes(load.apparentPowerVa) })}
      </text>
    </g>
  );
}

/** Current and heat of both loads; the longer bar of each pair has the full length. */
function Bars({ answer, top, width }: { answer: PowerAnswer; top: number; width: number }): VNode {
  const { a, b, currentRatio, heatRatio } = answer;
  const full = width - 128;
  const rows = [
    {
      key: 'currentA',
      title: text.current,
      name: 'A',
      part: 1 / Math.max(1, currentRatio),
      value: amperes(a.currentA),
    },
    { key: 'currentB', title: '', name: 'B', part: Math.min(1, currentRatio), value: amperes(b.currentA) },
    { key: 'heatA', title: text.heat, name: 'A', part: 1 / Math.max(1, heatRatio), value: '1' },
    { key: 'heatB', title: '', name: 'B', part: Math.min(1, heatRatio), value: plain(heatRatio) },
  ];
  return (
    <g>
      {rows.map(({ key, title, name, part, value }, i) => {
        const y = top + i * 20 + (i > 1 ? 26 : 0);
        return (
          <g key={key}>
            <text class="plot-title" x="0" y={y - 9}>
              {title}
            </text>
            <text x="0" y={y + 9}>
              {name}
            </text>
            <rect
              class={name === 'A' ? 'plot-bar' : 'plot-bar plot-bar-2'}
              x="18"
              y={y - 2}
              width={px(full * part)}
              height="13"
            />
            <text class="plot-tag" x={px(18 + full * part + 8)} y={y + 9}>
              {value}
            </text>
          </g>
        );
      })}
    </g>
  );
}
