/** Width and height of a drawing [px]. */
export interface PlotSize {
  readonly width: number;
  readonly height: number;
}

/** The inner edges of a plot, in px of the drawing; y runs down. */
export interface PlotFrame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Room around a plot [px]. */
export interface PlotRoom {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Turns a value into a place in px. */
export type Scale = (value: number) => number;

export function frameOf({ width, height }: PlotSize, room: PlotRoom): PlotFrame {
  return { left: room.left, right: width - room.right, top: room.top, bottom: height - room.bottom };
}

interface ScaleEnds {
  readonly from: number;
  readonly to: number;
  readonly start: number;
  readonly end: number;
}

export function linearScale({ from, to, start, end }: ScaleEnds): Scale {
  const perUnit = (end - start) / (to - from);
  return (value) => start + (value - from) * perUnit;
}

/** Ends above 0. */
export function logScale({ from, to, start, end }: ScaleEnds): Scale {
  const origin = Math.log(from);
  const perUnit = (end - start) / (Math.log(to) - origin);
  return (value) => start + (Math.log(value) - origin) * perUnit;
}

/** Keeps a value between two bounds. */
export function clamp(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}
