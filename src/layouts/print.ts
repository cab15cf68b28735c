import { printFoot } from './print-foot.ts';

/** The address that a printed sheet leads back to: with its figures and seeds, without the place on the page. */
function address(): string {
  return location.href.replace(/#.*$/, '');
}

function writeAddress(): void {
  const foot = document.querySelector<HTMLStyleElement>('[data-print-foot]');
  if (foot) foot.textContent = printFoot(foot.dataset['title'], address());
  for (const place of document.querySelectorAll('[data-address]')) place.textContent = address();
}

/** The code is drawn when somebody prints, so that no page carries it before; it holds the figures in the address too. */
async function drawCode(): Promise<void> {
  const { qrSvg } = await import('../figures/qr.ts');
  for (const place of document.querySelectorAll('[data-qr]')) place.innerHTML = qrSvg(address());
}

let opened: HTMLDetailsElement[] = [];

addEventListener('beforeprint', () => {
  writeAddress();
  opened = [...document.querySelectorAll<HTMLDetailsElement>('details:not([open])')];
  for (const details of opened) details.open = true;
});

addEventListener('afterprint', () => {
  for (const details of opened) details.open = false;
  opened = [];
});

document.addEventListener('click', async ({ target }) => {
  if (!(target instanceof Element) || !target.closest('[data-print]')) return;
  // Too long an address has no code; the sheet is printed all the same.
  await drawCode().catch(() => undefined);
  print();
});
