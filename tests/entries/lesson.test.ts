import { describe, expect, it } from 'vitest';
import { fieldNote, type LessonField, lesson } from '../../src/entries/lesson.ts';
import { mistakeLine, readLesson } from '../../src/entries/mistakes.ts';
import { readFileName } from '../../src/entries/slug.ts';

const GOOD = `---
title: The fitting sum
order: 4
scene: Low water, and the kettle is on in the boathouse.
able:
  - find the spare strings
  - share them between two sides
  - fold them to even counts
summary:
  - Spare strings are shared by two sides.
  - Each side must be even.
---
Text.
`;

const mistakesIn = (text: string) => {
  const reading = readLesson(text);
  return reading.ok ? [] : reading.mistakes.map((mistake) => mistakeLine('04-the-fitting-sum.mdx', mistake));
};

describe('front matter of a lesson', () => {
  it('fills in what the writer left out', () => {
    expect(readLesson(GOOD)).toMatchObject({ ok: true, lesson: { minutes: 30, needs: [], checklist: [], skills: [] } });
  });

  it('sets the apostrophes as the text does', () => {
    const reading = readLesson(GOOD.replace('title: The fitting sum', "title: The lantern's sum, don't hurry"));
    expect(reading).toMatchObject({ ok: true, lesson: { title: 'The lantern’s sum, don’t hurry' } });
  });

  it('says file, line, field, what stands there and what would do', () => {
    expect(mistakesIn(GOOD.replace('order: 4', 'order: 40'))).toEqual([
      '04-the-fitting-sum.mdx, line 3, order: 40 stands there. A whole number from 1 to 15, each used once would do.',
    ]);
  });

  it('reports every mistake of a file at once, in the order of its lines', () => {
    const text = GOOD.replace('title: The fitting sum', 'title: 7').replace('  - find the spare strings\n', '');
    expect(mistakesIn(text)).toEqual([
      expect.stringContaining('line 2, title: 7 stands there'),
      expect.stringContaining('line 6, able: ["share them between two sides","fold them to even counts"] stands there'),
    ]);
  });

  it('refuses a field it does not know and names those it does', () => {
    const [line] = mistakesIn(GOOD.replace('order: 4', 'order: 4\nduration: 20'));
    expect(line).toContain('line 4, duration: this field is not known. Only title, order,');
  });

  it('names the missing field where nothing stands', () => {
    expect(mistakesIn(GOOD.replace(/^scene.*\n/m, ''))[0]).toContain('scene: nothing stands there');
  });

  it('wants exactly two lines of summary', () => {
    expect(mistakesIn(GOOD.replace('  - Each side must be even.\n', ''))[0]).toContain('summary:');
  });

  it('says where YAML cannot be read', () => {
    expect(mistakesIn(GOOD.replace('title: The', 'title: "The'))[0]).toMatch(/line \d+, front matter:/);
    expect(mistakesIn('No front matter.')[0]).toContain('line 1, front matter: nothing stands there');
  });

  it.each(Object.keys(lesson.shape) as LessonField[])('explains the field %s to the writer', (field) => {
    expect(fieldNote(field)?.description).toMatch(/\.$/);
    expect(fieldNote(field)?.works).toMatch(/^[A-Z].*[^.]$/);
  });
});

describe('file name of a lesson', () => {
  it('gives the number and the address', () => {
    expect(readFileName('04-the-fitting-sum.mdx')).toEqual({ order: 4, slug: 'the-fitting-sum' });
  });

  it.each(['4-the-fitting-sum.mdx', 'the-fitting-sum.mdx', '04-The Sum.mdx', '04-sum.md'])(
    'is refused as %s',
    (name) => {
      expect(readFileName(name)).toBeUndefined();
    },
  );
});
