/**
 * Why something could not be kept on this device, or not be read from it.
 * - `no-storage`: this browser has none, or has switched it off
 * - `blocked`: the browser refuses it for this page
 * - `full`: there is no room left
 * - `unreadable`: what was kept here is damaged
 * - `newer`: what is kept here is from a later version of the workbook
 * - `refused`: a figure is outside what the workbook plans for
 */
export type NotKept = 'no-storage' | 'blocked' | 'full' | 'unreadable' | 'newer' | 'refused';

/** Whether what is on screen is also kept on this device. */
export type Keeping = { readonly kept: true } | { readonly kept: false; readonly why: NotKept };

const WHY: Readonly<Record<NotKept, string>> = {
  'no-storage': 'This browser keeps nothing for the workbook. What you see stays until you close the page.',
  blocked: 'This browser does not let the page keep anything. What you see stays until you close the page.',
  full: 'There is no room left on this device to keep this. What you see stays until you close the page. You can make room by removing saved data of other sites.',
  unreadable: 'What was kept here could not be read, so you start afresh. The next thing you enter is kept as usual.',
  newer:
    'What is kept here is from a later version of the workbook, and it is left as it is. Load the page again to get that version.',
  refused: 'This figure is not kept, because the workbook can’t plan for it. The last one that worked is still kept.',
};

/** What to show beside figures that are kept on this device. */
export const storageWords = (keeping: Keeping): string => (keeping.kept ? 'Kept on this device.' : WHY[keeping.why]);
