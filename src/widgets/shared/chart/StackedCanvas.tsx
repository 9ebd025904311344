import type { VNode } from 'preact';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { StackedChart } from './stacked-chart.ts';
import type { StackedSpec } from './stacked-spec.ts';

/** The panels on a canvas. The chart package is fetched when this wakes; until it is there, the drawing below it shows. */
export function StackedCanvas({ spec, label }: { spec: StackedSpec; label: string }): VNode {
  const canvas = useRef<HTMLCanvasElement>(null);
  const newest = useRef(spec);
  const [chart, setChart] = useState<StackedChart | null>(null);
  newest.current = spec;

  useEffect(() => {
    let made: StackedChart | null = null;
    let gone = false;
    void import('./stacked-chart.ts').then(({ createStackedChart }) => {
      if (gone || !canvas.current) return;
      made = createStackedChart(canvas.current, newest.current);
      setChart(made);
    });
    return () => {
      gone = true;
      made?.destroy();
    };
  }, []);

  // Before the browser paints: the chart and the words beside it change in the same frame.
  useLayoutEffect(() => chart?.draw(spec), [chart, spec]);

  useEffect(() => {
    if (!chart) return;
    const recolour = () => chart.recolour();
    const scheme = matchMedia('(prefers-color-scheme: dark)');
    const theme = new MutationObserver(recolour);
    scheme.addEventListener('change', recolour);
    theme.observe(document.documentElement, { attributes: true, attributeFilter: ['data-theme'] });
    return () => {
      scheme.removeEventListener('change', recolour);
      theme.disconnect();
    };
  }, [chart]);

  return (
    <div class="timeline-canvas" data-ready={chart ? '' : undefined}>
      <canvas ref={canvas} role="img" aria-label={label} />
    </div>
  );
}
