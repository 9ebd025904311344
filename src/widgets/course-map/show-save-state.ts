import { effect } from '@preact/signals';
import { save } from '../../../content/strings/en.json';
import type { ProgressStore } from '../shared/progress/progress-store.ts';

/** A sign in the header while something is not on this device as it should be; it leads to the page that helps. */
export function showSaveState(store: ProgressStore, place: HTMLElement): void {
  const link = place.querySelector('a');
  if (!link) return;
  effect(() => {
    const failed = store.saveState.value.state === 'not-saved';
    link.hidden = !failed;
    // Written when it applies, as a status region is read out only on a change of its text.
    link.textContent = failed ? save.unsaved : '';
  });
}
