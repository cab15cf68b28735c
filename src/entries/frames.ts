import { HTMLElement as Element, type Node, parse, TextNode } from 'node-html-parser';

/** What a frame shows; its look and its share of the time go by it. */
export type FrameKind =
  | 'prose'
  | 'plate'
  | 'knot'
  | 'try-it'
  | 'exercise'
  | 'slip'
  | 'caution'
  | 'aside'
  | 'opening'
  | 'list'
  | 'summary';

/** One frame of a lesson that is shown to a room. Markup is as the lesson’s own page has it. */
export interface Frame {
  readonly kind: FrameKind;
  /** The heading that the frame stands under, as markup; null where it has none. */
  readonly head: string | null;
  /** What the frame is called in lists of frames, as plain text. */
  readonly name: string;
  readonly body: string;
  /** What only the speaker sees: the writer’s notes first, then what the lesson tells its readers alone. */
  readonly notes: readonly Note[];
  /** Minutes that the lesson plans for it; null where it takes its share. */
  readonly minutes: number | null;
  /** Whether nothing of it is true of the piece that the page is built with. */
  readonly asleep: boolean;
}

export interface Note {
  readonly html: string;
  /** Said by the writer to the speaker, or left out of the frame because only readers need it. */
  readonly from: 'writer' | 'lesson';
  /** Has no room under its frame on the hand-out, and is left to the speaker and to the lesson. */
  readonly long: boolean;
}

/** Lines of prose that stand on one frame, and the letters of a line, at the size that is read from eight metres. */
export const FRAME_LINES = 9;
/** So few lines have no frame of their own if the passage before or after them can take them, a little smaller. */
export const REST_LINES = 2;
/** A caution with more lines than this has a frame for each of its paragraphs, so that every idea of it stands large. */
const CAUTION_LINES = 5;
/** What lies between two paragraphs, in lines. */
const GAP_LINES = 0.5;
const LINE_LETTERS = 56;

/** The longest note to the speaker, in letters: it has to stand under its frame on a sheet of six. */
export const NOTE_LETTERS = 320;

/** Blocks that stand on a frame of their own, by their class. */
const ALONE: Readonly<Record<string, FrameKind>> = {
  plate: 'plate',
  exercise: 'exercise',
  'try-it': 'try-it',
  slip: 'slip',
  caution: 'caution',
  aside: 'aside',
};

const isElement = (node: Node): node is Element => node instanceof Element;
/** An element’s name; the parser has capitals for what it knows. */
const tagOf = (node: Element): string => node.rawTagName.toLowerCase();
const attribute = (node: Element, name: string): string | undefined => node.getAttribute(name);
/** Not seen as the page stands: a passage for other pieces, inches, the meaning of a word until it is opened. */
const isHidden = (node: Element): boolean =>
  attribute(node, 'hidden') !== undefined ||
  attribute(node, 'popover') !== undefined ||
  attribute(node, 'data-units') === 'inches';

/** The text that is seen in a node, in one line. */
function textIn(node: Node): string {
  if (node instanceof TextNode) return node.text;
  if (isElement(node) && (isHidden(node) || ['svg', 'script', 'style', 'details'].includes(tagOf(node)))) return '';
  return node.childNodes.map(textIn).join('');
}

const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** Lines that a block takes on a frame: each point of a list begins a new one. */
function linesIn(node: Element): number {
  const points = node.childNodes.filter((child) => isElement(child) && tagOf(child) === 'li');
  const passages = points.length > 0 ? points : [node];
  return passages.reduce((sum, passage) => sum + Math.ceil(oneLine(textIn(passage)).length / LINE_LETTERS), 0);
}

/** The markup between an element’s tags, as it was read. */
function insideOf(html: string, node: Element): string {
  const [first, last] = [node.childNodes[0], node.childNodes.at(-1)];
  return first && last ? html.slice(first.range[0], last.range[1]) : '';
}

/** The tag that begins an element with something in it, as it was read. */
const openingOf = (html: string, node: Element): string => html.slice(node.range[0], node.childNodes[0]?.range[0]);

/** Passages inside a node that only readers see. */
function readersOnlyIn(node: Node): Element[] {
  return node.childNodes.flatMap((child) =>
    isElement(child) && attribute(child, 'data-mark') === 'readers-only' ? [child] : readersOnlyIn(child),
  );
}

/** A node’s own markup without some of the nodes inside it. */
function without(html: string, node: Element, left: readonly Element[]): string {
  const [start, end] = node.range;
  let [from, kept] = [start, ''];
  for (const out of left) {
    const [outFrom, outTo] = out.range;
    kept += html.slice(from, outFrom);
    from = outTo;
  }
  return kept + html.slice(from, end);
}

/**
 * A block that stands alone, in parts that each have a frame: a long caution under its title, paragraph by paragraph;
 * anything else in one.
 */
function partsOf(html: string, node: Element, kind: FrameKind): { html: string; kept: readonly Element[] }[] {
  const kept = readersOnlyIn(node);
  const whole = [{ html: without(html, node, kept), kept }];
  if (kind !== 'caution' || linesIn(node) <= CAUTION_LINES) return whole;
  const [title, ...said] = node.childNodes.filter(isElement);
  if (!title || said.length < 2) return whole;
  const around = (inside: string) => `${openingOf(html, node)}${html.slice(...title.range)}${inside}</${tagOf(node)}>`;
  return said.map((each) => {
    const own = readersOnlyIn(each);
    return { html: around(without(html, each, own)), kept: own };
  });
}

interface Draft {
  kind: FrameKind;
  head: string | null;
  name: string;
  blocks: { readonly html: string; readonly seen: boolean }[];
  lines: number;
  /** The last passage ends with a colon: what follows belongs to it. */
  leads: boolean;
  notes: Note[];
  minutes: number | null;
  /** Goes on with the prose of the frame before it, only because that one was full. */
  goesOn: boolean;
}

const draft = (head: string | null, name: string): Draft => ({
  kind: 'prose',
  head,
  name,
  blocks: [],
  lines: 0,
  leads: false,
  notes: [],
  minutes: null,
  goesOn: false,
});

function kindOf(node: Element): FrameKind | undefined {
  const classes = (attribute(node, 'class') ?? '').split(/\s+/);
  const kind = classes.map((name) => ALONE[name]).find(Boolean);
  return kind === 'plate' && classes.includes('plate') && holdsStages(node) ? 'knot' : kind;
}

const holdsStages = (node: Node): boolean =>
  isElement(node) && (attribute(node, 'class') ?? '').split(/\s+/).includes('stages')
    ? true
    : node.childNodes.some(holdsStages);

/** The first element in a node that has this attribute, or this name. */
function find(node: Node, wanted: (element: Element) => boolean): Element | undefined {
  if (isElement(node) && wanted(node)) return node;
  for (const child of node.childNodes) {
    const found = find(child, wanted);
    if (found) return found;
  }
  return undefined;
}

/** What a block that stands alone is called in a list of frames. */
function nameOf(node: Element, kind: FrameKind, section: string): string {
  const label = attribute(node, 'aria-label');
  if (label) return label;
  const named =
    kind === 'plate' || kind === 'knot'
      ? find(node, (one) => attribute(one, 'data-plate-number') !== undefined)
      : find(node, (one) => tagOf(one) === 'h3');
  const name = named && oneLine(textIn(named));
  return name || section;
}

/**
 * A lesson’s markup in frames: a heading begins one, and so does every plate, exercise, thing to try, slip, caution and
 * aside. Prose is parted between its paragraphs, and nothing of it is cut. Marks of the lesson (`data-mark`) begin a
 * frame, give it a name or minutes, speak to the speaker, or keep a passage for readers alone.
 *
 * @param html what the body of a lesson’s page holds, with its marks
 * @param title of the lesson: the name of what stands before its first heading
 * @returns the frames in order, and what belongs to no frame, such as scripts
 * @throws where a note to the speaker has more than `NOTE_LETTERS` letters
 */
export function framesOf(html: string, title: string): { readonly frames: readonly Frame[]; readonly loose: string } {
  const drafts: Draft[] = [];
  let open = draft(null, title);
  let loose = '';

  const close = () => {
    const before = drafts.at(-1);
    const rest = open.goesOn && open.lines <= REST_LINES && open.notes.length === 0;
    if (rest && before && before.lines + open.lines <= FRAME_LINES + REST_LINES) before.blocks.push(...open.blocks);
    else if (open.blocks.length > 0) drafts.push(open);
    const { head, name, notes, minutes, blocks } = open;
    open = draft(head, name);
    // What was said before the first block is said of the frame that comes next.
    if (blocks.length === 0) Object.assign(open, { notes, minutes });
  };
  let sectionBegun = true;
  /** The frame that a mark speaks of: that of the block before it, or the one that begins with the heading before it. */
  const spokenOf = (): Draft => (open.blocks.length > 0 || sectionBegun ? open : (drafts.at(-1) ?? open));

  const note = (element: Element, from: Note['from'], to: Draft) => {
    const inside = insideOf(html, element).trim();
    const letters = oneLine(textIn(element)).length;
    if (from === 'writer' && letters > NOTE_LETTERS)
      throw new Error(`${title}: a note to the speaker is too long. At most ${NOTE_LETTERS} letters would do.`);
    if (inside === '') return;
    const before = to.notes.reduce((sum, each) => sum + oneLine(parse(each.html).text).length, 0);
    const said = tagOf(element) === 'span' ? `<p>${inside}</p>` : inside;
    to.notes.push({ html: said, from, long: from === 'lesson' && before + letters > NOTE_LETTERS });
  };

  const take = (node: Element, wrap: (inside: string) => string, seen: boolean): void => {
    const mark = attribute(node, 'data-mark');
    if (mark === 'frame-here') {
      close();
      const named = attribute(node, 'data-title');
      if (named) Object.assign(open, { head: named, name: named });
      const minutes = attribute(node, 'data-minutes');
      if (minutes) open.minutes = Number(minutes);
      return;
    }
    if (mark === 'readers-only' || mark === 'speaker-notes') {
      note(node, mark === 'readers-only' ? 'lesson' : 'writer', spokenOf());
      return;
    }
    if (['h2', 'h3'].includes(tagOf(node))) {
      close();
      open = { ...draft(insideOf(html, node), oneLine(textIn(node))), notes: open.notes, minutes: open.minutes };
      sectionBegun = true;
      return;
    }
    if (mark === 'room-only' || (tagOf(node) === 'div' && attribute(node, 'data-when') !== undefined)) {
      const around = (inside: string) => wrap(mark ? inside : `${openingOf(html, node)}${inside}</div>`);
      for (const child of node.childNodes) if (isElement(child)) take(child, around, seen && !isHidden(node));
      return;
    }
    if (['script', 'style', 'link', 'template'].includes(tagOf(node))) {
      loose += html.slice(...node.range);
      return;
    }
    const kind = kindOf(node);
    if (kind) {
      const before = open;
      close();
      const { head, name } = before;
      const { notes, minutes } = open;
      const named = nameOf(node, kind, name);
      const parts = partsOf(html, node, kind);
      for (const [at, part] of parts.entries()) {
        const own = { ...draft(head, parts.length > 1 ? `${named}, ${at + 1} of ${parts.length}` : named), kind };
        // What was said before the block is said of its first part.
        if (at === 0) Object.assign(own, { notes, minutes });
        drafts.push({ ...own, blocks: [{ html: wrap(part.html), seen }] });
        for (const passage of part.kept) note(passage, 'lesson', drafts.at(-1) ?? own);
      }
      open = draft(head, name);
      sectionBegun = false;
      return;
    }
    const kept = readersOnlyIn(node);
    const lines = seen ? linesIn(node) : 0;
    const gap = open.lines > 0 && lines > 0 ? GAP_LINES : 0;
    const most = open.lines <= REST_LINES ? FRAME_LINES + REST_LINES : FRAME_LINES;
    if (open.blocks.length > 0 && !open.leads && open.lines + gap + lines > most) {
      close();
      open.goesOn = true;
    }
    open.blocks.push({ html: wrap(without(html, node, kept)), seen });
    open.lines += (open.blocks.length > 1 ? gap : 0) + lines;
    if (seen) open.leads = /:$/.test(oneLine(textIn(node)));
    sectionBegun = false;
    for (const passage of kept) note(passage, 'lesson', spokenOf());
  };

  for (const node of parse(html, { comment: true }).childNodes)
    if (isElement(node)) take(node, (inside) => inside, true);
  close();
  const frames = drafts.map(({ kind, head, name, blocks, notes, minutes }) => ({
    kind,
    head,
    name,
    body: blocks.map((block) => block.html).join('\n'),
    notes: [...notes].sort((one, other) => Number(one.from === 'lesson') - Number(other.from === 'lesson')),
    minutes,
    asleep: blocks.every(({ seen }) => !seen),
  }));
  return { frames, loose };
}
