import { useEffect, useState } from 'preact/hooks';

/** A value as it was when it last stood still for a while: what is too slow or too chatty for every frame of a drag. */
export function useSettled<T>(value: T, quietMs: number): T {
  const [settled, setSettled] = useState<T>(() => value);
  useEffect(() => {
    const timer = setTimeout(() => setSettled(() => value), quietMs);
    return () => clearTimeout(timer);
  }, [value, quietMs]);
  return settled;
}
