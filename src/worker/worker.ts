/// <reference lib="webworker" />
/**
 * The service worker: keeps the whole edition on the device and answers from there. A new edition is fetched whole beside
 * the old one and waits until the reader takes it.
 */
import { PrecacheRoute } from 'workbox-precaching';
import { Route, Router } from 'workbox-routing';
import words from '#content/interface.json';
import type { ListedFile, Progress, ToWorker } from './messages.ts';
import { Shelf } from './shelf.ts';

declare const self: ServiceWorkerGlobalScope;
/** Written in by the build. */
declare const __FILES__: readonly ListedFile[];
const shelf = new Shelf('__EDITION__', __FILES__);
const { controller } = shelf;

const progress = (done: number, total: number): Progress => ({ type: 'progress', edition: shelf.edition, done, total });
const tellAll = async (message: Progress) => {
  for (const client of await self.clients.matchAll({ includeUncontrolled: true, type: 'window' })) client.postMessage(message);
};

self.addEventListener('install', (event) => {
  event.waitUntil(shelf.fill(event, (done, total) => void tellAll(progress(done, total))));
});
self.addEventListener('activate', (event) => {
  event.waitUntil(controller.activate(event).then(() => self.clients.claim()));
});
self.addEventListener('message', (event) => {
  const { type } = event.data as ToWorker;
  const [port] = event.ports;
  const mend = () => shelf.fill(event, (done, total) => port?.postMessage(progress(done, total)));
  const answer = async () => port?.postMessage(await shelf.holds());
  if (type === 'take') event.waitUntil(self.skipWaiting());
  if (type === 'look') event.waitUntil(answer());
  // What could not be fetched shows in the answer.
  if (type === 'mend') event.waitUntil(mend().catch(() => undefined).then(answer));
});

/** A page of the handbook's own frame, said with another status; plain words if that page is lost as well. */
const say = async (page: string, status: number, instead: string): Promise<Response> => {
  const kept = await controller.matchPrecache(new URL(page, location.href).href);
  const body = kept ? await kept.blob() : `<!doctype html><meta charset="utf-8"><title>${words.site.name}</title><p>${instead}</p>`;
  return new Response(body, { status, headers: { 'Content-Type': 'text/html;charset=utf-8' } });
};

const router = new Router();
const kept = new PrecacheRoute(controller, {
  // Inputs of a calculator and the tag of the search index do not change which file is meant.
  ignoreURLParametersMatching: [/.*/],
  cleanURLs: false,
  urlManipulation: ({ url }) => {
    const path = url.pathname.replace(/index\.html$/, '');
    return [new URL(path.endsWith('/') ? path : `${path}/`, url)];
  },
});
router.registerRoute(kept);
/** A page that this edition does not have: a newer one on the server may. */
const elsewhere = new Route(
  ({ request }) => request.mode === 'navigate',
  async ({ request }) => {
    try {
      return await fetch(request);
    } catch {
      return say('./offline/no-such-page/', 404, words.offline.noSuchPage);
    }
  },
);
router.registerRoute(elsewhere);
/** A file of this edition that the browser has cleared away and that cannot be fetched as this edition has it. */
router.setCatchHandler(async ({ request }) => {
  if (request.mode !== 'navigate') return Response.error();
  try {
    // The server may hold a newer edition: its own page, whole, is better than none.
    return await fetch(request);
  } catch {
    return say('./offline/lost/', 503, words.offline.lost);
  }
});
router.addFetchListener();
