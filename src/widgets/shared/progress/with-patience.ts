import { storageError } from './save-state.ts';

/** The promise's outcome, or a TimeoutError when it takes longer than `patienceMs`. */
export function withPatience<T>(promise: Promise<T>, patienceMs: number): Promise<T> {
  const lapse = new Promise<never>((_resolve, reject) => {
    setTimeout(reject, patienceMs, storageError('TimeoutError'));
  });
  return Promise.race([promise, lapse]);
}
