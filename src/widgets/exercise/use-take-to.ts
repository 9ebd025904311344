import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

/**
 * Takes the learner from a button at the foot of the sheet to what it has changed further up, which may be screens away.
 * The function returned names the place; focus and page go there once one of `changes` has been drawn.
 */
export function useTakeTo(sheet: RefObject<HTMLElement>, changes: readonly unknown[]) {
  const wanted = useRef<string | null>(null);
  useEffect(() => {
    const place = wanted.current && sheet.current?.querySelector<HTMLElement>(wanted.current);
    wanted.current = null;
    if (!place) return;
    place.focus({ preventScroll: true });
    (place.closest('li') ?? place).scrollIntoView({ block: 'nearest' });
  }, changes);
  return (selector: string): void => {
    wanted.current = selector;
  };
}
