import type { VNode } from 'preact';
import { useMemo, useRef } from 'preact/hooks';
import type { InverterModel } from '../../../engine/index.ts';
import { Axes } from '../../shared/chart/Axes.tsx';
import { clamp, frameOf, linearScale, logScale } from '../../shared/chart/frame.ts';
import { linePath, px } from '../../shared/chart/line-path.ts';
import { linearTicks, logTimeTicks } from '../../shared/chart/ticks.ts';
import { usePlotSize } from '../../shared/chart/use-plot-size.ts';
import { axisNumber, axisTime, words } from '../words.ts';
import { LevelBands, stripPx } from './LevelBands.tsx';
import {
  greatestLoadA,
  longestS,
  overloadCurve,
  type StopAnswer,
  type StopPoint,
  shortestS,
  voltageLostS,
} from './overload-curve.ts';
import { stopTimeText } from './stop-words.ts';

const room = { left: 58, right: 14, top: 46, bottom: 46 };
const firstSize = { width: 640, height: 340 };

interface StopPlotProps {
  model: InverterModel;
  answer: StopAnswer;
  loadA: number;
  label: string;
  onLoad: (currentA: number) => void;
}

/** The inverse-time curve with the load on it. A pointer may drag the load; the slider does the same. */
export function StopPlot({ model, answer, loadA, label, onLoad }: StopPlotProps): VNode {
  const { ref, size } = usePlotSize(firstSize);
  const dragging = useRef(false);
  const frame = useMemo(() => frameOf(size, room), [size]);
  const fromA = Math.floor(model.continuousA * 0.5);
  const toA = greatestLoadA(model);
  const { x, y, axes, reference } = useMemo(() => {
    const x = linearScale({ from: fromA, to: toA, start: frame.left, end: frame.right });
    const y = logScale({ from: shortestS, to: longestS, start: frame.bottom, end: frame.top });
    const most = Math.max(3, Math.floor((frame.right - frame.left) / 50));
    const axes = (
      <Axes
        frame={frame}
        titleGap={stripPx + 9}
        x={{
          scale: x,
          ticks: linearTicks({ from: fromA, to: toA, most }),
          label: axisNumber,
          title: words.timeToStop.xTitle,
        }}
        y={{
          scale: y,
          ticks: logTimeTicks({ from: shortestS, to: longestS }),
          label: axisTime,
          title: words.timeToStop.yTitle,
        }}
      />
    );
    const points = overloadCurve({ model, ambientC: model.datasheet.referenceAmbientC });
    return { x, y, axes, reference: curvePath(points) };

    function curvePath(points: readonly StopPoint[]): string {
      return linePath(
        points
          .filter(({ currentA }) => currentA >= fromA)
          .map((point) => ({ x: x(point.currentA), y: y(point.timeS) })),
      );
    }
  }, [model, frame, fromA, toA]);
  const curve = linePath(
    answer.curve
      .filter(({ currentA }) => currentA >= fromA)
      .map((point) => ({ x: x(point.currentA), y: y(point.timeS) })),
  );
  const lostY = px(y(voltageLostS(model)));
  const limitX = px(x(model.limitA));
  const markX = px(clamp(x(loadA), frame.left, frame.right));
  const markY = px(answer.timeS === null ? frame.top : y(clamp(answer.timeS, shortestS, longestS)));
  const take = (event: PointerEvent & { currentTarget: SVGSVGElement }) => {
    const at = event.clientX - event.currentTarget.getBoundingClientRect().left;
    onLoad(fromA + ((at - frame.left) / (frame.right - frame.left)) * (toA - fromA));
  };
  const rightHalf = markX > (frame.left + frame.right) / 2;
  return (
    <svg
      ref={ref}
      class="plot-svg plot-drag"
      viewBox={`0 0 ${size.width} ${size.height}`}
      role="img"
      aria-label={label}
      onPointerDown={(event) => {
        dragging.current = true;
        event.currentTarget.setPointerCapture(event.pointerId);
        take(event);
      }}
      onPointerMove={(event) => {
        if (dragging.current) take(event);
      }}
      onLostPointerCapture={() => {
        dragging.current = false;
      }}
    >
      {axes}
      <LevelBands frame={frame} x={x} from={fromA} to={toA} bounds={answer.bounds} level={answer.level} />
      <path class="plot-line plot-thin plot-line-2" d={reference} />
      <path class="plot-line" d={`${curve}M${limitX} ${lostY}H${frame.right}`} />
      <path
        class="plot-lead"
        d={`M${markX} ${frame.bottom}V${markY}${answer.timeS === null ? '' : `H${frame.left}`}`}
      />
      {answer.timeS === null ? (
        <path class="plot-point" d={`M${markX} ${markY - 2}l9 15h-18z`} />
      ) : (
        <circle class="plot-point" cx={markX} cy={markY} r="7" />
      )}
      <text
        class="plot-tag"
        x={markX + (rightHalf ? -13 : 13)}
        y={clamp(markY + (answer.timeS === null ? 12 : -11), frame.top + 14, frame.bottom - 8)}
        text-anchor={rightHalf ? 'end' : 'start'}
      >
        {stopTimeText(answer.timeS)}
      </text>
    </svg>
  );
}
