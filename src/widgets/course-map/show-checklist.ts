import { effect } from '@preact/signals';
import { lesson as words } from '../../../content/strings/en.json';
import type { ProgressStore } from '../shared/progress/progress-store.ts';

/** Enables the "I can" list of a lesson and keeps its ticks; opening the page notes the visit. */
export function showChecklist(store: ProgressStore, place: HTMLElement): void {
  const uid = place.dataset['lessonChecklist'] ?? '';
  const boxes = Array.from(place.querySelectorAll<HTMLInputElement>('[data-can-do]'));
  const button = place.querySelector<HTMLButtonElement>('[data-mark-done]');
  const state = place.querySelector('[data-done-state]');

  for (const box of boxes) {
    const id = box.dataset['canDo'] ?? '';
    box.disabled = false;
    box.addEventListener(
      'change',
      () => void store.markLesson(uid, { kind: 'can-do', id, ticked: box.checked }),
    );
  }
  button?.addEventListener('click', () => void store.markLesson(uid, { kind: 'done' }));

  effect(() => {
    const mark = store.progress.value.lessons[uid];
    for (const box of boxes) box.checked = mark?.canDo.includes(box.dataset['canDo'] ?? '') ?? false;
    const isDone = mark !== undefined && mark.doneAt !== null;
    if (button) button.disabled = isDone;
    if (state) state.textContent = isDone ? words.isDone : '';
  });
  void store.markLesson(uid, { kind: 'visited' });
}
