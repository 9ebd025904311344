import { useEffect } from 'preact/hooks';

const rounds = 30;

/**
 * Runs a computation some times while the page is idle after waking, so that the learner's first touch meets code that is
 * already compiled: the first call costs ten times the later ones.
 */
export function useWarmUp(compute: () => void): void {
  // Once, with the computation of the first render: warming up again at every change would defeat it.
  useEffect(() => {
    let left = rounds;
    const soon: (work: () => void) => number =
      typeof requestIdleCallback === 'function'
        ? requestIdleCallback
        : (work) => Number(setTimeout(work, 50));
    const cancel = typeof cancelIdleCallback === 'function' ? cancelIdleCallback : clearTimeout;
    let waiting = soon(run);
    function run() {
      compute();
      left -= 1;
      if (left > 0) waiting = soon(run);
    }
    return () => cancel(waiting);
  }, []);
}
