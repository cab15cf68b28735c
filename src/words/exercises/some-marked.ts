/** What is said beside a chart to mark that is half worked. */
export const SOME_MARKED = 'Some cells are marked already.';
