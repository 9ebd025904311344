import { type ExplorerModule, explorerName } from './explorer-name.ts';

const loaders = import.meta.glob<ExplorerModule>('./explorers/*.tsx');

/**
 * Wakes each explorer on the page when it comes near the screen: its code is fetched then and not before.
 * Astro's own islands need the component's name when the page is compiled; a lesson gives an id instead.
 */
export function startExplorers(): void {
  const observer = new IntersectionObserver(
    (entries) => {
      for (const entry of entries) {
        if (!entry.isIntersecting || !(entry.target instanceof HTMLElement)) continue;
        observer.unobserve(entry.target);
        void wake(entry.target);
      }
    },
    { rootMargin: '200px' },
  );
  for (const place of document.querySelectorAll('[data-explorer]')) observer.observe(place);
}

async function wake(place: HTMLElement): Promise<void> {
  const name = explorerName(place.dataset['explorer'] ?? '');
  const [{ h, hydrate }, module] = await Promise.all([
    import('preact'),
    loaders[`./explorers/${name}.tsx`]?.(),
  ]);
  const Explorer = module?.[name];
  if (Explorer === undefined) return;
  hydrate(h(Explorer, {}), place);
  place.dataset['awake'] = '';
}
