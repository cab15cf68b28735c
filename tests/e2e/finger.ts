import { type CDPSession, expect, type Locator, type Page } from '@playwright/test';

/** The least that a finger hits at once (the house's own target), in pixels; what stands in a sentence is as high as its line. */
const TARGET = 44;

/** Where a finger would have to go: what stands under its tip, how large it is, and how far off it lies. */
interface Place {
  /** What it is called, or else how it is written. */
  readonly name: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** In a sentence, where a larger target would tear the lines apart. */
  readonly inSentence: boolean;
  /** Whether the tip of the finger is on it. */
  readonly hit: boolean;
  /** What lies over it, where it is in view and can't be hit. */
  readonly over: string;
  /** How far a swipe has to bring it, and where the swipe begins: on the page, or in a part that scrolls by itself. */
  readonly across: number;
  readonly down: number;
  readonly from: { readonly x: number; readonly y: number };
  /** How far a finger can go there at once. */
  readonly room: { readonly across: number; readonly down: number };
}

/** A radio button or a checkbox is hit with its label. */
const placesOf = (targets: Locator): Promise<Place[]> =>
  targets.evaluateAll((elements) =>
    elements.map((element): Place => {
      const isBox = element instanceof HTMLInputElement && /^(radio|checkbox)$/.test(element.type);
      const whole = (isBox && element.labels?.[0]) || element;
      // A link can run over two lines: its first piece is hit.
      const box = whole.getClientRects()[0] ?? whole.getBoundingClientRect();
      const [x, y] = [box.left + box.width / 2, box.top + box.height / 2];
      const middle = { x: innerWidth / 2, y: innerHeight / 2 };
      let [across, down] = [0, 0];
      let from = { x: 5, y: middle.y };
      let room = { across: innerWidth, down: innerHeight * 0.8 };
      for (let at = element.parentElement; at && at !== document.documentElement; at = at.parentElement) {
        const { overflowX, overflowY } = getComputedStyle(at);
        const inner = at.getBoundingClientRect();
        const sideways = /auto|scroll/.test(overflowX) && at.scrollWidth > at.clientWidth + 1;
        const upwards = /auto|scroll/.test(overflowY) && at.scrollHeight > at.clientHeight + 1;
        if (sideways && (x < inner.left + 24 || x > inner.right - 12)) across = inner.left + inner.width / 2 - x;
        if (upwards && (y < inner.top + 12 || y > inner.bottom - 12)) down = inner.top + inner.height / 2 - y;
        if (across === 0 && down === 0) continue;
        const top = Math.max(inner.top, 0);
        const bottom = Math.min(inner.bottom, innerHeight);
        // The part itself has to be in view before a finger can be laid on it.
        if (bottom - top > 40) {
          from = { x: inner.left + inner.width / 2, y: (top + bottom) / 2 };
          room = { across: inner.width * 0.8, down: (bottom - top) * 0.8 };
        } else [across, down] = [0, middle.y - (inner.top + inner.height / 2)];
        break;
      }
      if (across === 0 && down === 0 && (y < 60 || y > innerHeight - 60)) down = middle.y - y;
      const tip = x >= 0 && y >= 0 && x < innerWidth && y < innerHeight ? document.elementFromPoint(x, y) : null;
      const hit = tip !== null && (whole.contains(tip) || element.contains(tip));
      const stands = whole.closest('p, li, dd, figcaption, td');
      const lettersOf = (part: Element): number => part.textContent?.trim().length ?? 0;
      return {
        name: `${(whole.textContent ?? '').trim().slice(0, 40)} (${element.outerHTML.slice(0, 90)})`,
        x,
        y,
        width: box.width,
        height: box.height,
        inSentence:
          stands !== null &&
          /^inline/.test(getComputedStyle(whole).display) &&
          lettersOf(stands) > lettersOf(whole) + 20,
        hit,
        over: hit || !tip ? '' : `${tip.tagName.toLowerCase()}.${tip.className}`,
        across,
        down,
        from,
        room,
      };
    }),
  );

async function placeOf(target: Locator): Promise<Place> {
  const [place, ...others] = await placesOf(target);
  if (!place || others.length > 0) throw new Error(`${others.length > 0 ? 'More than one' : 'Nothing'}: ${target}`);
  return place;
}

const isNear = ({ across, down }: Place): boolean => across === 0 && down === 0;

function expectUsable({ name, hit, over, width, height, inSentence }: Place): void {
  expect(hit, `${name} is covered by ${over}`).toBe(true);
  const least = inSentence ? 0 : TARGET - 0.5;
  expect(Math.min(width, height), `${name} is too small for a finger`).toBeGreaterThanOrEqual(least);
}

/** A finger on a phone: it swipes and taps, and it can do nothing else. */
export class Finger {
  private readonly page: Page;
  private session: CDPSession | undefined;

  constructor(page: Page) {
    this.page = page;
  }

  /** Drags what lies under it, half of the way before this place and half behind it, and rests before it lets go. */
  async swipe({ x, y }: { x: number; y: number }, across: number, down: number): Promise<void> {
    this.session ??= await this.page.context().newCDPSession(this.page);
    const { session } = this;
    // The moments are told, for a page takes how fast a finger was from them: it rests, so nothing goes on by itself.
    let at = Date.now() / 1000;
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', part: number, seconds = 0.03) => {
      at += seconds;
      const touchPoints = type === 'touchEnd' ? [] : [{ x: x + across * (part - 0.5), y: y + down * (part - 0.5) }];
      return session.send('Input.dispatchTouchEvent', { type, timestamp: at, touchPoints });
    };
    await touch('touchStart', 0);
    for (const part of [0.2, 0.5, 0.8, 1]) await touch('touchMove', part);
    await touch('touchMove', 1, 0.3);
    await touch('touchEnd', 1, 0.1);
  }

  /** Waits until the page has come to rest. */
  private async rest(): Promise<void> {
    const top = () => this.page.evaluate(() => scrollY);
    for (let before = -1, now = await top(); now !== before; now = await top()) {
      before = now;
      await this.page.waitForTimeout(50);
    }
  }

  /**
   * Swipes until the tip of the finger can be laid on this, and all is at rest; fails where no swipe leads there, or where
   * it is too small or covered.
   */
  async goTo(target: Locator): Promise<Place> {
    await expect(target).toBeVisible();
    let before = '';
    let still = 0;
    for (let looks = 0; looks < 160; looks += 1) {
      const place = await placeOf(target);
      const now = JSON.stringify([place.x, place.y]);
      still = now === before ? still + 1 : 0;
      before = now;
      const { across, down, from, room } = place;
      // At an end of the page it stays near the edge, where it can be hit all the same.
      if (still > 5 || (isNear(place) && still > 0 && place.hit)) {
        expectUsable(place);
        return place;
      }
      if (isNear(place)) await this.page.waitForTimeout(60);
      else
        await this.swipe(
          from,
          Math.max(-room.across, Math.min(room.across, across)),
          Math.max(-room.down, Math.min(room.down, down)),
        );
    }
    throw new Error(`No swipe leads to ${(await placeOf(target)).name}.`);
  }

  async tap(target: Locator): Promise<void> {
    const { x, y } = await this.goTo(target);
    await this.page.touchscreen.tap(x, y);
  }

  /** Taps a field and writes with the keyboard that comes up; what stood there goes first. */
  async write(field: Locator, text: string): Promise<void> {
    await this.tap(field);
    await expect(field).toBeFocused();
    for (let left = (await field.inputValue()).length; left > 0; left -= 1) await this.page.keyboard.press('Backspace');
    await this.page.keyboard.insertText(text);
  }

  /** Taps a slider at a part of its way, 0 to 1. */
  async slide(slider: Locator, part: number): Promise<void> {
    await this.goTo(slider);
    const box = await slider.boundingBox();
    if (!box) throw new Error('The slider is not there.');
    await this.page.touchscreen.tap(box.x + 12 + (box.width - 24) * part, box.y + box.height / 2);
  }

  /**
   * Swipes down the page from its top and looks at everything of this on the way: each has to come to a place where the
   * finger can be laid on it, large enough and with nothing over it.
   *
   * @returns how many there were
   */
  async passOver(targets: Locator): Promise<number> {
    const all = await placesOf(targets);
    const seen = new Set<number>();
    let top = -1;
    for (;;) {
      for (const [index, place] of (await placesOf(targets)).entries()) {
        const isOnEdge = place.hit && place.across === 0;
        if (seen.has(index) || !(isNear(place) || isOnEdge)) continue;
        expectUsable(place);
        seen.add(index);
      }
      const now = await this.page.evaluate(() => scrollY);
      if (now === top) break;
      top = now;
      // Along the edge of the page, where nothing scrolls by itself, and half a window at once: a little more than the finger goes.
      const height = this.page.viewportSize()?.height ?? 0;
      await this.swipe({ x: 5, y: height / 2 }, 0, -height / 2);
      await this.rest();
    }
    expect(all.filter((_, index) => !seen.has(index)).map(({ name }) => name)).toEqual([]);
    return all.length;
  }
}
