import type { Ink } from './stacked-spec.ts';

export type Inks = Readonly<Record<Ink | 'soft' | 'grid' | 'paper' | 'font', string>>;

const tokens = {
  first: '--chart-1',
  second: '--chart-2',
  third: '--chart-3',
  limit: '--chart-limit',
  axis: '--chart-axis',
  accent: '--accent',
  soft: '--ink-soft',
  grid: '--chart-grid',
  paper: '--paper',
} as const;

/** The page's colours as they are now, light or dark, for a canvas that knows no custom properties. */
export function readInks(canvas: HTMLCanvasElement): Inks {
  const probe = document.createElement('span');
  canvas.parentElement?.append(probe);
  const inks = Object.fromEntries(
    Object.entries(tokens).map(([name, token]) => {
      probe.style.color = `var(${token})`;
      return [name, getComputedStyle(probe).color];
    }),
  );
  const font = getComputedStyle(probe).fontFamily;
  probe.remove();
  return { ...inks, font } as Inks;
}
