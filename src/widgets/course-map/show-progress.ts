import type { ProgressStore } from '../shared/progress/progress-store.ts';
import { showChecklist } from './show-checklist.ts';
import { showMap } from './show-map.ts';
import { showSaveState } from './show-save-state.ts';

/** Connects every place of this page that shows or changes progress with the store. */
export function showProgress(store: ProgressStore): void {
  const signs = document.querySelector<HTMLElement>('[data-save-state]');
  const checklist = document.querySelector<HTMLElement>('[data-lesson-checklist]');
  const map = document.querySelector<HTMLElement>('[data-course-map]');
  if (signs) showSaveState(store, signs);
  void store.start().then(() => {
    if (checklist) showChecklist(store, checklist);
    if (map) showMap(store, map);
  });
}
