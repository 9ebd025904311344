import type { VNode } from 'preact';
import { useMemo } from 'preact/hooks';
import type { InverterModel } from '../../../engine/index.ts';
import { Axes } from '../../shared/chart/Axes.tsx';
import { frameOf, linearScale } from '../../shared/chart/frame.ts';
import { linePath, px } from '../../shared/chart/line-path.ts';
import { linearTicks } from '../../shared/chart/ticks.ts';
import { usePlotSize } from '../../shared/chart/use-plot-size.ts';
import { axisNumber, duration, fill, percent, volts, words } from '../words.ts';
import {
  drawCurve,
  highestCurrentRatio,
  highestRatio,
  type VoltsAnswer,
  type VoltsSetting,
} from './volts-answer.ts';
import { wavePath } from './wave-path.ts';

const text = words.volts;
const room = { left: 44, right: 14, top: 34, bottom: 152 };
const firstSize = { width: 640, height: 420 };
const cyclesBefore = 3;

interface VoltsPlotProps {
  model: InverterModel;
  setting: VoltsSetting;
  answer: VoltsAnswer;
  label: string;
}

/** Current against voltage with the limit and the point where the output rests; below it the voltage as a wave. */
export function VoltsPlot({ model, setting, answer, label }: VoltsPlotProps): VNode {
  const { ref, size } = usePlotSize(firstSize);
  const { datasheet, limitA } = model;
  const frame = useMemo(() => frameOf(size, room), [size]);
  const { x, y, axes } = useMemo(() => {
    const x = linearScale({ from: 0, to: highestRatio, start: frame.left, end: frame.right });
    const mostA = limitA * highestCurrentRatio;
    const y = linearScale({ from: 0, to: mostA, start: frame.bottom, end: frame.top });
    const most = frame.right - frame.left < 420 ? 6 : 12;
    const axes = (
      <Axes
        frame={frame}
        x={{
          scale: x,
          ticks: linearTicks({ from: 0, to: highestRatio, most }),
          label: (ratio) => axisNumber(Math.round(ratio * 100)),
          title: text.xTitle,
        }}
        y={{
          scale: y,
          ticks: linearTicks({ from: 0, to: mostA, most: 6 }),
          label: axisNumber,
          title: text.yTitle,
        }}
      />
    );
    return { x, y, axes };
  }, [frame, limitA]);
  const curve = linePath(
    drawCurve(model, setting).map((point) => ({ x: x(point.ratio), y: y(point.currentA) })),
  );
  const limitY = px(y(limitA));
  const heldX = px(x(datasheet.voltageHeldRatio));
  const pointX = px(x(answer.voltageRatio));
  const pointY = px(y(answer.currentA));
  const atRight = answer.voltageRatio > 0.55;

  const { voltageLostCycles } = datasheet;
  const cyclesAfter = voltageLostCycles + Math.max(3, Math.round(voltageLostCycles / 6));
  const stopAfterCycles = answer.stopS === null ? null : voltageLostCycles;
  const strip = { left: frame.left, right: frame.right, middle: frame.bottom + 110, amplitude: 26 };
  const perCycle = (strip.right - strip.left) / (cyclesBefore + cyclesAfter);
  const startX = px(strip.left + cyclesBefore * perCycle);
  const stopX = px(strip.left + (cyclesBefore + voltageLostCycles) * perCycle);
  const top = strip.middle - 33;
  const bottom = strip.middle + 33;
  return (
    <svg
      ref={ref}
      class="plot-svg plot-svg-tall"
      viewBox={`0 0 ${size.width} ${size.height}`}
      role="img"
      aria-label={label}
    >
      {axes}
      <rect
        class="plot-shade"
        x={frame.left}
        y={frame.top}
        width={px(heldX - frame.left)}
        height={frame.bottom - frame.top}
      />
      <path class="plot-border" d={`M${heldX} ${frame.top}V${frame.bottom}`} />
      <text class="plot-note" x={heldX - 6} y={frame.top + 17} text-anchor="end">
        {text.notHeld}
      </text>
      <text
        class="plot-note"
        x={frame.right - 4}
        y={answer.held ? limitY - 7 : limitY + 17}
        text-anchor="end"
      >
        {text.limit}
      </text>
      <path class="plot-limit" d={`M${frame.left} ${limitY}H${frame.right}`} />
      <path class="plot-line" d={curve} />
      <path class="plot-lead" d={`M${pointX} ${pointY}V${frame.bottom}`} />
      <circle class="plot-point" cx={pointX} cy={pointY} r="7" />
      <text
        class="plot-tag"
        x={pointX + (atRight ? -12 : 12)}
        y={pointY - 13}
        text-anchor={atRight ? 'end' : 'start'}
      >
        {volts(answer.voltageV)} · {percent(answer.voltageRatio)}
      </text>

      <text class="plot-title" x="0" y={top - 13}>
        {text.wave}
      </text>
      <path
        class="plot-border"
        d={`M${startX} ${top}V${bottom}${stopAfterCycles === null ? '' : `M${stopX} ${top}V${bottom}`}`}
      />
      <path
        class="plot-wave"
        d={wavePath({ cyclesBefore, cyclesAfter, voltageRatio: answer.voltageRatio, stopAfterCycles }, strip)}
      />
      <text class="plot-tag" x={stopX - 6} y={bottom} text-anchor="end">
        {answer.stopS === null ? text.waveHeld : fill(text.waveStop, { time: duration(answer.stopS) })}
      </text>
    </svg>
  );
}
