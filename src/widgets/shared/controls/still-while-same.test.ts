import { describe, expect, it } from 'vitest';
import { sameButHandlers } from './still-while-same.ts';

describe('sameButHandlers', () => {
  it('overlooks new handlers and sees new data', () => {
    const before = { value: 1, text: '1 A', onChange: () => 1 };
    expect(sameButHandlers(before, { ...before, onChange: () => 2 })).toBe(true);
    expect(sameButHandlers(before, { ...before, value: 2 })).toBe(false);
    expect(sameButHandlers({ value: 1 }, { value: 1, text: 'new' })).toBe(false);
  });
});
