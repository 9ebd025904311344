/**
 * Fetches the search when a reader first goes to its field, so that a page that is only read pays nothing for it.
 * What was typed meanwhile is searched for as soon as it is there.
 */
export function wakeSearch(box: HTMLElement): void {
  const input = box.querySelector('input');
  const wake = (): void => {
    void import('./search-box.ts').then(({ connectSearchBox }) => {
      connectSearchBox(box);
      if (input?.value) input.dispatchEvent(new Event('input'));
    });
  };
  // A reader can be in the field before this script is.
  if (input === document.activeElement) wake();
  else input?.addEventListener('focus', wake, { once: true });
}
