/**
 * What was typed or picked on the server's sheet before this code arrived. Waking the sheet empties its fields; these entries
 * are then put back, so that nothing typed early on a slow line is lost. To be called in the first render: the fields are emptied
 * right after it.
 */
export function earlyEntries(): Record<string, string> {
  if (typeof document === 'undefined') return {};
  const entries: Record<string, string> = {};
  for (const step of document.querySelectorAll<HTMLElement>('[data-step]')) {
    const field = step.querySelector<HTMLInputElement>('input[type="text"], input[type="radio"]:checked');
    const id = step.dataset['step'];
    if (id !== undefined && field && field.value !== '') entries[id] = field.value;
  }
  return entries;
}
