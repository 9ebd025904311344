import type { ProgressEnvironment } from './environment.ts';

const name = 'headroom-progress';

/** One writer at a time, and word to the other tabs after each write. Works alone where a browser has neither. */
export function otherTabs(environment: ProgressEnvironment, onChange: () => void) {
  let channel: ReturnType<ProgressEnvironment['channel']>;

  return {
    listen(): void {
      try {
        channel = environment.channel(name);
        if (channel) channel.onmessage = onChange;
      } catch {
        // Without a channel the other tabs see the change at their next write or reload.
      }
    },

    tell(): void {
      try {
        channel?.postMessage('saved');
      } catch {
        // As above.
      }
    },

    /** Runs `write` while no other tab writes. A tab frozen with the lock in hand delays, but never stops, the others. */
    async alone<T>(write: () => Promise<T>): Promise<T> {
      let hasStarted = false;
      const start = (): Promise<T> => {
        hasStarted = true;
        return write();
      };
      try {
        const locks = environment.locks();
        if (locks)
          return await locks.request(name, { signal: AbortSignal.timeout(environment.patienceMs) }, start);
      } catch (cause) {
        if (hasStarted) throw cause;
      }
      // The database still runs one writing transaction after another, so this is safe without the lock.
      return write();
    },
  };
}
