import { type MutableRef, useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { PlotSize } from './frame.ts';

/**
 * Size of a drawing on screen, so that its letters keep their size on every screen. The first render, which the
 * server makes as well, takes the size given; the box itself is sized by the style sheet, so nothing moves.
 */
export function usePlotSize(first: PlotSize): { ref: MutableRef<SVGSVGElement | null>; size: PlotSize } {
  const ref = useRef<SVGSVGElement | null>(null);
  const [size, setSize] = useState(first);
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) return;
    const observer = new ResizeObserver(([entry]) => {
      if (!entry) return;
      const width = Math.round(entry.contentRect.width);
      const height = Math.round(entry.contentRect.height);
      // A drawing that is hidden has no size; it keeps the one it had.
      if (width < 1 || height < 1) return;
      setSize((known) => (known.width === width && known.height === height ? known : { width, height }));
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return { ref, size };
}
