export interface PlotPoint {
  readonly x: number;
  readonly y: number;
}

/** Tenths of a pixel are finer than any screen and keep the attribute short. */
export const px = (value: number): number => Math.round(value * 10) / 10;

/** Path data of a line through points; '' for fewer than two. */
export function linePath(points: readonly PlotPoint[]): string {
  if (points.length < 2) return '';
  let path = '';
  for (const { x, y } of points) path += `${path === '' ? 'M' : 'L'}${px(x)} ${px(y)}`;
  return path;
}
