import type { Hand } from '../store/hand.ts';
import { mirroredWords } from '../words/knot-stages.ts';
import { breath } from './breath.ts';
import { type KnotPlate, platePieces } from './knot/knot-plate.ts';

/** What stood there when the page was built: the text of a passage, the markup of a stage. */
const texts = new WeakMap<Node, string>();
const markup = new WeakMap<Element, string>();

/** The texts of a passage, but for what the words of the craft mean wherever they stand. */
function* textsIn(passage: Element): Generator<Text> {
  const walker = document.createTreeWalker(passage, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode())
    if (node instanceof Text && !node.parentElement?.closest('[popover]')) yield node;
}

function putText(node: Node, text: string | null): void {
  const before = texts.get(node) ?? node.nodeValue ?? '';
  texts.set(node, before);
  const wanted = text ?? before;
  if (node.nodeValue !== wanted) node.nodeValue = wanted;
}

/** Puts markup into an element, or with null what was built there. */
function putMarkup(element: Element, html: string | null): void {
  const before = markup.get(element);
  if (html === null && before === undefined) return;
  if (before === undefined) markup.set(element, element.innerHTML);
  const wanted = html ?? before ?? '';
  if (element.innerHTML !== wanted) element.innerHTML = wanted;
}

/**
 * Shows the motions of the page for a hand: passages that tell them with sides, and the plates of knots, which are drawn
 * and told anew from the mirrored model. For the right hand all of it stands as it was built. Stages keep their elements,
 * so that a stepper that stands in their place and frames that show them one by one go on as they are.
 *
 * @param current whether this is still what the page wants; asked between one plate and the next
 */
export async function applyHand(hand: Hand, current: () => boolean): Promise<void> {
  for (const passage of document.querySelectorAll('[data-motion]'))
    for (const node of textsIn(passage))
      putText(node, hand === 'left' ? mirroredWords(texts.get(node) ?? node.nodeValue ?? '') : null);
  for (const figure of document.querySelectorAll<HTMLElement>('[data-motion-plate]')) {
    const plate: KnotPlate = JSON.parse(figure.dataset['motionPlate'] ?? '');
    const pieces = hand === 'left' ? platePieces(plate, figure.id.replace(/^plate-/, ''), hand) : null;
    const put = (wanted: string, each: readonly string[] | undefined, as: 'html' | 'text') => {
      for (const [i, element] of [...figure.querySelectorAll(wanted)].entries())
        if (as === 'html') putMarkup(element, each?.[i] ?? null);
        else if (element.firstChild) putText(element.firstChild, each?.[i] ?? null);
    };
    put('.stages > li', pieces?.items, 'html');
    put('[data-plate-words]', pieces ? [pieces.words] : undefined, 'text');
    put('.stages-told > li', pieces?.told, 'text');
    await breath();
    if (!current()) return;
  }
}
