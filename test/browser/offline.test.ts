/** After one visit the server goes away: everything must still be there, also under a sub-path. */
import { describe } from 'vitest';
import words from '#content/interface.json';
import { stance } from '#core/calculators/stance.ts';
import { writeLink } from '#core/kit/link.ts';
import { example } from '#core/registry.ts';
import { HOSTED, pagesOf } from '../site/built.ts';
import { expect, test, untilKept } from './harness.ts';

const NO_SERVER = /Failed to load resource|ERR_CONNECTION_REFUSED/;
const heading = (html: string) => /<h1[^>]*>([\s\S]*?)<\/h1>/.exec(html)?.[1]?.replace(/<[^>]*>/g, '').replace(/\s+/g, ' ').trim();

describe.each(HOSTED)('with the server stopped, under %s', (base, dir) => {
  test('every page opens', { timeout: 300_000 }, async ({ site, page }) => {
    await site.restart({ base, dir });
    await page.goto(site.at('/'));
    await untilKept(page);
    await site.stop();
    const pages = pagesOf(dir).filter(({ path }) => path !== '/404.html');
    expect(pages.length).toBeGreaterThan(5);
    for (const { path, html } of pages) {
      const response = await page.goto(site.at(path));
      expect(response?.status(), path).toBe(200);
      expect(response?.fromServiceWorker(), path).toBe(true);
      const h1 = (await page.locator('h1').innerText()).replace(/\s+/g, ' ');
      expect(h1, path).toBe(heading(html)?.replaceAll('&amp;', '&'));
    }
  });

  test('an address without its last slash, with its index, and one that is no page', async ({ site, page, allow }) => {
    allow(NO_SERVER);
    await site.restart({ base, dir });
    await page.goto(site.at('/'));
    await untilKept(page);
    await site.stop();
    for (const path of ['/offline', '/offline/index.html', '/offline?from=somewhere', '/index.html']) {
      expect((await page.goto(site.at(path)))?.status(), path).toBe(200);
    }
    const missing = await page.goto(site.at('/chapters/no-such-chapter/'));
    expect(missing?.status()).toBe(404);
    expect(await page.locator('h1').innerText()).toBe(words.notFound.title);
  });
});

test('with the server stopped, a calculator opens from a link with its inputs and works', async ({ site, page }) => {
  await page.goto(site.at('/'));
  await untilKept(page);
  await site.stop();
  const inputs = { ...example('stance'), cutHeight: 3.2 };
  await page.goto(site.at(`/calculators/stance/?${writeLink(stance, inputs, 'measured')}`));
  const height = page.locator('#in-cutHeight');
  await expect.poll(() => height.inputValue()).toBe('3.2');
  const answer = async () => (await page.locator('.answer-figure').allInnerTexts()).join();
  const before = await answer();
  await height.fill('3.9');
  await expect.poll(answer).not.toBe(before);
});

test('with the server stopped, search answers, and the page it finds opens', async ({ site, page }) => {
  await page.goto(site.at('/'));
  await untilKept(page);
  await site.stop();
  await page.keyboard.press('/');
  await page.getByLabel(words.search.label).fill('undercut');
  const hit = page.locator('.search-results a').first();
  await hit.waitFor();
  expect(await page.locator('dialog [role=status]').innerText()).not.toContain(words.search.titlesOnly);
  await hit.click();
  await page.waitForURL((url) => url.pathname !== '/');
  expect(await page.locator('main').innerText()).toMatch(/undercut/i);
});

test('its fetching is told, and told as done', async ({ site, page }) => {
  await page.goto(site.at('/'));
  await page.locator('.notice [role=status]').getByText(words.offline.filled).waitFor();
  await page.getByRole('button', { name: words.offline.close }).click();
  await expect.poll(() => page.locator('.notice').count()).toBe(0);
});

test('/offline/ says what the device holds', async ({ site, page }) => {
  await page.goto(site.at('/offline/'));
  await page.locator('.keeping-state[data-state=all]').waitFor();
  const [, held, of] = /(\d+) of (\d+)/.exec(await page.locator('.keeping-state').innerText()) ?? [];
  expect(Number(held)).toBeGreaterThan(20);
  expect(held).toBe(of);
  expect(await page.locator('[data-edition=here]').innerText()).toBe(await page.locator('footer .edition-id').innerText());
});

test('where the reader saves data, nothing is fetched before they say so', async ({ site, page }) => {
  await page.addInitScript(() => Object.defineProperty(navigator, 'connection', { value: { saveData: true } }));
  await page.goto(site.at('/'));
  await page.getByText(words.offline.saving).waitFor();
  expect(await page.evaluate(() => navigator.serviceWorker.getRegistrations().then((found) => found.length))).toBe(0);
  await page.getByRole('button', { name: words.offline.savingKeep }).click();
  await untilKept(page);
});
