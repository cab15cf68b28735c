/**
 * Where this page keeps things: on the device, or in its own window where a room is looking on (`data-shelf` on the page).
 * What a room enters is then no learner’s own, and is gone with the window. May throw where storage is blocked; undefined
 * where there is none.
 */
export const pageShelf = (): Storage | undefined =>
  globalThis.document?.documentElement.dataset['shelf'] === 'window'
    ? globalThis.sessionStorage
    : globalThis.localStorage;
