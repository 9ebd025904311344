/**
 * Calls once the press under way, if any, is over. A field left by a press may get its message only then: the message moves
 * what stands below it, and a button that moves away from under the finger is never clicked.
 */
export function afterPress(call: () => void): void {
  const afterClick = (): void => void setTimeout(call);
  if (document.documentElement.matches(':active')) addEventListener('mouseup', afterClick, { once: true });
  else afterClick();
}
