import { ELEMENT_NODE, type ElementNode, type Node, parse, TEXT_NODE } from 'ultrahtml';

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
}

/** Lines of prose that stand on one frame, and the letters of a line, at the size that is read from eight metres. */
export const FRAME_LINES = 9;
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

const isElement = (node: Node): node is ElementNode => node.type === ELEMENT_NODE;
const attribute = (node: ElementNode, name: string): string | undefined => node.attributes[name];
const isHidden = (node: ElementNode): boolean =>
  attribute(node, 'hidden') !== undefined || attribute(node, 'data-units') === 'inches';

/** The text that is seen in a node, in one line. */
function textIn(node: Node): string {
  if (node.type === TEXT_NODE) return node.value;
  if (isElement(node) && (isHidden(node) || ['svg', 'script', 'style', 'details'].includes(node.name))) return '';
  return 'children' in node ? node.children.map(textIn).join('') : '';
}

const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** Lines that a block takes on a frame: each point of a list begins a new one. */
function linesIn(node: ElementNode): number {
  const points = node.children.filter((child) => isElement(child) && child.name === 'li');
  const passages = points.length > 0 ? points : [node];
  return passages.reduce((sum, passage) => sum + Math.ceil(oneLine(textIn(passage)).length / LINE_LETTERS), 0);
}

/** Where a node stands in the markup it was read from. */
const spanOf = (node: ElementNode): readonly [from: number, to: number] => {
  const [open, close] = node.loc;
  return [open.start, close?.end ?? open.end];
};
const insideOf = (html: string, node: ElementNode): string => html.slice(node.loc[0].end, node.loc[1]?.start);

/** Passages inside a node that only readers see. */
function readersOnlyIn(node: Node): ElementNode[] {
  if (!('children' in node)) return [];
  return (node.children as Node[]).flatMap((child) =>
    isElement(child) && attribute(child, 'data-mark') === 'readers-only' ? [child] : readersOnlyIn(child),
  );
}

/** A node’s own markup without some of the nodes inside it. */
function without(html: string, node: ElementNode, left: readonly ElementNode[]): string {
  const [start, end] = spanOf(node);
  let [from, kept] = [start, ''];
  for (const out of left) {
    const [outFrom, outTo] = spanOf(out);
    kept += html.slice(from, outFrom);
    from = outTo;
  }
  return kept + html.slice(from, end);
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
});

function kindOf(node: ElementNode): FrameKind | undefined {
  const classes = (attribute(node, 'class') ?? '').split(/\s+/);
  const kind = classes.map((name) => ALONE[name]).find(Boolean);
  return kind === 'plate' && classes.includes('plate') && holdsStages(node) ? 'knot' : kind;
}

const holdsStages = (node: Node): boolean =>
  isElement(node) && (attribute(node, 'class') ?? '').split(/\s+/).includes('stages')
    ? true
    : 'children' in node && node.children.some(holdsStages);

/** The first element in a node that has this attribute, or this name. */
function find(node: Node, wanted: (element: ElementNode) => boolean): ElementNode | undefined {
  if (isElement(node) && wanted(node)) return node;
  if (!('children' in node)) return undefined;
  for (const child of node.children) {
    const found = find(child, wanted);
    if (found) return found;
  }
  return undefined;
}

/** What a block that stands alone is called in a list of frames. */
function nameOf(node: ElementNode, kind: FrameKind, section: string): string {
  const label = attribute(node, 'aria-label');
  if (label) return label;
  const named =
    kind === 'plate' || kind === 'knot'
      ? find(node, (one) => attribute(one, 'data-plate-number') !== undefined)
      : find(node, ({ name }) => name === 'h3');
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
    if (open.blocks.length > 0) drafts.push(open);
    const { head, name, notes, minutes, blocks } = open;
    open = draft(head, name);
    // What was said before the first block is said of the frame that comes next.
    if (blocks.length === 0) Object.assign(open, { notes, minutes });
  };
  let sectionBegun = true;
  /** The frame that a mark speaks of: that of the block before it, or the one that begins with the heading before it. */
  const spokenOf = (): Draft => (open.blocks.length > 0 || sectionBegun ? open : (drafts.at(-1) ?? open));

  const note = (element: ElementNode, from: Note['from'], to: Draft) => {
    const inside = insideOf(html, element).trim();
    if (from === 'writer' && oneLine(textIn(element)).length > NOTE_LETTERS)
      throw new Error(`${title}: a note to the speaker is too long. At most ${NOTE_LETTERS} letters would do.`);
    if (inside !== '') to.notes.push({ html: element.name === 'span' ? `<p>${inside}</p>` : inside, from });
  };

  const take = (node: ElementNode, wrap: (inside: string) => string, seen: boolean): void => {
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
    if (node.name === 'h2' || node.name === 'h3') {
      close();
      open = { ...draft(insideOf(html, node), oneLine(textIn(node))), notes: open.notes, minutes: open.minutes };
      sectionBegun = true;
      return;
    }
    if (mark === 'room-only' || (node.name === 'div' && attribute(node, 'data-when') !== undefined)) {
      const [from, to] = [node.loc[0].start, node.loc[0].end];
      const around = (inside: string) => wrap(mark ? inside : `${html.slice(from, to)}${inside}</div>`);
      for (const child of node.children) if (isElement(child)) take(child, around, seen && !isHidden(node));
      return;
    }
    if (['script', 'style', 'link', 'template'].includes(node.name)) {
      loose += html.slice(...spanOf(node));
      return;
    }
    const kept = readersOnlyIn(node);
    const body = wrap(without(html, node, kept));
    const kind = kindOf(node);
    if (kind) {
      const before = open;
      close();
      const alone = { ...draft(before.head, before.name), notes: open.notes, minutes: open.minutes, kind };
      const { head, name } = before;
      open = draft(head, name);
      drafts.push({ ...alone, name: nameOf(node, kind, name), blocks: [{ html: body, seen }] });
    } else {
      const lines = seen ? linesIn(node) : 0;
      if (open.blocks.length > 0 && !open.leads && open.lines + lines > FRAME_LINES) close();
      open.blocks.push({ html: body, seen });
      open.lines += lines;
      if (seen) open.leads = /:$/.test(oneLine(textIn(node)));
    }
    sectionBegun = false;
    for (const passage of kept) note(passage, 'lesson', spokenOf());
  };

  for (const node of parse(html).children as Node[]) if (isElement(node)) take(node, (inside) => inside, true);
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
