/** A point in the drawing's own units. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** The path through points, as straight pieces, to a tenth of a unit. */
export function linePath(points: readonly Point[]): string {
  return points.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`).join('');
}
