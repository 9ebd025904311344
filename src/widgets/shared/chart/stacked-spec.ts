import type { PlotPoint } from './line-path.ts';

/** A colour of the page by its part in a chart. */
export type Ink = 'first' | 'second' | 'third' | 'limit' | 'axis' | 'accent';

export interface StackedLine {
  readonly points: readonly PlotPoint[];
  readonly ink: Ink;
  readonly width: number;
  readonly dash: readonly number[];
  /** Classes that draw the same line in SVG. */
  readonly line: string;
}

export interface StackedPanel {
  readonly title: string;
  /** Height in proportion to the other panels. */
  readonly weight: number;
  readonly max: number;
  readonly ticks: readonly number[];
  readonly lines: readonly StackedLine[];
}

export interface StackedMark {
  readonly timeS: number;
  readonly letter: string;
  readonly ink: Ink;
  /** false where the letter would lie on the one before */
  readonly shown: boolean;
}

/** Panels above one another with one time axis, and upright marks through all of them. Panels from the top down. */
export interface StackedSpec {
  readonly untilS: number;
  readonly panels: readonly StackedPanel[];
  readonly marks: readonly StackedMark[];
  readonly timeTicks: (widthPx: number) => readonly number[];
  readonly timeLabel: (valueS: number) => string;
  readonly numberLabel: (value: number) => string;
}
