import { browserEnvironment } from './environment.ts';
import { createProgressStore } from './progress-store.ts';

/** The one store that every island of a page shares. Islands call `start()` after mount, never while rendering. */
export const courseProgress = createProgressStore(browserEnvironment);
