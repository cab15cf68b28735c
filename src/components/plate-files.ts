import { type GalleryPlate, galleryFiles } from './gallery.ts';

let files: ReadonlyMap<string, GalleryPlate> | undefined;

/** A drawing of the page of plates by its file name, or a build error that names those there are. */
export function plateFile(file: string): GalleryPlate {
  files ??= new Map(galleryFiles().map((plate) => [plate.file, plate]));
  const found = files.get(file);
  if (!found) throw new Error(`There is no plate '${file}'. There are: ${[...files.keys()].join(', ')}.`);
  return found;
}
