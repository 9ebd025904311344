/**
 * Shows stored progress on pages that are plain HTML: the "not saved" sign of the header, the checklist of a lesson,
 * the course map. The store is fetched when the browser is idle, so that no page waits for it, and until then
 * every page shows what the server wrote.
 */
export function wakeProgress(): void {
  const wake = (): void => {
    void Promise.all([import('../shared/progress/course-progress.ts'), import('./show-progress.ts')]).then(
      ([{ courseProgress }, { showProgress }]) => showProgress(courseProgress),
    );
  };
  // Safari has no requestIdleCallback.
  if ('requestIdleCallback' in window) requestIdleCallback(wake, { timeout: 2000 });
  else setTimeout(wake, 300);
}
