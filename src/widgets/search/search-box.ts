import { search } from '../../../content/strings/en.json';
import { fill } from '../strings/fill.ts';
import { rankEntries } from './rank-entries.ts';
import type { SearchEntry } from './search-entry.ts';

const shownAtMost = 8;

/**
 * Makes the search field a combobox and fetches its list: arrow keys move through the results
 * while the focus stays in the field, Enter opens, Escape closes.
 */
export function connectSearchBox(box: HTMLElement): void {
  const input = box.querySelector('input');
  const list = box.querySelector('ul');
  const status = box.querySelector('[data-search-status]');
  if (!input || !list || !status) return;
  const base = box.dataset['base'] ?? '/';
  let entries: Promise<SearchEntry[]> | undefined;
  let active = -1;

  const load = (): Promise<SearchEntry[]> => {
    entries ??= fetchEntries(box.dataset['search'] ?? '');
    entries.catch(() => {
      entries = undefined;
    });
    return entries;
  };
  const setActive = (index: number): void => {
    active = index;
    Array.from(list.children).forEach((option, i) => {
      option.setAttribute('aria-selected', String(i === index));
    });
    const option = list.children[index];
    if (option) {
      input.setAttribute('aria-activedescendant', option.id);
      option.scrollIntoView({ block: 'nearest' });
    } else input.removeAttribute('aria-activedescendant');
  };
  const close = (): void => {
    list.hidden = true;
    input.setAttribute('aria-expanded', 'false');
    setActive(-1);
  };
  const show = async (): Promise<void> => {
    const query = input.value;
    if (query.trim() === '') {
      status.textContent = '';
      return close();
    }
    const found = await load().catch(() => undefined);
    if (input.value !== query) return;
    const hits = found === undefined ? [] : rankEntries(found, query, shownAtMost);
    const message = found === undefined ? search.failed : hits.length === 0 ? search.none : undefined;
    list.replaceChildren(
      ...(message === undefined ? hits.map((hit, i) => option(hit, i, base)) : [note(message)]),
    );
    status.textContent =
      message ?? (hits.length === 1 ? search.countOne : fill(search.count, { count: hits.length }));
    list.hidden = false;
    input.setAttribute('aria-expanded', 'true');
    setActive(-1);
  };
  const open = (index: number): void => {
    const url = list.children[index]?.getAttribute('data-url');
    if (url) location.assign(url);
  };

  void load().catch(() => undefined);
  input.addEventListener('input', () => void show());
  input.addEventListener('keydown', (event) => {
    const count = list.hidden ? 0 : list.querySelectorAll('[role=option]').length;
    if (event.key === 'Escape' && !list.hidden) {
      event.preventDefault();
      close();
    } else if (event.key === 'Enter' && count > 0) {
      event.preventDefault();
      open(Math.max(active, 0));
    } else if ((event.key === 'ArrowDown' || event.key === 'ArrowUp') && count > 0) {
      event.preventDefault();
      const step = event.key === 'ArrowDown' ? 1 : -1;
      setActive(active < 0 && step < 0 ? count - 1 : (active + step + count) % count);
    } else if (event.key === 'ArrowDown') void show();
  });
  list.addEventListener('mousedown', (event) => event.preventDefault());
  list.addEventListener('click', (event) => {
    const row = event.target instanceof Element ? event.target.closest('[role=option]') : null;
    if (row) open(Array.from(list.children).indexOf(row));
  });
  input.addEventListener('blur', close);
}

async function fetchEntries(address: string): Promise<SearchEntry[]> {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`search list: ${answer.status}`);
  return answer.json();
}

function option(entry: SearchEntry, index: number, base: string): HTMLElement {
  const item = document.createElement('li');
  item.id = `search-option-${index}`;
  item.className = 'search-option';
  item.setAttribute('role', 'option');
  item.setAttribute('aria-selected', 'false');
  item.dataset['url'] = base + entry.url;
  const title = document.createElement('b');
  title.textContent = entry.title;
  const about = document.createElement('span');
  about.textContent = `${entry.k === 'l' ? search.lesson : search.glossary}. ${entry.text}`;
  item.append(title, about);
  return item;
}

function note(message: string): HTMLElement {
  const item = document.createElement('li');
  item.className = 'search-empty';
  item.setAttribute('role', 'option');
  item.setAttribute('aria-disabled', 'true');
  item.textContent = message;
  return item;
}
