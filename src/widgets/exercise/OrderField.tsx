import type { VNode } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { orderFromText, orderToText } from '../../course/answers/order-text.ts';
import type { FieldProps } from './NumericField.tsx';
import { fill, words } from './words.ts';

/** A sequence put in order by buttons: it works with keyboard and thumb alike. Untouched, it counts as not answered. */
export function OrderField({
  text,
  isLocked,
  labelledBy,
  describedBy,
  options,
  onEnter,
}: FieldProps & { options: readonly { id: string; text: string }[] }): VNode {
  const list = useRef<HTMLOListElement>(null);
  const [lastMove, setLastMove] = useState('');
  const entered = orderFromText(text);
  const order = entered.length === options.length ? entered : options.map((option) => option.id);
  const wordsOf = (id: string): string => options.find((option) => option.id === id)?.text ?? id;

  function move(from: number, to: number): void {
    const next = [...order];
    const [moved = ''] = next.splice(from, 1);
    next.splice(to, 0, moved);
    onEnter(orderToText(next));
    setLastMove(fill(words.labels.moved, { text: wordsOf(moved), place: to + 1, count: next.length }));
    // The entry keeps the focus while it travels; at an end its other button takes over.
    requestAnimationFrame(() => {
      const buttons = list.current?.children[to]?.querySelectorAll('button');
      const wanted = buttons?.[to < from ? 0 : 1];
      (wanted?.disabled ? buttons?.[to < from ? 1 : 0] : wanted)?.focus();
    });
  }

  return (
    <>
      <ol class="ws-order" ref={list} aria-labelledby={labelledBy} aria-describedby={describedBy}>
        {order.map((id, place) => (
          <li key={id} data-option={id}>
            <span>{wordsOf(id)}</span>
            <button
              type="button"
              class="btn"
              disabled={isLocked || place === 0}
              aria-label={fill(words.labels.moveUp, { text: wordsOf(id) })}
              onClick={() => move(place, place - 1)}
            >
              ↑
            </button>
            <button
              type="button"
              class="btn"
              disabled={isLocked || place === order.length - 1}
              aria-label={fill(words.labels.moveDown, { text: wordsOf(id) })}
              onClick={() => move(place, place + 1)}
            >
              ↓
            </button>
          </li>
        ))}
      </ol>
      <p class="visually-hidden" role="status">
        {lastMove}
      </p>
    </>
  );
}
