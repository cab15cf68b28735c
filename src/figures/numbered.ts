/**
 * Which of the numbers `first` to `last` there is room for, `pitch` apart: the last, the first, and every fifth, tenth …
 * between. `room` is what one number takes.
 */
export function numbered(
  last: number,
  pitch: number,
  room = 8 * String(last).length + 5,
  first = 1,
): (number: number) => boolean {
  const every = [1, 5, 10, 20, 50, 100, 200].find((some) => some * pitch >= room) ?? 500;
  return (number) =>
    number === last ||
    ((last - number) * pitch >= room &&
      (number === first || (number % every === 0 && (number - first) * pitch >= room * 0.85)));
}
