import { describe, expect, it } from 'vitest';
import { exampleModel } from '../../../engine/index.ts';
import {
  addPart,
  changePart,
  loadRange,
  mostParts,
  movePart,
  presetNames,
  presetParts,
  removePart,
} from './pattern.ts';

const parts = [1, 2, 3].map((id) => ({ id, loadVa: id * 100, minutes: id }));
const order = (list: readonly { id: number }[]) => list.map(({ id }) => id);

describe('presetParts', () => {
  it('keeps loads on the raster and within what can be set', () => {
    const { min, max } = loadRange(exampleModel);
    for (const preset of presetNames) {
      for (const { loadVa, minutes } of presetParts(preset, exampleModel)) {
        expect(loadVa % 50).toBe(0);
        expect(loadVa).toBeGreaterThanOrEqual(min);
        expect(loadVa).toBeLessThanOrEqual(max);
        expect(minutes).toBeGreaterThan(0);
      }
    }
  });
});

describe('movePart', () => {
  it('moves one place and stays at the ends', () => {
    expect(order(movePart(parts, 2, -1))).toEqual([2, 1, 3]);
    expect(order(movePart(parts, 2, 1))).toEqual([1, 3, 2]);
    expect(order(movePart(parts, 1, -1))).toEqual([1, 2, 3]);
    expect(order(movePart(parts, 3, 1))).toEqual([1, 2, 3]);
  });
});

describe('addPart and removePart', () => {
  it('gives a new part an id of its own', () => {
    expect(order(addPart(removePart(parts, 2)))).toEqual([1, 3, 4]);
  });
  it('never leaves a pattern empty, nor lets it grow without end', () => {
    const [only] = parts;
    expect(removePart(only ? [only] : [], 1)).toHaveLength(1);
    let many = [...parts];
    for (let i = 0; i < 20; i++) many = addPart(many);
    expect(many).toHaveLength(mostParts);
    expect(new Set(order(many)).size).toBe(mostParts);
  });
});

describe('changePart', () => {
  it('changes the one part only', () => {
    expect(changePart(parts, 2, { loadVa: 5 }).map(({ loadVa }) => loadVa)).toEqual([100, 5, 300]);
  });
});
