import { THEME_KEY } from './first-paint.ts';

const root = document.documentElement;

function isForced(value: string | null): value is 'light' | 'dark' {
  return value === 'light' || value === 'dark';
}

function keep(value: string): void {
  try {
    if (isForced(value)) localStorage.setItem(THEME_KEY, value);
    else localStorage.removeItem(THEME_KEY);
  } catch {
    // Without storage the choice holds for this page alone.
  }
}

function show(value: string | null): void {
  if (isForced(value)) root.dataset['theme'] = value;
  else delete root.dataset['theme'];
  const choice = isForced(value) ? value : 'system';
  for (const input of document.querySelectorAll<HTMLInputElement>('input[name="theme"]')) {
    input.checked = input.value === choice;
  }
}

show(root.dataset['theme'] ?? null);

document.addEventListener('change', ({ target }) => {
  if (!(target instanceof HTMLInputElement) || target.name !== 'theme') return;
  keep(target.value);
  show(target.value);
});

// Another window of the same workbook follows at once: a projector is often the second window.
addEventListener('storage', ({ key, newValue }) => {
  if (key === THEME_KEY || key === null) show(newValue);
});
