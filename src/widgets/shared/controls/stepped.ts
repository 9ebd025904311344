/** The nearest value that a control can hold: on its raster, within its bounds; what is no number becomes the least. */
export function stepped(given: { value: number; min: number; max: number; step: number }): number {
  const { value, min, max, step } = given;
  if (Number.isNaN(value)) return min;
  const raster = min + Math.round((value - min) / step) * step;
  return Number(Math.min(max, Math.max(min, raster)).toPrecision(12));
}
