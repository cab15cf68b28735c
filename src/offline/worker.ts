/**
 * The service worker: keeps the whole workbook on the device, so that it opens in a room without a network.
 * It is put together after the build (`.config/offline/`), when every file and its checksum are known.
 */
import { clientsClaim } from 'workbox-core';
import { matchPrecache, precacheAndRoute } from 'workbox-precaching';
import { registerRoute } from 'workbox-routing';
import { type KeptFile, keptPage } from './kept-page.ts';

/** Every file of the workbook; the build writes the list in here. */
declare const KEPT: KeptFile[];

/** How long a page may take from the network before the kept one is shown instead. Ten seconds of a dead hotspot would
 * be the end of a lesson; a slow one still gives the newest page. */
const PATIENCE = 4000;

// A page's address without its last slash would break the relative addresses in it.
const kept = async (url: URL): Promise<Response> => {
  const found = keptPage(url.pathname);
  if (found.act === 'redirect') return Response.redirect(`${found.path}${url.search}`);
  return (await matchPrecache(found.path)) ?? (await matchPrecache('404.html')) ?? Response.error();
};

// Pages come from the network where there is one, so that nobody reads an old one without need. Everything else has its
// checksum in its name or goes with the pages, and comes from what is kept.
registerRoute(
  ({ request }) => request.mode === 'navigate',
  async ({ request, url }) => {
    const late = new Promise<undefined>((done) => setTimeout(done, PATIENCE));
    const fresh = fetch(request).catch(() => undefined);
    return (await Promise.race([fresh, late])) ?? (await kept(url));
  },
);
precacheAndRoute(KEPT, { cleanURLs: false, ignoreURLParametersMatching: [/.*/] });

// The first visit is kept at once. A newer worker waits until the last page of the old workbook is closed: a page that is
// open may still fetch parts that only the old one has.
clientsClaim();
