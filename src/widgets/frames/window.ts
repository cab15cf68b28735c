/**
 * A window that shows a lesson in frames: the room’s, or the speaker’s. Which it is, and to which showing it belongs, it
 * has from the window that opened it. The frames stand in the page already; here they are shown one by one.
 */
import { BLOCKED, frameWords, OTHER_WORDS, planWords, timeUsed } from '../../words/frame-words.ts';
import { isAlike, keptFigures, takeFigures } from './figures.ts';
import { fitFrames, fitLabels, fittedSteps, refit } from './fit.ts';
import { longer, placeOn, showInk } from './ink.ts';
import { keyed, type Pressed, type Wish } from './keys.ts';
import {
  isNewer,
  isSame,
  type Link,
  linkTo,
  newName,
  type Role,
  readWindowName,
  type Told,
  windowName,
} from './link.ts';
import { outOfBand } from './marking.ts';
import {
  addressOf,
  type Deck,
  type Move,
  moved,
  type Place,
  placeIn,
  placeInAddress,
  type Show,
  START,
  type Stroke,
  seenBy,
  spentAt,
} from './show.ts';
import type { Steps } from './steps.ts';

const main = document.querySelector<HTMLElement>('[data-frames]');
const deckElement = main?.querySelector<HTMLElement>('[data-deck]');

/** Frames are shown one by one where there is room for one; on a small screen they stand one under the other. */
const WIDE = '(width >= 40rem)';
/** ms in which another window, if there is one, has answered. */
const ANSWER = 250;
/** How long the controls stay in the room’s window after the mouse has moved, in milliseconds. */
const STIRRED = 2500;
/** What was entered has been kept by then, in milliseconds. */
const ENTERED = 200;
/** A swipe is at least this long, in pixels. */
const SWIPE = 48;

/** Controls and everything else that a tap is meant for. */
const OWN_TAPS = 'a, button, input, label, select, textarea, summary, dialog, [role="grid"], .mark-scroll';

if (main && deckElement) begin(main, deckElement);

function begin(root: HTMLElement, deckRoot: HTMLElement): void {
  const frames = [...deckRoot.querySelectorAll<HTMLElement>('[data-frame]')];
  const part = <E extends HTMLElement>(name: string): E | null => root.querySelector<E>(`[data-${name}]`);
  const lesson = root.dataset['lesson'] ?? '';
  const named = readWindowName(window.name);
  const role: Role = named?.role ?? 'room';
  let session = named?.session ?? newName();
  window.name = windowName(role, session);

  let steps: Steps[] = [];
  let deck: Deck = [];
  let show: Show = START;
  let turn = 0;
  let link: Link | null = null;
  let tool: 'point' | 'draw' | null = null;
  let overview = false;
  let digits = '';
  let line: Stroke = [];
  let theirLine: { frame: number; stroke: Stroke } | null = null;
  const here = () => seenBy(show, role);
  const frameAt = (place: number): HTMLElement | undefined => frames[place - 1];

  const say = (text: string) => {
    const place = part('say');
    if (place && place.textContent !== text) place.textContent = text;
  };

  // What stands in the page.

  function measure(changed: readonly HTMLElement[]): void {
    for (const frame of changed) {
      const body = frame.querySelector('[data-frame-body]');
      const parts = [...(body?.children ?? [])].filter((child) => child.hasAttribute('data-when'));
      if (body && parts.length > 0 && parts.length === body.children.length)
        frame.hidden = parts.every(
          (each) => (each as HTMLElement).hidden || each.querySelector(':scope > [data-when]:only-child[hidden]'),
        );
    }
    fitFrames(deckRoot, changed);
    steps = frames.map((frame) => fittedSteps(frame));
    deck = steps.map(({ count }) => count);
    paint();
  }

  let shown: Place | null = null;
  function paint(): void {
    const place = placeIn(deck, here());
    const frame = frameAt(place.frame);
    if (!frame) return;
    const next = frameAt(
      moved({ ...show, at: { ...place, step: Number.MAX_SAFE_INTEGER } }, { do: 'on' }, deck, 0).at.frame,
    );
    for (const each of frames) {
      each.toggleAttribute('data-now', each === frame);
      each.toggleAttribute('data-soon', each === next && each !== frame);
    }
    for (const [at, { count, show: reveal, done = count - 1, whole }] of steps.entries())
      if (at + 1 === place.frame) reveal(place.step);
      else if (whole && frameAt(at + 1) !== next) whole();
      else reveal(at + 1 < place.frame ? done : 0);
    root.toggleAttribute('data-dark', show.dark && role === 'room');
    root.toggleAttribute('data-ends', next === frame);
    for (const [wish, on] of [
      ['dark', show.dark],
      ['hold', show.held !== null],
      ['clock', show.timer.since !== null],
      ['point', tool === 'point'],
      ['draw', tool === 'draw'],
      ['all', overview],
    ] as const)
      root.querySelector(`[data-do="${wish}"]`)?.setAttribute('aria-pressed', String(on));
    const number = part<HTMLInputElement>('number');
    if (number && document.activeElement !== number) number.value = String(place.frame);
    for (const each of frames)
      showInk(
        each,
        show.ink[Number(each.dataset['frame'])] ?? [],
        each === frame && line.length > 0
          ? line
          : theirLine && theirLine.frame === Number(each.dataset['frame'])
            ? theirLine.stroke
            : undefined,
      );
    if (!shown || !isSame(shown, place)) {
      shown = place;
      // Since it was fitted, other figures may have come to be asked.
      if (frame.querySelector('.exercise-form')) refit(frame, null);
      fitLabels(frame);
      if (next) fitLabels(next);
      say(frameWords(frame.getAttribute('aria-label') ?? '', place.step, deck[place.frame - 1] ?? 1));
      if (overview) frame.querySelector<HTMLElement>('.frame-number')?.focus();
    }
    if (role === 'speaker') paintDesk(frame, next ?? frame);
  }

  function paintDesk(frame: HTMLElement, next: HTMLElement): void {
    const notes = part('desk-notes');
    if (notes && notes.dataset['of'] !== frame.id) {
      notes.dataset['of'] = frame.id;
      // Long notes are scrolled with the arrow keys.
      notes.tabIndex = 0;
      const written = frame.querySelector('[data-notes]')?.cloneNode(true);
      notes.replaceChildren(written ?? document.createTextNode('No notes for this frame.'));
    }
    const name = part('next');
    if (name)
      name.textContent =
        next === frame ? 'nothing more' : (next.querySelector('.frame-name')?.textContent ?? '').trim();
    const states = [
      show.dark ? 'The room is dark.' : '',
      show.held ? `The room keeps frame ${show.held.frame}.` : '',
    ].filter(Boolean);
    const state = part('state');
    if (state) state.textContent = states.join(' ');
    tick();
  }

  function tick(): void {
    const now = Date.now();
    const spent = spentAt(show, now);
    const planned = frames.map((frame) => (frame.hidden ? 0 : Number(frame.dataset['minutes'] ?? 0)));
    const upTo = (count: number) => planned.slice(0, count).reduce((sum, minutes) => sum + minutes, 0);
    const put = (name: string, text: string) => {
      const place = part(name);
      if (place && place.textContent !== text) place.textContent = text;
    };
    put('clock', new Date(now).toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' }));
    put('used', timeUsed(spent));
    put('plan', spent === 0 ? '' : planWords(spent, upTo(show.at.frame - 1), upTo(show.at.frame)));
  }

  function keepAddress(way: 'push' | 'replace'): void {
    const address = addressOf(show.at);
    if (location.hash === address) return;
    if (way === 'push') history.pushState(null, '', address);
    else history.replaceState(null, '', address);
  }

  // What is done.

  function change(next: Show, address: 'push' | 'replace' | 'keep' = 'push'): void {
    const otherFrame = next.at.frame !== show.at.frame;
    show = next;
    turn += 1;
    if (address !== 'keep') keepAddress(otherFrame ? address : 'replace');
    link?.tell({ tell: 'show', show, turn });
    paint();
  }
  /** What is done before the other window has told how the show stands: done again on top of that, or it would be lost. */
  const early: Move[] = [];
  let settled = false;
  function act(move: Move, address?: 'push' | 'replace' | 'keep'): void {
    if (!settled) early.push(move);
    change(moved(show, move, deck, Date.now()), address);
  }
  function settle(): void {
    settled = true;
    for (const move of early.splice(0)) act(move, 'replace');
  }

  function setOverview(open: boolean): void {
    overview = open;
    root.dataset['look'] = open ? 'all' : role;
    for (const frame of frames) frame.querySelector('[data-frame-body]')?.toggleAttribute('inert', open);
    paint();
    if (open) frameAt(here().frame)?.querySelector<HTMLElement>('.frame-number')?.focus();
    // The room would see the mark of the focus on a number that leads nowhere now.
    else if (document.activeElement instanceof HTMLElement && document.activeElement.matches('.frame-number'))
      document.activeElement.blur();
    if (open) for (const frame of frames) fitLabels(frame);
  }
  function setTool(next: typeof tool): void {
    tool = next;
    root.dataset['tool'] = next ?? '';
    if (next !== 'point') point(null, true);
    paint();
  }
  function open(panel: 'help' | 'figures'): void {
    root.querySelector<HTMLDialogElement>(`[data-panel="${panel}"]`)?.showModal();
  }
  function openOther(): void {
    const other = role === 'room' ? 'speaker' : 'room';
    const opened = window.open(
      `${location.pathname}${location.search}${addressOf(show.at)}`,
      windowName(other, session),
      other === 'speaker' ? 'popup,width=1200,height=760' : '',
    );
    if (opened) opened.focus();
    else say(BLOCKED);
  }

  const doing: Readonly<Record<Wish, () => void>> = {
    on: () => (overview ? look(1) : act({ do: 'on' })),
    back: () => (overview ? look(-1) : act({ do: 'back' })),
    first: () => act({ do: 'first' }),
    last: () => act({ do: 'last' }),
    dark: () => act({ do: 'dark' }, 'keep'),
    hold: () => act({ do: 'hold' }, 'keep'),
    clock: () => act({ do: 'clock' }, 'keep'),
    again: () => act({ do: 'again' }, 'keep'),
    wipe: () => act({ do: 'wipe' }, 'keep'),
    all: () => setOverview(!overview),
    point: () => setTool(tool === 'point' ? null : 'point'),
    draw: () => setTool(tool === 'draw' ? null : 'draw'),
    full: () =>
      void (document.fullscreenElement
        ? document.exitFullscreen()
        : document.documentElement.requestFullscreen().catch(() => undefined)),
    other: openOther,
    figures: () => open('figures'),
    help: () => open('help'),
    close: () => {
      if (overview) setOverview(false);
      else if (tool) setTool(null);
      else if (show.dark) act({ do: 'dark' }, 'keep');
    },
  };

  /** From one frame of the overview to the next. */
  function look(way: 1 | -1): void {
    const links = frames
      .filter(({ hidden }) => !hidden)
      .map((frame) => frame.querySelector<HTMLElement>('.frame-number'));
    const at = links.indexOf(document.activeElement as HTMLElement);
    links[Math.min(links.length - 1, Math.max(0, at + way))]?.focus();
  }

  function focusOf(target: EventTarget | null): Pressed['focus'] {
    if (!(target instanceof Element)) return 'elsewhere';
    if (target.closest('input, select, textarea, [role="grid"], [role="slider"], [contenteditable]')) return 'typing';
    return target.closest('a, button, summary') && !(overview && target.closest('.frame-number'))
      ? 'pressing'
      : 'elsewhere';
  }

  document.addEventListener('keydown', (event) => {
    if (event.defaultPrevented || !root.dataset['look'] || document.querySelector('dialog[open]')) return;
    const chord = event.ctrlKey || event.altKey || event.metaKey;
    // In the overview Enter opens the frame that has the focus.
    if (overview && event.key === 'Enter' && digits === '') return;
    const read = keyed(digits, { key: event.key, chord, focus: focusOf(event.target) });
    if (!read) return;
    event.preventDefault();
    digits = read.digits;
    root.toggleAttribute('data-typing', digits !== '');
    const typed = part('typed');
    if (typed) typed.textContent = digits;
    if (read.wish) doing[read.wish]();
    if (read.frame !== null) {
      if (overview) setOverview(false);
      act({ do: 'to', frame: read.frame });
    }
  });

  // Before the chart itself hears of it: the row that the key leads to has to be there.
  deckRoot.addEventListener(
    'keydown',
    ({ key, target }) => {
      const cell = target instanceof Element ? target.closest('[data-cell]') : null;
      const way = cell && outOfBand(cell, key);
      if (way) act({ do: way });
    },
    true,
  );

  root.addEventListener('click', (event) => {
    const { target } = event;
    if (!(target instanceof Element)) return;
    const wish = target.closest<HTMLElement>('[data-do]')?.dataset['do'];
    if (wish === 'close') target.closest('dialog')?.close();
    else if (wish) doing[wish as Wish]();
  });
  part<HTMLFormElement>('jump')?.addEventListener('submit', (event) => {
    event.preventDefault();
    const number = part<HTMLInputElement>('number');
    const frame = Number.parseInt(number?.value ?? '', 10);
    if (Number.isInteger(frame)) act({ do: 'to', frame });
    if (number) number.value = String(show.at.frame);
  });

  // Pointer: taps, swipes, pointing, drawing.

  let down: { x: number; y: number; id: number } | null = null;
  let swiped = false;
  const paperAt = (target: EventTarget | null): HTMLElement | null => {
    const frame = target instanceof Element ? target.closest<HTMLElement>('[data-frame]') : null;
    return frame?.hasAttribute('data-now') ? frame : null;
  };

  deckRoot.addEventListener('pointerdown', (event) => {
    if (!root.dataset['look'] || overview) return;
    const frame = paperAt(event.target);
    swiped = false;
    if (frame && tool === 'draw') {
      const place = placeOn(frame, event);
      if (!place) return;
      event.preventDefault();
      deckRoot.setPointerCapture(event.pointerId);
      line = [...place];
      paint();
    } else if (event.pointerType !== 'mouse') down = { x: event.clientX, y: event.clientY, id: event.pointerId };
  });
  deckRoot.addEventListener('pointermove', (event) => {
    const frame = frameAt(here().frame);
    if (!frame) return;
    const place = placeOn(frame, event);
    if (line.length > 0 && place) {
      line = longer(line, place);
      showInk(frame, show.ink[here().frame] ?? [], line);
      link?.tell({ tell: 'line', frame: here().frame, stroke: line });
    }
    if (tool === 'point') point(place, true);
  });
  const lift = (event: PointerEvent) => {
    if (line.length > 0) {
      const stroke = line;
      line = [];
      act({ do: 'draw', frame: here().frame, stroke }, 'keep');
    }
    if (!down || down.id !== event.pointerId) return;
    const [dx, dy] = [event.clientX - down.x, event.clientY - down.y];
    down = null;
    const onControl = event.target instanceof Element && event.target.closest('input, [role="grid"], .mark-scroll');
    if (event.type === 'pointerup' && Math.abs(dx) > SWIPE && Math.abs(dx) > 1.5 * Math.abs(dy) && !onControl) {
      swiped = true;
      act({ do: dx < 0 ? 'on' : 'back' });
    }
  };
  deckRoot.addEventListener('pointerup', lift);
  deckRoot.addEventListener('pointercancel', lift);
  deckRoot.addEventListener('click', (event) => {
    const frame = paperAt(event.target);
    if (!frame || !root.dataset['look'] || overview || tool || swiped || event.defaultPrevented) return;
    if (event.target instanceof Element && event.target.closest(OWN_TAPS)) return;
    if (getSelection()?.isCollapsed === false) return;
    const place = placeOn(frame, event as PointerEvent);
    if (place) act({ do: place[0] < 1 / 3 ? 'back' : 'on' });
  });

  const dot = part('pointer');
  function point(at: readonly [number, number] | null, mine: boolean): void {
    if (!dot) return;
    dot.hidden = at === null;
    if (at) {
      frameAt(here().frame)?.querySelector('.frame-paper')?.append(dot);
      dot.style.setProperty('--x', String(at[0]));
      dot.style.setProperty('--y', String(at[1]));
    }
    if (mine) link?.tell({ tell: 'point', at });
  }

  let stirring: ReturnType<typeof setTimeout> | undefined;
  addEventListener('pointermove', ({ pointerType }) => {
    if (pointerType === 'mouse') stir();
  });
  addEventListener('pointerdown', ({ clientY }) => {
    if (clientY > innerHeight * 0.9) stir();
  });
  function stir(): void {
    root.setAttribute('data-stirred', '');
    clearTimeout(stirring);
    stirring = setTimeout(() => root.removeAttribute('data-stirred'), STIRRED);
  }

  // The other window.

  function hear(told: Told, from: string): void {
    switch (told.tell) {
      case 'hello':
        if (told.role === role) link?.tell({ tell: 'taken', to: from });
        else {
          turn = Math.max(1, turn);
          link?.tell({ tell: 'show', show, turn });
          link?.tell({ tell: 'figures', kept: keptFigures() });
        }
        break;
      case 'figures':
        figures = told.kept;
        if (!isAlike(told.kept, keptFigures())) takeFigures(told.kept);
        break;
      case 'taken':
        if (told.to === link?.me) join(newName());
        break;
      case 'show':
        if (!isNewer({ turn: told.turn, by: from }, { turn: turn - early.length, by: link?.me ?? '' })) break;
        ({ show, turn } = told);
        theirLine = null;
        keepAddress('replace');
        paint();
        settle();
        break;
      case 'point':
        point(told.at, false);
        break;
      case 'line':
        theirLine = told;
        paint();
        break;
      case 'gone':
        if (told.role !== role) say(OTHER_WORDS[told.role].gone);
    }
  }
  function join(name: string): void {
    link?.close();
    session = name;
    window.name = windowName(role, session);
    link = linkTo(session, lesson, hear);
    link.tell({ tell: 'hello', role });
    setTimeout(() => {
      early.length = 0;
      settled = true;
    }, ANSWER);
  }
  addEventListener('pagehide', () => link?.tell({ tell: 'gone', role }));

  // The room’s figures: entered in either window, they hold in both.

  let figures = keptFigures();
  const panel = root.querySelector('[data-panel="figures"]');
  const entered = () =>
    setTimeout(() => {
      const kept = keptFigures();
      if (isAlike(kept, figures)) return;
      figures = kept;
      link?.tell({ tell: 'figures', kept });
    }, ENTERED);
  for (const event of ['input', 'change', 'click']) panel?.addEventListener(event, entered);

  // The address.

  addEventListener('popstate', () => {
    // Without a frame in it, the address is the one that a showing begins with.
    const place = location.hash === '' ? { frame: 1, step: 0 } : placeInAddress(location.hash);
    if (place && overview) setOverview(false);
    if (place && !isSame(place, show.at)) act({ do: 'to', ...place }, 'keep');
    // An address of no frame, or of one past the end, is put right.
    if (location.hash !== '') keepAddress('replace');
  });

  // Other figures, and drawings that widgets make: what has changed is fitted again.

  const changed = new Set<HTMLElement>();
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const watch = new MutationObserver((records) => {
    const asked = new Set<HTMLElement>();
    for (const { target, type } of records) {
      const element = target instanceof Element ? target : target.parentElement;
      const frame = element?.closest<HTMLElement>('[data-frame]');
      if (frame && type === 'childList' && element?.matches('.tied-drawing')) fitLabels(frame);
      if (frame?.hasAttribute('data-now') && type !== 'attributes' && element?.closest('.exercise-form'))
        asked.add(frame);
      // A chart of which a part is shown has not changed.
      if (!frame || element?.closest('[data-ink], .exercise, svg')) continue;
      if (type === 'attributes' ? element?.hasAttribute('data-when') : element?.closest('[data-frame-body]'))
        changed.add(frame);
    }
    for (const frame of asked) askedAgain(frame);
    if (changed.size === 0) return;
    clearTimeout(waiting);
    waiting = setTimeout(() => {
      const those = [...changed];
      changed.clear();
      if (root.dataset['look']) measure(those);
    }, 60);
  });

  /** Something else is asked on a frame, or something is said of an answer: a chart to mark may have other rows. */
  function askedAgain(frame: HTMLElement): void {
    const at = frames.indexOf(frame);
    const own = fittedSteps(frame);
    const others = own.count !== steps[at]?.count;
    steps = steps.with(at, own);
    deck = steps.map(({ count }) => count);
    if (others) paint();
    else own.show(placeIn(deck, here()).step);
    refit(frame, frame.querySelector('.exercise-say')?.lastElementChild ?? null);
    // A drawing may have become smaller.
    fitLabels(frame);
  }

  function wake(): void {
    if (!matchMedia(WIDE).matches) {
      delete root.dataset['look'];
      return;
    }
    root.dataset['look'] = overview ? 'all' : role;
    measure(frames);
  }

  const other = part('other');
  if (other) other.textContent = OTHER_WORDS[role === 'room' ? 'speaker' : 'room'].open;
  const colours = document.querySelector('.colophon .choice');
  if (colours) part('colours')?.append(colours);
  document.documentElement.dataset['role'] = role;
  show = { ...show, at: placeInAddress(location.hash) ?? show.at };
  root.dataset['look'] = role;
  void document.fonts.ready.then(() => {
    wake();
    show = { ...show, at: placeIn(deck, show.at) };
    if (location.hash) keepAddress('replace');
    paint();
    join(session);
    // A question with other figures may be the same text with other words in it.
    const seen = { subtree: true, childList: true, characterData: true };
    watch.observe(deckRoot, { ...seen, attributes: true, attributeFilter: ['hidden'] });
    root.setAttribute('data-awake', '');
  });
  // On paper nothing comes in parts.
  addEventListener('beforeprint', () => {
    for (const { whole } of steps) whole?.();
  });
  addEventListener('afterprint', paint);
  matchMedia(WIDE).addEventListener('change', wake);
  addEventListener('resize', () => paintLabels());
  function paintLabels(): void {
    const frame = frameAt(here().frame);
    if (frame && root.dataset['look']) fitLabels(frame);
  }
  if (role === 'speaker') setInterval(tick, 1000);
}
