/**
 * The large view of a plate. The drawing itself moves into the dialog and back: a copy would double its ids and, for the
 * largest charts, the page's weight.
 */
function open(figure: Element): void {
  const ground = figure.querySelector('[data-plate-ground]');
  const drawing = ground?.firstElementChild;
  const caption = figure.querySelector('.plate-caption')?.textContent?.trim().replace(/\s+/g, ' ') ?? 'Plate';
  if (!ground || !drawing) return;

  const dialog = document.createElement('dialog');
  dialog.className = 'plate-large';
  dialog.setAttribute('aria-label', caption);
  const head = document.createElement('header');
  const title = document.createElement('p');
  title.textContent = caption;
  const close = document.createElement('button');
  close.type = 'button';
  close.textContent = 'Close';
  head.append(title, close);
  dialog.append(head);

  // The page must not jump while the drawing is away.
  const keep = document.createElement('div');
  keep.style.blockSize = `${drawing.getBoundingClientRect().height}px`;
  const away = (): void => {
    drawing.replaceWith(keep);
    dialog.append(drawing);
  };
  const home = (): void => keep.replaceWith(drawing);
  away();
  // Paper shows the page: there the drawing is in its own place, and back here afterwards.
  const aborted = new AbortController();
  addEventListener('beforeprint', home, aborted);
  addEventListener('afterprint', away, aborted);

  close.addEventListener('click', () => dialog.close());
  dialog.addEventListener('click', ({ target }) => {
    if (target === dialog) dialog.close();
  });
  dialog.addEventListener('close', () => {
    aborted.abort();
    home();
    dialog.remove();
  });
  document.body.append(dialog);
  dialog.showModal();
}

document.addEventListener('click', ({ target }) => {
  if (!(target instanceof Element)) return;
  const figure = target.closest('[data-plate-larger]')?.closest('figure');
  if (figure) open(figure);
});
