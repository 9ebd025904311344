import {
  Chart,
  type ChartConfiguration,
  type ChartDataset,
  LinearScale,
  LineController,
  LineElement,
  type Plugin,
  PointElement,
  type ScaleOptionsByType,
} from 'chart.js';
import { readInks } from './read-inks.ts';
import type { StackedSpec } from './stacked-spec.ts';

// Only what a line needs: a third of the package.
Chart.register(LineController, LineElement, PointElement, LinearScale);

export interface StackedChart {
  /** Draws other figures; panels and lines stay the same in number and kind. */
  draw(spec: StackedSpec): void;
  /** Takes the colours of the page anew: the reader has changed the theme. */
  recolour(): void;
  destroy(): void;
}

type LineChart = Chart<'line', { x: number; y: number }[]>;

/**
 * Panels with one time axis on a canvas. Kept fast: no animation, nothing parsed, no points, no hover, and its series
 * have been thinned to the width of the plot before they come here.
 */
export function createStackedChart(canvas: HTMLCanvasElement, first: StackedSpec): StackedChart {
  let spec = first;
  let inks = readInks(canvas);
  const marks: Plugin<'line'> = {
    id: 'marks',
    afterDatasetsDraw: (drawn) => {
      const { ctx, chartArea, scales: places } = drawn;
      const { x: across } = places;
      ctx.save();
      ctx.font = `600 13px ${inks.font}`;
      ctx.lineWidth = 4;
      ctx.lineJoin = 'round';
      ctx.strokeStyle = inks.paper;
      spec.panels.forEach((panel, place) => {
        const scale = places[`y${place}`];
        if (!scale) return;
        ctx.fillStyle = inks.soft;
        ctx.strokeText(panel.title, chartArea.left + 8, scale.top + 17);
        ctx.fillText(panel.title, chartArea.left + 8, scale.top + 17);
      });
      ctx.lineWidth = 1;
      ctx.textAlign = 'center';
      for (const { timeS, letter, ink, shown } of spec.marks) {
        const x = across?.getPixelForValue(timeS) ?? 0;
        ctx.strokeStyle = inks[ink];
        ctx.fillStyle = inks[ink];
        ctx.setLineDash([2, 3]);
        ctx.beginPath();
        ctx.moveTo(x, chartArea.top);
        ctx.lineTo(x, chartArea.bottom);
        ctx.stroke();
        if (shown) ctx.fillText(letter, x, chartArea.top - 5);
      }
      ctx.restore();
    },
  };

  const chart: LineChart = new Chart(canvas, configuration());

  function configuration(): ChartConfiguration<'line', { x: number; y: number }[]> {
    return {
      type: 'line',
      data: { datasets: datasets() },
      options: {
        animation: false,
        parsing: false,
        normalized: true,
        events: [],
        maintainAspectRatio: false,
        layout: { padding: { top: 18, right: 8 } },
        elements: { point: { radius: 0, hitRadius: 0 }, line: { tension: 0 } },
        scales: scales(),
      },
      plugins: [marks],
    };
  }

  function datasets(): ChartDataset<'line', { x: number; y: number }[]>[] {
    return spec.panels.flatMap((panel, place) =>
      panel.lines.map((line) => ({
        data: line.points as { x: number; y: number }[],
        yAxisID: `y${place}`,
        borderColor: inks[line.ink],
        borderWidth: line.width,
        borderDash: [...line.dash],
        borderJoinStyle: 'round' as const,
      })),
    );
  }

  function axis(ticks: (width: number) => readonly number[], label: (value: number) => string) {
    return {
      afterBuildTicks: (scale: { ticks: { value: number }[]; chart: { width: number } }) => {
        scale.ticks = ticks(scale.chart.width).map((value) => ({ value }));
      },
      grid: { color: inks.grid, tickLength: 4 },
      border: { color: inks.axis },
      ticks: {
        callback: (value: number | string) => label(Number(value)),
        color: inks.axis,
        font: { family: inks.font, size: 13 },
        autoSkip: false,
        maxRotation: 0,
      },
    };
  }

  function scales(): Record<string, Partial<ScaleOptionsByType<'linear'>>> {
    const result: Record<string, object> = {
      x: {
        type: 'linear',
        min: 0,
        max: spec.untilS,
        ...axis((width) => spec.timeTicks(width), spec.timeLabel),
      },
    };
    spec.panels.forEach((panel, place) => {
      result[`y${place}`] = {
        type: 'linear',
        position: 'left',
        stack: 'panels',
        stackWeight: panel.weight,
        // The first in a stack stands lowest.
        weight: -place,
        min: 0,
        max: panel.max,
        ...axis(() => spec.panels[place]?.ticks ?? [], spec.numberLabel),
      };
    });
    return result as Record<string, Partial<ScaleOptionsByType<'linear'>>>;
  }

  /** New figures in the old objects: given new ones, the chart would build every line and axis anew. */
  const renew = () => {
    const lines = spec.panels.flatMap((panel) => panel.lines);
    chart.data.datasets.forEach((dataset, place) => {
      dataset.data = (lines[place]?.points ?? []) as { x: number; y: number }[];
    });
    const axes = chart.options.scales as Record<string, { max?: number } | undefined>;
    const ends = [['x', spec.untilS] as const, ...spec.panels.map(({ max }, i) => [`y${i}`, max] as const)];
    for (const [name, max] of ends) {
      const axisOptions = axes[name];
      if (axisOptions) axisOptions.max = max;
    }
    chart.update('none');
  };
  return {
    draw(next) {
      if (next === spec) return;
      spec = next;
      renew();
    },
    recolour() {
      inks = readInks(canvas);
      chart.data.datasets = datasets();
      chart.options.scales = scales();
      chart.update('none');
    },
    destroy: () => chart.destroy(),
  };
}
