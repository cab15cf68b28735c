import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { frameMinutes } from '../../src/entries/frame-minutes.ts';
import { FRAME_LINES, type Frame, framesOf, NOTE_LETTERS, REST_LINES } from '../../src/entries/frames.ts';

const frames = (html: string): readonly Frame[] => framesOf(html, 'Widening').frames;
const words = (count: number): string => Array.from({ length: count }, () => 'string').join(' ');
const plate = (number: number): string =>
  `<figure class="plate" id="plate-a"><div class="plate-ground"><svg class="fig"><title>A > B</title><path d="M0 0"/></svg></div><figcaption><span data-plate-number>Plate ${number}</span></figcaption></figure>`;
const textOf = (html: string): string => html.replace(/<[^>]*>/g, '');

describe('a lesson in frames', () => {
  it('begins a frame with each heading, and keeps the heading over the frames that follow', () => {
    const long = `<p>${words(60)}</p>`;
    const found = frames(
      `<p>First.</p><h2 id="a">The <em>bar</em></h2>${long}${long}<h3 id="b">Again</h3><p>Last.</p>`,
    );
    expect(found.map(({ head, name }) => [head, name])).toEqual([
      [null, 'Widening'],
      ['The <em>bar</em>', 'The bar'],
      ['The <em>bar</em>', 'The bar'],
      ['Again', 'Again'],
    ]);
  });

  it('gives a plate, an exercise, something to try, a slip, a caution and an aside a frame each', () => {
    const found = frames(
      `<h2>One</h2><p>a</p>${plate(3)}<section class="exercise" id="e"><h3>Exercise<span> 2</span></h3></section>` +
        '<section class="try-it" id="t"><h3>Try it</h3></section><section class="slip" aria-label="Slip: too long"></section>' +
        '<aside class="caution" aria-label="Take care"></aside><aside class="aside" aria-label="Note"></aside><p>z</p>',
    );
    expect(found.map(({ kind, name }) => `${kind}: ${name}`)).toEqual([
      'prose: One',
      'plate: Plate 3',
      'exercise: Exercise 2',
      'try-it: Try it',
      'slip: Slip: too long',
      'caution: Take care',
      'aside: Note',
      'prose: One',
    ]);
  });

  it('gives each paragraph of a long caution a frame under its title, and drops none of it', () => {
    const said = ['Points away.', words(30), `${words(20)} <em>never</em>`];
    const caution = (passages: readonly string[]) =>
      `<aside class="caution" aria-label="Take care"><p class="caution-title">Take care</p>${passages.map((each) => `<p>${each}</p>`).join('\n')}</aside>`;
    const found = frames(`<h2>One</h2>${caution(said)}<p>z</p>`);
    expect(found.map(({ kind, name }) => `${kind}: ${name}`)).toEqual([
      'caution: Take care, 1 of 3',
      'caution: Take care, 2 of 3',
      'caution: Take care, 3 of 3',
      'prose: One',
    ]);
    expect(found.slice(0, 3).map(({ body }) => body)).toEqual(said.map((each) => caution([each])));
    expect(frames(caution(['Points away.', 'Count the pins.'])).map(({ name }) => name)).toEqual(['Take care']);
  });

  it('knows a plate that shows a knot in stages', () => {
    const knot = plate(1).replace('<svg', '<ol class="stages"><li></li></ol><svg');
    expect(frames(knot).map(({ kind }) => kind)).toEqual(['knot']);
  });

  it('counts no lines for the meaning of a word, which stands there only when it is opened', () => {
    const term = (meaning: number) =>
      `<p>${words(20)} <button popovertarget="m">bar</button><span id="m" popover>${words(meaning)}</span></p>`;
    expect(frames(term(60) + term(60))).toHaveLength(frames(term(0) + term(0)).length);
  });

  it('leaves no rest of a passage alone where the frame before it can take it', () => {
    const [long, short] = [`<p>${words(60)}</p>`, `<p>${words(14)}</p>`];
    expect(frames(`<h2>A</h2>${long}${short}${plate(1)}`).map(({ kind }) => kind)).toEqual(['prose', 'plate']);
    expect(frames(`<h2>A</h2>${long}${long}`)).toHaveLength(2);
    expect(frames(`<h2>A</h2>${long}${plate(1)}${short}`)).toHaveLength(3);
  });

  it('puts short paragraphs together, parts long ones, and never cuts into one', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 90 }), { minLength: 1, maxLength: 12 }), (lengths) => {
        const paragraphs = lengths.map((count, at) => `<p>${at} ${words(count)}</p>`);
        const found = frames(paragraphs.join('\n'));
        expect(found.flatMap(({ body }) => body.split('\n'))).toEqual(paragraphs);
        for (const { body } of found) {
          const own = body.split('\n');
          const lines = own.reduce((sum, each) => sum + Math.ceil(textOf(each).length / 56), 0);
          expect(own.length === 1 || lines <= FRAME_LINES + REST_LINES).toBe(true);
        }
      }),
    );
  });

  it('keeps a list on the frame of the sentence that leads to it', () => {
    const found = frames(`<p>${words(50)} four things:</p><ol>${`<li>${words(9)}</li>`.repeat(6)}</ol><p>After.</p>`);
    expect(found).toHaveLength(2);
    expect(found[0]?.body).toContain('<ol>');
  });

  it('leaves markup as it was, with islands, comments and scripts', () => {
    const island =
      '<astro-island props="{&quot;a&quot;:[0,&quot;x > y&quot;]}" ssr><!--$--><b data-hk="s0">5</b><!--/--></astro-island>';
    const exercise = `<section class="exercise" id="e"><h3>Exercise</h3>${island}<script>if (1 < 2) {}</script></section>`;
    const { frames: found, loose } = framesOf(`${exercise}<script type="module">let a = 1 < 2;</script>`, 'A');
    expect(found[0]?.body).toBe(exercise);
    expect(loose).toBe('<script type="module">let a = 1 < 2;</script>');
  });

  it('parts a passage that is true of some pieces, and keeps its condition round each part', () => {
    const when = (inside: string) => `<div data-when="bundles" hidden>${inside}</div>`;
    const found = frames(when(`<p>a</p>${plate(1)}<div data-when="idle"><p>b</p></div>`));
    expect(found.map(({ body }) => body)).toEqual([
      when('<p>a</p>'),
      when(plate(1)),
      when('<div data-when="idle"><p>b</p></div>'),
    ]);
    expect(found.map(({ asleep }) => asleep)).toEqual([true, true, true]);
  });

  it('does not count what is hidden, nor lengths twice', () => {
    const inches = `<span data-units="metric">3 cm</span><span data-units="inches">${words(60)}</span>`;
    expect(
      frames(`<div data-when="a" hidden><p>${words(60)}</p></div><p>${words(40)}</p><p>${inches}</p>`),
    ).toHaveLength(1);
  });
});

describe('the marks of a lesson', () => {
  it('begin a frame, with a title and minutes of its own', () => {
    const found = frames(
      '<h2>One</h2><p>a</p><div data-mark="frame-here" data-title="Count with me" data-minutes="3"></div><p>b</p><h2>Two</h2><p>c</p>',
    );
    expect(found.map(({ name, minutes }) => [name, minutes])).toEqual([
      ['One', null],
      ['Count with me', 3],
      ['Two', null],
    ]);
  });

  it('speak to the speaker: after a block of its frame, after a heading of the frame that begins', () => {
    const note = (text: string) => `<div data-mark="speaker-notes"><p>${text}</p></div>`;
    const found = frames(
      `<p>a</p>${note('of a')}<h2>One</h2>${note('of One')}${plate(1)}${note('of the plate')}<p>b</p>`,
    );
    expect(found.map(({ notes }) => notes.map(({ html }) => textOf(html)))).toEqual([
      ['of a'],
      ['of One', 'of the plate'],
      [],
    ]);
  });

  it('keep a passage for readers, and tell the speaker what it says', () => {
    const found = frames(
      '<p>Seen.<span data-mark="readers-only"> Read.</span> Seen too.</p><div data-mark="readers-only"><p>Only read.</p></div>',
    );
    expect(found).toHaveLength(1);
    expect(found[0]?.body).toBe('<p>Seen. Seen too.</p>');
    expect(found[0]?.notes).toEqual([
      { html: '<p>Read.</p>', from: 'lesson', long: false },
      { html: '<p>Only read.</p>', from: 'lesson', long: false },
    ]);
  });

  it('leave a passage for readers off the hand-out where it has no room under its frame', () => {
    const said = `<div data-mark="speaker-notes"><p>${'a'.repeat(NOTE_LETTERS - 20)}</p></div>`;
    const read = (letters: number) => `<div data-mark="readers-only"><p>${'b'.repeat(letters)}</p></div>`;
    const longs = (html: string) => frames(`<p>a</p>${html}`)[0]?.notes.map(({ long }) => long);
    expect(longs(said + read(20))).toEqual([false, false]);
    expect(longs(said + read(21))).toEqual([false, true]);
    expect(longs(read(NOTE_LETTERS) + read(1))).toEqual([false, true]);
  });

  it('show the room what no reader sees', () => {
    expect(frames('<div data-mark="room-only"><p>Who sees it first?</p></div>')[0]?.body).toBe(
      '<p>Who sees it first?</p>',
    );
  });

  it('refuse a note that has no room under its frame on paper', () => {
    const note = `<p>a</p><div data-mark="speaker-notes"><p>${'a'.repeat(NOTE_LETTERS + 1)}</p></div>`;
    expect(() => frames(note)).toThrow(/at most 320 letters/i);
  });
});

describe('the minutes of frames', () => {
  const frame = (kind: Frame['kind'], minutes: number | null = null, asleep = false) => ({ kind, minutes, asleep });

  it('are the lesson’s, shared by what the frames show', () => {
    const shared = frameMinutes(10, [frame('prose'), frame('exercise'), frame('prose', 2), frame('try-it')]);
    expect(shared).toEqual([1, 3, 2, 4]);
  });

  it('are none for a frame that is not shown', () => {
    expect(frameMinutes(6, [frame('prose'), frame('exercise', null, true), frame('prose', 9, true)])).toEqual([
      6, 0, 0,
    ]);
  });

  it('make the lesson’s own minutes together, unless it gave its frames more', () => {
    const kinds = fc.constantFrom<Frame['kind']>('prose', 'plate', 'exercise', 'slip');
    const one = fc.record({
      kind: kinds,
      minutes: fc.option(fc.integer({ min: 0, max: 9 })),
      asleep: fc.boolean(),
    });
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 120 }), fc.array(one, { maxLength: 40 }), (total, all) => {
        const sum = frameMinutes(total, all).reduce((made, minutes) => made + minutes, 0);
        const given = all.reduce((made, { minutes, asleep }) => made + (asleep ? 0 : (minutes ?? 0)), 0);
        const shares = all.some(({ minutes, asleep }) => !asleep && minutes === null);
        expect(sum).toBeCloseTo(shares ? Math.max(total, given) : given, 6);
      }),
    );
  });
});
