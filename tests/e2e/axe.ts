import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';

const STANDARDS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/**
 * What axe finds wrong in a page, or in the part of it that the selector `within` names: of each fault its rule and the
 * markup where it stands. `colours` looks at contrast alone, all that differs from one theme to the other.
 *
 * Axe runs inside the page in one go ("legacy"): its other way hands every node of a page over to a second one, to
 * reach frames of other origins, and takes four times as long. The workbook has no such frames.
 */
export async function axeFinds(
  page: Page,
  { within, colours = false }: { within?: string; colours?: boolean } = {},
): Promise<string[]> {
  const axe = new AxeBuilder({ page }).setLegacyMode().options({ resultTypes: ['violations'] });
  if (within) axe.include(within);
  if (colours) axe.withRules('color-contrast');
  else axe.withTags(STANDARDS);
  const { violations } = await axe.analyze();
  return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`));
}
