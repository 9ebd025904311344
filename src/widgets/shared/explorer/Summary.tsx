import type { VNode } from 'preact';
import { useSettled } from '../chart/use-settled.ts';

/** What the plot shows, in words. Words that change in every frame of a drag cannot be read: they follow just after. */
export function Summary({ text }: { text: string }): VNode {
  const settled = useSettled(text, 120);
  return <p class="explorer-summary">{settled}</p>;
}
