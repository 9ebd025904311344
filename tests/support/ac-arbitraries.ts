import fc from 'fast-check';
import { expect } from 'vitest';

export const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
export const powerW = between(1, 1e6);
export const powerFactor = between(0.05, 1);
export const voltageV = between(10, 1000);
export const currentA = between(0, 1000);
export const angleDeg = between(-180, 180);
export const direction = fc.constantFrom('lagging' as const, 'leading' as const);

/** Equal to nine digits of the larger of the two, or of `scale` where differences of large numbers are compared. */
export function expectSame(
  found: number,
  expected: number,
  scale = Math.max(Math.abs(found), Math.abs(expected)),
): void {
  expect(Math.abs(found - expected), `${found} against ${expected}`).toBeLessThanOrEqual(
    1e-9 * scale + 1e-12,
  );
}
