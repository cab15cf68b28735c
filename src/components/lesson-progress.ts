import type { Skill } from '../solver/exercises/skills.ts';
import { notesOn } from '../store/progress/notes.ts';
import { keepStanding, loadStanding, STANDING_KEY } from '../store/progress/standing.ts';
import { TOLD, type Told } from '../store/progress/told.ts';
import { thisDevice } from '../store/safe-storage.ts';

/** Jots down what is done on the page of a lesson: that it was opened and read, its ticks, what its exercises tell. */
const page = document.querySelector<HTMLElement>('article[data-lesson]');
const { lesson = '', skills = '' } = page?.dataset ?? {};
const boxes = [...document.querySelectorAll<HTMLInputElement>('.bench [data-check]')];
const jot = notesOn();

/** Notes the first time that something is done in this lesson. Pages opened later show it before they are drawn. */
function did(word: 'opened' | 'read' | 'worked'): void {
  const standing = loadStanding();
  const words = standing.lessons[lesson] ?? '';
  if (words.includes(word)) return;
  if (word !== 'worked') jot({ act: word, lesson });
  keepStanding({ ...standing, lessons: { ...standing.lessons, [lesson]: `${words} ${word}`.trim() } });
}

function showTicks(): void {
  const ticks = loadStanding().ticks[lesson];
  for (const box of boxes) box.checked = ticks?.includes(box.dataset['check'] ?? '') ?? false;
}

did('opened');
showTicks();
thisDevice.watch((key) => key === STANDING_KEY && showTicks());

for (const box of boxes)
  box.addEventListener('change', () => {
    if (box.checked) did('worked');
    void import('./lesson-ticks.ts').then(({ noteTick }) => noteTick(jot, lesson, boxes, box));
  });

page?.addEventListener(TOLD, (event) => {
  const told = (event as CustomEvent<Told>).detail;
  const ofLesson = skills.split(' ') as Skill[];
  jot({ ...told, act: 'told', lesson, ofLesson, zone: new Date().getTimezoneOffset() });
  if (told.outcome === 'right') did('worked');
});

const watch = new IntersectionObserver((seen) => {
  if (seen.some(({ isIntersecting }) => isIntersecting)) did('read');
});
const end = document.querySelector('[data-lesson-end]');
if (end) watch.observe(end);
