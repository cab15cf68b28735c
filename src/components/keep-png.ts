/** Pixels that a wall picture has at most, across and down. */
const WALL = { width: 1920, height: 1080 } as const;

/** The size in which a picture fills the wall and keeps its shape, in whole pixels. */
export function wallSize(width: number, height: number): { readonly width: number; readonly height: number } {
  const times = Math.min(WALL.width / width, WALL.height / height);
  return { width: Math.round(width * times), height: Math.round(height * times) };
}

/**
 * The picture at an address as a PNG on a white ground, as large as a wall shows it. It is drawn here, from the file
 * that the page shows; nothing is sent anywhere.
 *
 * @throws where the file or the drawing can't be had
 */
async function png(address: string): Promise<Blob> {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
  const source = URL.createObjectURL(new Blob([await answer.text()], { type: 'image/svg+xml' }));
  try {
    const picture = new Image();
    picture.src = source;
    await picture.decode();
    const canvas = document.createElement('canvas');
    Object.assign(canvas, wallSize(picture.naturalWidth, picture.naturalHeight));
    const pen = canvas.getContext('2d');
    if (!pen) throw new Error('no canvas');
    pen.fillStyle = 'white';
    pen.fillRect(0, 0, canvas.width, canvas.height);
    pen.drawImage(picture, 0, 0, canvas.width, canvas.height);
    return await new Promise((kept, refused) =>
      canvas.toBlob((blob) => (blob ? kept(blob) : refused(new Error('no PNG'))), 'image/png'),
    );
  } finally {
    URL.revokeObjectURL(source);
  }
}

/** Gives a file to the reader under this name. */
function keep(blob: Blob, name: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  // The browser reads it after the click.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** Makes every button with `data-png`, the address of a plate, keep that plate as a PNG. */
export function keepAsPng(say: (words: string) => void): void {
  document.addEventListener('click', ({ target }) => {
    const button = target instanceof Element ? target.closest<HTMLElement>('[data-png]') : null;
    const address = button?.dataset['png'];
    if (!button || !address) return;
    const name = `${address
      .split('/')
      .at(-1)
      ?.replace(/\.svg$/, '')}.png`;
    png(address).then(
      (blob) => {
        keep(blob, name);
        say(`${name} is kept.`);
      },
      () => say(`${name} could not be made here. The SVG file holds the same picture.`),
    );
  });
}
