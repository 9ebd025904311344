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
import { drawMarks, drawSheet, room } from './draw-sheet.ts';
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

/** An axis that only measures. Its grid and numbers are drawn by `drawSheet`: the package resolves options for each tick anew. */
const bare = {
  afterBuildTicks: (scale: { ticks: unknown[] }) => {
    scale.ticks = [];
  },
  grid: { display: false },
  border: { display: false },
  ticks: { display: false },
};

type LineChart = Chart<'line', { x: number; y: number }[]>;

/**
 * Panels with one time axis on a canvas. Kept fast: no animation, nothing parsed, no points, no hover, and its series
 * have been thinned to the width of the plot before they come here.
 */
export function createStackedChart(canvas: HTMLCanvasElement, first: StackedSpec): StackedChart {
  let spec = first;
  let inks = readInks(canvas);
  const sheet: Plugin<'line'> = {
    id: 'sheet',
    beforeDatasetsDraw: ({ ctx, chartArea, scales, width }) =>
      drawSheet(ctx, { spec, inks, chartArea, scales, width }),
    afterDatasetsDraw: ({ ctx, chartArea, scales, width }) =>
      drawMarks(ctx, { spec, inks, chartArea, scales, width }),
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
        layout: { padding: room },
        elements: { point: { radius: 0, hitRadius: 0 }, line: { tension: 0 } },
        scales: scales(),
      },
      plugins: [sheet],
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

  function scales(): Record<string, Partial<ScaleOptionsByType<'linear'>>> {
    const result: Record<string, object> = {
      x: {
        type: 'linear',
        min: 0,
        max: spec.untilS,
        ...bare,
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
        ...bare,
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
