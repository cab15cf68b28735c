import { describe, expect, it } from 'vitest';
import { withoutOrphans } from '../../src/entries/orphans.ts';

describe('the last word of a passage', () => {
  it('keeps to the word before it, where it is short', () => {
    expect(withoutOrphans('<p>Count the pins before you begin.</p>')).toBe(
      '<p>Count the pins before you\u00a0begin.</p>',
    );
    expect(withoutOrphans('<li>It stays as <em>it is</em>.</li>')).toBe('<li>It stays as <em>it\u00a0is</em>.</li>');
  });

  it('may have a line of its own where it is long', () => {
    expect(withoutOrphans('<p>Stop and ask a professional.</p>')).toBe('<p>Stop and ask a professional.</p>');
  });

  it('is looked for at the end of a passage alone, and never in a tag', () => {
    const html = '<p>One bar, <b class="a b">two</b> sides</p><p>A ring.</p>';
    expect(withoutOrphans(html)).toBe('<p>One bar, <b class="a b">two</b>\u00a0sides</p><p>A\u00a0ring.</p>');
  });
});
