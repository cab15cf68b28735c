import { type Drawing, type Shape, TEXT, type Words } from './drawing.ts';

export interface SvgOptions<Key extends string> {
  /** Unique in the page: every id of the drawing begins with it. */
  readonly id: string;
  readonly words: Words<Key>;
  readonly title: string;
  readonly description: string;
  /** Ids of a title and description that the page has itself; the drawing then holds none of its own. */
  readonly labelledBy?: string | undefined;
}

const escaped = (raw: string): string => raw.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);

/** A drawing as the text of an SVG element that is one image. */
export function toSvg<Key extends string>(name: string, drawing: Drawing<Key>, options: SvgOptions<Key>): string {
  const { id, words, title, description, labelledBy } = options;
  let cords = 0;

  const markup = (shape: Shape<Key>): string => {
    let { tag, is = '' } = shape as { tag: string; is?: string };
    let attributes = '';
    let inside = '';
    if ('d' in shape && !shape.d) return '';
    if (shape.tag === 'cords') {
      const own = `${id}-${shape.id}`;
      return `<defs><g id="${own}" stroke-linejoin="round" style="${shape.style}">${shape.paint(own)}</g></defs>`;
    }
    if (shape.tag === 'window') {
      const [x, y, width, height] = [shape.x, shape.y, shape.width, shape.height].map((value) => +value.toFixed(1));
      return `<svg x="${x}" y="${y}" width="${width}" height="${height}" viewBox="${shape.box}" preserveAspectRatio="none" aria-hidden="true"><use href="#${id}-${shape.shows}"/></svg>`;
    }
    if (shape.tag === 'cord') {
      // The path draws the cord's edge; what is laid over it takes the same course, thinner.
      const { width, colour } = shape;
      const own = `${id}-c${++cords}`;
      attributes = ` style="--w:${+width.toFixed(1)}${colour ? `;--cord-paint:${escaped(colour)}` : ''}"`;
      inside = `<path id="${own}" d="${shape.d}"/>`;
      for (const layer of ['body', 'twist', 'light'].slice(0, width < 3 ? 1 : width < 4.4 ? 2 : 3))
        if (layer !== 'twist' || is !== 'metal')
          inside += `<use class="f-${layer}" href="#${own}"${layer === 'twist' ? ` stroke="url(#${id}-${/across/.test(is) ? 'across' : 'twist'})"` : ''}/>`;
      tag = 'g';
      is += ' cord';
    } else
      for (const [key, value] of Object.entries(shape)) {
        if (key === 'shapes') inside = (value as Shape<Key>[]).map(markup).join('');
        else if (key === 'say') inside = escaped(value.key ? words[value.key as Key](value.values) : value);
        else if (key === 'paint') attributes += ` fill="url(#${id}-${value})"`;
        else if (key !== 'tag' && key !== 'is')
          attributes += ` ${key}="${key === 'id' ? `${id}-` : key === 'href' ? `#${id}-` : ''}${typeof value === 'number' ? +value.toFixed(1) : escaped(value)}"`;
      }
    return `<${tag}${is && ` class="${is.replace(/\S+/g, 'f-$&')}"`}${attributes}${inside ? `>${inside}</${tag}>` : '/>'}`;
  };

  const own = labelledBy
    ? ''
    : `<title id="${id}-title">${escaped(title)}</title><desc id="${id}-text">${escaped(description)}</desc>`;
  return `<svg class="fig fig-${name}" viewBox="0 0 ${Math.ceil(drawing.width)} ${Math.ceil(drawing.height)}" role="img" aria-labelledby="${labelledBy ?? `${id}-title ${id}-text`}" fill="none" font-size="${TEXT}" text-anchor="middle">${own}${drawing.shapes.map(markup).join('')}</svg>`;
}
