/**
 * Part of every page: once it is loaded and idle, has the whole handbook kept on this device, and offers a new edition when
 * one is there. Where the reader saves data, nothing is fetched before they say so. What it says is loaded when needed.
 */
import { container, ask, onProgress, onWaiting, register, registration, reopenOnTake, take } from './device.ts';

const savesData = () => (navigator as { connection?: { saveData?: boolean } }).connection?.saveData === true;
let loaded: Promise<typeof import('./notice.ts')> | undefined;
/** One promise for all, so that what is said comes in order. */
const notice = () => (loaded ??= import('./notice.ts'));

/** @param shown whether its progress is told: for the first edition, not for one that comes while the reader reads */
const keep = async (shown: boolean) => {
  let first: string | undefined;
  if (shown) {
    onProgress(async ({ edition, done, total }) => {
      first ??= edition;
      if (edition === first) (await notice()).showProgress(done, total);
    });
  }
  const found = await register();
  onWaiting(found, async (waiting) => (await notice()).offer(() => take(waiting)));
  // The browser may have cleared some of it away since the last visit. `/offline/` shows that and has a button for it.
  if (found.active && !savesData() && !document.querySelector('[data-shows-keeping]')) {
    const { files } = await ask(found.active, 'look');
    if (files.held < files.of) await ask(found.active, 'mend');
  }
};

const begin = async () => {
  reopenOnTake();
  const before = await registration();
  if (savesData() && !before) (await notice()).askFirst(() => void keep(true));
  else await keep(!before);
};

// Where the browser refuses, the page works as any page does; `/offline/` says so.
const start = () => void begin().catch(() => undefined);
if (container && import.meta.env.PROD) {
  const idle = () => ('requestIdleCallback' in window ? requestIdleCallback(start, { timeout: 5000 }) : setTimeout(start, 1000));
  if (document.readyState === 'complete') idle();
  else addEventListener('load', idle);
}
