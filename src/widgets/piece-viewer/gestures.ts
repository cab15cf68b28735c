/** What the hand asks of a picture. Places and ways are parts of it, from 0 to 1 across and down. */
export interface Wishes {
  readonly nearer: (factor: number, at: readonly [number, number]) => void;
  readonly move: (across: number, down: number) => void;
  /** Whether a finger that slides moves the picture, and not the page. */
  readonly holds: () => boolean;
}

/** How much one notch of a wheel changes, as the power of its way in pixels. */
const WHEEL = 1.0016;

/**
 * Pointer, wheel and pinch over a picture, as wishes. A wheel scrolls the page as everywhere, until the picture has the
 * focus or the key for zooming is held.
 */
export function listenToHands(stage: HTMLElement, wishes: Wishes): void {
  const down = new Map<number, readonly [number, number]>();
  const part = ({ clientX, clientY }: MouseEvent): readonly [number, number] => {
    const { left, top, width, height } = stage.getBoundingClientRect();
    return [(clientX - left) / width, (clientY - top) / height];
  };
  const spread = (): { readonly apart: number; readonly middle: readonly [number, number] } => {
    const [one = [0, 0], other = one] = [...down.values()];
    return {
      apart: Math.hypot((one[0] - other[0]) * stage.clientWidth, (one[1] - other[1]) * stage.clientHeight),
      middle: [(one[0] + other[0]) / 2, (one[1] + other[1]) / 2],
    };
  };
  stage.addEventListener('pointerdown', (event) => {
    if (event.button !== 0) return;
    down.set(event.pointerId, part(event));
    if (wishes.holds() || down.size > 1) stage.setPointerCapture(event.pointerId);
  });
  stage.addEventListener('pointermove', (event) => {
    if (!down.has(event.pointerId)) return;
    const before = spread();
    down.set(event.pointerId, part(event));
    const now = spread();
    if (down.size > 1 && before.apart > 0) wishes.nearer(now.apart / before.apart, now.middle);
    if (down.size > 1 || wishes.holds())
      wishes.move(before.middle[0] - now.middle[0], before.middle[1] - now.middle[1]);
  });
  for (const end of ['pointerup', 'pointercancel'] as const)
    stage.addEventListener(end, ({ pointerId }) => down.delete(pointerId));
  stage.addEventListener(
    'wheel',
    (event) => {
      if (!event.ctrlKey && !event.metaKey && document.activeElement !== stage) return;
      event.preventDefault();
      wishes.nearer(WHEEL ** -event.deltaY, part(event));
    },
    { passive: false },
  );
  // Two fingers belong to the picture even where one scrolls the page.
  stage.addEventListener(
    'touchmove',
    (event) => {
      if (event.touches.length > 1 || wishes.holds()) event.preventDefault();
    },
    { passive: false },
  );
}
