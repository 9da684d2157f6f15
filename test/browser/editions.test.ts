/** A new edition is offered whole and taken on word; a broken one is refused; what the browser cleared away comes back. */
import { existsSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterEach } from 'vitest';
import words from '#content/interface.json';
import { DIST, editionIn } from '../site/built.ts';
import { secondEdition } from '../site/second-edition.ts';
import { expect, test, untilKept } from './harness.ts';

const { offline } = words;
const SECOND = 'beefbeef';
const SOON = { timeout: 10_000 };
const folders: string[] = [];
const second = () => {
  const folder = secondEdition(DIST, SECOND);
  folders.push(folder);
  return folder;
};
afterEach(() => folders.splice(0).forEach((folder) => rmSync(folder, { recursive: true })));

const shownEdition = (page: Page) => page.locator('footer .edition-id').innerText();
const update = (page: Page) => page.evaluate(async () => void (await (await navigator.serviceWorker.ready).update()));
/** Takes files out of the device's cache, as a browser short of room does. */
const clear = (page: Page, part: string) =>
  page.evaluate(async (wanted) => {
    let cleared = 0;
    for (const name of await caches.keys()) {
      const cache = await caches.open(name);
      for (const request of await cache.keys()) {
        if (new URL(request.url).pathname.includes(wanted) && (await cache.delete(request))) cleared += 1;
      }
    }
    return cleared;
  }, part);
const isKept = (page: Page, path: string) =>
  page.evaluate(async (wanted) => {
    for (const name of await caches.keys()) {
      const kept = await (await caches.open(name)).keys();
      if (kept.some(({ url }) => new URL(url).pathname === wanted)) return true;
    }
    return false;
  }, path);

test('a new edition is offered, waits, and is taken with the address as it is', async ({ site, page }) => {
  const first = editionIn(DIST);
  await page.goto(site.at('/terms/?q=collar&x=1.5'));
  await untilKept(page);
  await page.locator('.notice').waitFor({ state: 'detached' });
  await site.restart({ dir: second() });
  await update(page);
  // Its fetching is not told: the reader is reading.
  await page.locator('.notice').waitFor();
  expect(await page.locator('.notice progress').isVisible()).toBe(false);
  await page.getByText(offline.offer).waitFor();
  // It waits: the old one answers for as long as the reader likes.
  await page.reload();
  await page.getByText(offline.offer).waitFor();
  expect(await shownEdition(page)).toBe(first);
  await page.getByRole('button', { name: offline.offerTake }).click();
  await expect.poll(() => shownEdition(page), SOON).toBe(SECOND);
  expect(new URL(page.url()).search).toBe('?q=collar&x=1.5');
  // And it is whole with no server.
  await site.stop();
  await page.goto(site.at('/offline/'));
  await page.locator('.keeping-state[data-state=all]').waitFor();
  expect(await page.locator('[data-edition=here]').innerText()).toBe(SECOND);
});

test('a new edition is taken in the middle of typing: every field is as it was, also one that cannot be read', async ({ site, page }) => {
  await page.goto(site.at('/calculators/stance/'));
  await untilKept(page);
  await page.locator('#in-cutHeight').fill('2.9');
  await page.locator('#in-gripHeight').fill('hip');
  await site.restart({ dir: second() });
  await update(page);
  await page.getByText(offline.offer).waitFor();
  // Typed last, and the button pressed at once.
  await page.locator('#in-poleLongest').fill('3.1');
  await page.getByRole('button', { name: offline.offerTake }).click();
  await expect.poll(() => shownEdition(page), SOON).toBe(SECOND);
  for (const [name, text] of [['cutHeight', '2.9'], ['gripHeight', 'hip'], ['poleLongest', '3.1']]) {
    await expect.poll(() => page.locator(`#in-${name}`).inputValue(), SOON).toBe(text);
  }
});

test('/offline/ names the edition that waits and takes it', async ({ site, page }) => {
  await page.goto(site.at('/offline/'));
  await page.locator('.keeping-state[data-state=all]').waitFor();
  await site.restart({ dir: second() });
  await update(page);
  await expect.poll(() => page.locator('[data-edition=new]').innerText(), SOON).toBe(SECOND);
  await page.getByRole('button', { name: offline.take }).click();
  await expect.poll(() => shownEdition(page), SOON).toBe(SECOND);
});

test('a half-broken edition is refused and the old one stays whole', async ({ site, page, allow }) => {
  allow(/Failed to load resource|bad-precaching-response|integrity/);
  const first = editionIn(DIST);
  await page.goto(site.at('/offline/'));
  await page.locator('.keeping-state[data-state=all]').waitFor();
  for (const spoil of [
    (dir: string) => rmSync(join(dir, 'terms/index.html')),
    (dir: string) => writeFileSync(join(dir, 'terms/index.html'), 'not what the list says'),
  ]) {
    const broken = second();
    expect(existsSync(join(broken, 'terms/index.html'))).toBe(true);
    spoil(broken);
    await site.restart({ dir: broken });
    await update(page);
    await page.locator('.keeping-state[data-state=broken]').waitFor();
    expect(await page.evaluate(async () => (await navigator.serviceWorker.ready).waiting)).toBeNull();
  }
  await site.stop();
  await page.goto(site.at('/terms/'));
  expect(await shownEdition(page)).toBe(first);
  await page.goto(site.at('/offline/'));
  await page.locator('.keeping-state[data-state=all]').waitFor();
});

test('a file that the browser cleared away is put back when it is asked for', async ({ site, page }) => {
  await page.goto(site.at('/offline/'));
  await page.locator('.keeping-state[data-state=all]').waitFor();
  expect(await clear(page, '/terms/')).toBeGreaterThan(0);
  await page.goto(site.at('/terms/'));
  expect(await isKept(page, '/terms/')).toBe(true);
});

test('what was cleared away is mended on the next visit, and on /offline/ by its button', async ({ site, page, allow }) => {
  allow(/Failed to load resource|ERR_/);
  await page.goto(site.at('/offline/'));
  await page.locator('.keeping-state[data-state=all]').waitFor();
  await clear(page, '/terms/');
  await page.goto(site.at('/'));
  await expect.poll(() => isKept(page, '/terms/'), SOON).toBe(true);
  await clear(page, '/terms/');
  await site.stop();
  await page.goto(site.at('/offline/'));
  await page.locator('.keeping-state[data-state=part]').waitFor();
  await site.restart();
  await page.getByRole('button', { name: offline.mend }).click();
  await page.locator('.keeping-state[data-state=all]').waitFor();
  expect(await isKept(page, '/terms/')).toBe(true);
});

test('cleared away and no signal: said in other words than an address that is no page', async ({ site, page, allow }) => {
  allow(/Failed to load resource|ERR_/);
  await page.goto(site.at('/'));
  await untilKept(page);
  await clear(page, '/terms/');
  await site.stop();
  const lost = await page.goto(site.at('/terms/'));
  expect(lost?.status()).toBe(503);
  expect(await page.locator('h1').innerText()).toBe(offline.lostTitle);
  // Even that page may be gone.
  await clear(page, '/offline/');
  await page.goto(site.at('/terms/'));
  expect(await page.locator('body').innerText()).toBe(offline.lost);
});
