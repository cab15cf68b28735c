/** The windows of a showing: the room's and the speaker's. */
import { type BrowserContext, expect, type Page } from '@playwright/test';

/** The window has taken its place in the showing. */
export const awake = (window: Page): Promise<void> => window.locator('[data-awake]').waitFor();

/**
 * The other window of a showing, opened by key. A window of that name that is just closing takes the call with it; then
 * the key is pressed again, as anybody would.
 */
export async function openOther(context: BrowserContext, from: Page): Promise<Page> {
  const windows = context.pages().length;
  await expect(async () => {
    await from.keyboard.press('s');
    await expect.poll(() => context.pages().length, { timeout: 6000 }).toBeGreaterThan(windows);
  }).toPass();
  const other = context.pages().at(-1);
  if (!other) throw new Error('no window was opened');
  await awake(other);
  return other;
}
