const storageKey = 'headroom.theme';
const themes = ['auto', 'light', 'dark'] as const;
type Theme = (typeof themes)[number];

function isTheme(value: string | undefined): value is Theme {
  return themes.some((theme) => theme === value);
}

/** Makes a select of the three themes work: it shows the one in force and keeps the choice on this device. */
export function connectThemeSwitch(select: HTMLSelectElement): void {
  const root = document.documentElement;
  const current = root.dataset['theme'];
  select.value = isTheme(current) ? current : 'auto';
  select.disabled = false;
  select.addEventListener('change', () => {
    const choice = select.value;
    if (!isTheme(choice)) return;
    if (choice === 'auto') delete root.dataset['theme'];
    else root.dataset['theme'] = choice;
    try {
      if (choice === 'auto') localStorage.removeItem(storageKey);
      else localStorage.setItem(storageKey, choice);
    } catch {
      // Storage may be closed to us (private window): the choice then lasts as long as the page.
    }
  });
}
