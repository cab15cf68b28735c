/** A name that no other page gives, by chance alone; it stands for nobody and for no device. */
export const pageName = (): string =>
  [...crypto.getRandomValues(new Uint32Array(2))].map((part) => part.toString(36)).join('');
