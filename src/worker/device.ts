/** A page's side of the talk with the service worker. */
import type { Holds, Progress, ToWorker } from './messages.ts';

/** Undefined where the browser has none, or where the address is neither https nor this computer's own. */
export const container: ServiceWorkerContainer | undefined = typeof navigator === 'undefined' ? undefined : navigator.serviceWorker;

const base = import.meta.env.BASE_URL;

const listeners: ((found: ServiceWorkerRegistration) => void)[] = [];
/** Hears when any part of this page has registered the worker. */
export const onRegistered = (hear: (found: ServiceWorkerRegistration) => void): void => void listeners.push(hear);

/** @throws when the browser refuses */
export const register = async (): Promise<ServiceWorkerRegistration> => {
  if (!container) throw new Error('no service worker here');
  const found = await container.register(`${base}worker.js`, { scope: base });
  for (const hear of listeners) hear(found);
  return found;
};

export const registration = async (): Promise<ServiceWorkerRegistration | undefined> => container?.getRegistration(base);

/** Asks a worker for what it holds, after mending if so asked; `hear` is told how far the mending is. */
export const ask = (worker: ServiceWorker, type: 'look' | 'mend', hear: (progress: Progress) => void = () => undefined): Promise<Holds> =>
  new Promise((done) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }: MessageEvent<Holds | Progress>) => {
      if (data.type === 'progress') return hear(data);
      port1.close();
      done(data);
    };
    worker.postMessage({ type } satisfies ToWorker, [port2]);
  });

/** Hears how far the fetching of an edition is. */
export const onProgress = (hear: (progress: Progress) => void): void => {
  container?.addEventListener('message', (event: MessageEvent<Progress>) => {
    if (event.data?.type === 'progress') hear(event.data);
  });
  container?.startMessages();
};

/** Hears of a worker that has fetched a new edition and waits; at once if one waits already. */
export const onWaiting = (found: ServiceWorkerRegistration, hear: (waiting: ServiceWorker) => void): void => {
  const look = () => {
    if (found.waiting && found.active) hear(found.waiting);
  };
  look();
  found.addEventListener('updatefound', () => found.installing?.addEventListener('statechange', look));
};

/** How long an island may take to write what was entered last into the address. */
const SETTLE = 300;

/** What a press of a button sets off to be fetched is here by then. */
const FETCHED = 700;
/** A change of edition that takes longer than this is held up. */
const HELD_UP = 4000;

/**
 * Lets the edition that waits take over; every open page of the handbook then opens itself again. Chromium may put the
 * change off for minutes where the old worker has a file to answer for at that moment: opening the page again ends that.
 */
export const take = (waiting: ServiceWorker): void => {
  setTimeout(() => waiting.postMessage({ type: 'take' } satisfies ToWorker), FETCHED);
  setTimeout(() => {
    if (waiting.state === 'installed') location.reload();
  }, FETCHED + HELD_UP);
};

/** Opens the page again, with its address as it then is, once another edition has taken over. */
export const reopenOnTake = (): void => {
  if (!container?.controller) {
    // The first worker claims the page it was registered from: that is no change of edition.
    container?.addEventListener('controllerchange', reopenOnTake, { once: true });
    return;
  }
  container.addEventListener('controllerchange', () => setTimeout(() => location.reload(), SETTLE), { once: true });
};
