const EMPTY = /(<span\b[^>]*\bdata-plate-number\b[^>]*>)(<\/span>)/g;

/** Gives the plates of a page their running numbers, in the order in which they stand; a number already given stays. */
export function numberPlates(html: string): string {
  let number = 0;
  return html.replace(EMPTY, (_whole, start: string, end: string) => {
    number += 1;
    return `${start}Plate ${number}${end}`;
  });
}

const EXERCISE = /(<span\b[^>]*\bdata-exercise-number\b[^>]*>)(<\/span>)/g;

/** Gives the exercises of a page their running numbers, so that each has a name of its own: Exercise 1, Exercise 2. */
export function numberExercises(html: string): string {
  let number = 0;
  return html.replace(EXERCISE, (_whole, start: string, end: string) => {
    number += 1;
    return `${start} ${number}${end}`;
  });
}
