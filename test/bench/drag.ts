/**
 * How soon a move of the hand is seen: the person and the cut in `stance`, the cut and the tip in `drop-zone`, a worker in a
 * plan of three limbs are dragged with tolerances on and the processor slowed, and beside it, in the same run, a bare text
 * change answers the same moves. From the time stamp of the move to the paint after the page has changed.
 */
import type { Browser, Locator, Page } from 'playwright-core';
import planLabels from '#content/drawings/plan.json' with { type: 'json' };
import plan from '#content/plan/words.json' with { type: 'json' };
import { serve } from '../../src/build/serve.ts';
import { DIST } from '../site/built.ts';

const SLOWED = 4;
const MOVES = 480;
/** Between two moves, ms: from the first to the second in turn, so that they come in every part of a frame, not always in the same. */
const PAUSES = [20, 37] as const;
/** What a move may take on top of a bare text change, in ms: one frame. */
export const ALLOWED = 16;
const FLOOR = `<!doctype html><title>floor</title><p role="slider" style="width:300px;height:300px">0</p>
<script>let n = 0; document.querySelector('p').addEventListener('pointermove', (e) => { e.target.textContent = ++n; });</script>`;

/**
 * `floor`: what 98 % of the bare text changes are painted within, ms; they wait for the next frame as the moves do. Shares
 * are of the moves painted within the floor and ALLOWED. `middle`: the floor's median.
 */
export type Drag = { floor: number; middle: number; handles: { name: string; share: number; median: number; moves: number }[] };

/** In the page: notes for each move that changed it how long it took to be painted. */
const note = (page: Page) =>
  page.evaluate(() => {
    const times: number[] = [];
    let moved: number | undefined;
    for (const move of ['pointerrawupdate', 'pointermove'] as const) addEventListener(move, (event) => (moved = event.timeStamp), { capture: true });
    new MutationObserver(() => {
      const from = moved;
      if (from === undefined) return;
      moved = undefined;
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => times.push(performance.now() - from);
        port2.postMessage(0);
      });
    }).observe(document.body, { subtree: true, childList: true, characterData: true, attributes: true });
    (globalThis as unknown as { times: number[] }).times = times;
  });

const measure = async (page: Page, handle: Locator): Promise<number[]> => {
  await handle.scrollIntoViewIfNeeded();
  const box = await handle.boundingBox();
  if (!box) throw new Error('nothing to drag');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  await note(page);
  for (let move = 0; move < MOVES; move += 1) {
    await page.mouse.move(x + 40 * Math.sin(move / 9), y + 12 * Math.sin(move / 5));
    await page.waitForTimeout(PAUSES[0] + ((move * 7) % (PAUSES[1] - PAUSES[0])));
  }
  // Before the hand lets go: what changes then is no move's.
  const times = await page.evaluate(() => (globalThis as unknown as { times: number[] }).times);
  await page.mouse.up();
  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  if (times.length < MOVES / 4) throw new Error(`only ${times.length} of ${MOVES} moves changed anything`);
  return times;
};

const reached = (values: number[], by: number) => values.toSorted((a, b) => a - b)[Math.floor(values.length * by)] ?? NaN;

export const drag = async (browser: Browser): Promise<Drag> => {
  const site = await serve({ dir: DIST, port: 0, instead: (path) => (path === '/floor' ? { status: 200, body: FLOOR } : undefined) });
  try {
    const context = await browser.newContext({ viewport: { width: 390, height: 844 }, serviceWorkers: 'block' });
    const page = await context.newPage();
    await page.goto(`${site.address}floor`);
    const bare = await measure(page, page.locator('p'));
    const floor = reached(bare, 0.98);
    const within = (times: number[]) => times.filter((time) => time <= floor + ALLOWED).length / times.length;
    const handles: Drag['handles'] = [];
    for (const [of, place] of [['stance', 0], ['stance', 1], ['drop-zone', 0], ['drop-zone', 1]] as const) {
      await page.goto(`${site.address}calculators/${of}/`, { waitUntil: 'networkidle' });
      // The calculator comes alive at the first act.
      await page.mouse.move(9, 9);
      await page.locator('astro-island:not([ssr])').first().waitFor({ state: 'attached' });
      const handle = page.locator('.view.chosen [role=slider]').nth(place);
      const name = `${of}: ${(await handle.getAttribute('aria-label')) ?? ''}`;
      const times = await measure(page, handle);
      handles.push({ name, share: within(times), median: reached(times, 0.5), moves: times.length });
    }
    // Three limbs, the worker of the first turned about its cut.
    await page.goto(`${site.address}plan/`, { waitUntil: 'networkidle' });
    await page.mouse.move(9, 9);
    await page.getByRole('button', { name: plan.demo }).click();
    await page.locator('.plan-sheet').waitFor();
    const turned = await measure(page, page.getByRole('slider', { name: planLabels.labels.moveWorker }));
    handles.push({ name: `${plan.title}: ${planLabels.labels.moveWorker}`, share: within(turned), median: reached(turned, 0.5), moves: turned.length });
    return { floor, middle: reached(bare, 0.5), handles };
  } finally {
    await site.close();
  }
};
