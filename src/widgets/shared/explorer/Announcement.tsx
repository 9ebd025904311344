import type { VNode } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

/** How long nothing may change before it is read out: a drag is told once, at its end. */
const quietMs = 900;
/** How long the words stay, so that a reader who browses the page meets them only once, in the paragraph above. */
const stayMs = 6000;

/** Tells a screen reader what has changed. Silent at first: the paragraph itself can be read. */
export function Announcement({ text }: { text: string }): VNode {
  const place = useRef<HTMLParagraphElement>(null);
  const told = useRef(text);
  useEffect(() => {
    if (text === told.current) return;
    const say = (words: string) => {
      if (place.current) place.current.textContent = words;
    };
    let timer = setTimeout(() => {
      told.current = text;
      say(text);
      timer = setTimeout(say, stayMs, '');
    }, quietMs);
    return () => clearTimeout(timer);
  }, [text]);
  return <p class="visually-hidden" aria-live="polite" ref={place} />;
}
