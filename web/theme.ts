/** Light sheet or dark print: the system's wish until the person says otherwise, then remembered. */
export type Theme = 'light' | 'dark';

const kept = 'fettle.theme';

/** The theme chosen here, else the system's. */
export function theme(): Theme {
  const chosen = localStorage.getItem(kept);
  if (chosen === 'light' || chosen === 'dark') return chosen;
  return matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'light';
}

/** Puts the theme on the page; call before the first drawing and after every change. */
function applyTheme(): void {
  document.documentElement.dataset.theme = theme();
}

/** Turns the sheet over and remembers it. */
export function turnOver(): void {
  localStorage.setItem(kept, theme() === 'dark' ? 'light' : 'dark');
  applyTheme();
}

matchMedia('(prefers-color-scheme: dark)').addEventListener('change', applyTheme);
applyTheme();
