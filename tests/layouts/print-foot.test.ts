import { expect, it } from 'vitest';
import { printFoot } from '../../src/layouts/print-foot.ts';

it('writes the workbook, the title and the address at the foot of a sheet', () => {
  expect(printFoot('The fitting sum', '/lessons/the-fitting-sum/')).toContain(
    'content:"Evenfold · The fitting sum · /lessons/the-fitting-sum/"',
  );
});

it('leaves the title out where a page has none', () => {
  expect(printFoot(undefined, '/')).toContain('content:"Evenfold · /"');
});

it('lets no sign of a title or an address end the rule or the style element', () => {
  const rule = printFoot('“a" } </style>', '/?seed=1&row=2\\');
  expect(rule.match(/content:"([^"]*)"/)?.[1]).toBe('Evenfold · “a\\22  } \\3c /style\\3e  · /?seed=1\\26 row=2\\5c ');
});
