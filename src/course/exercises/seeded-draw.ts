import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/**
 * FNV-1a, 32 bit, then a final avalanche: without it the low bits of similar paths are alike, and givens that should be
 * drawn apart from one another move together.
 */
function hash(text: string): number {
  let value = 0x811c9dc5;
  for (let place = 0; place < text.length; place += 1) {
    value ^= text.charCodeAt(place);
    value = Math.imul(value, 0x01000193);
  }
  value = Math.imul(value ^ (value >>> 16), 0x85ebca6b);
  value = Math.imul(value ^ (value >>> 13), 0xc2b2ae35);
  return (value ^ (value >>> 16)) | 0;
}

/**
 * A whole number from 0 to `count − 1`, the same on every device. Each path has a stream of its own, so that a given added
 * to an exercise later does not change the numbers that a seed already stands for.
 *
 * @param attempt  counts redraws, when a worksheet does not accept a set of numbers
 */
export function seededDraw(seed: number, attempt: number, path: string, count: number): number {
  const generator = xoroshiro128plus(hash(`${seed}|${attempt}|${path}`));
  return uniformInt(generator, 0, count - 1);
}
