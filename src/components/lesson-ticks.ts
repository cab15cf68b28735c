import type { Note } from '../store/progress/notes.ts';
import { keepStanding, loadStanding } from '../store/progress/standing.ts';
import { type Keeping, storageWords } from '../words/storage-words.ts';

/** Notes that a check at the bench was ticked, or its tick taken away, and says so where that can't be kept. */
export function noteTick(
  jot: (note: Note) => Keeping,
  lesson: string,
  boxes: readonly HTMLInputElement[],
  { checked, dataset }: HTMLInputElement,
): void {
  const { check = '' } = dataset;
  const keeping = jot({ act: 'ticked', lesson, check, on: checked });
  const standing = loadStanding();
  const ticked = boxes.filter((box) => box.checked).map((box) => box.dataset['check'] ?? '');
  keepStanding({ ...standing, ticks: { ...standing.ticks, [lesson]: ticked } });
  const place = document.querySelector('[data-not-kept]');
  if (place) place.textContent = keeping.kept ? '' : storageWords(keeping);
}
