/** Search as a reader uses it: by key, by tap, by keyboard alone, with typing errors, with no signal. */
import type { Page } from 'playwright-core';
import words from '#content/interface.json';
import { expect, test, untilKept } from './harness.ts';

const { search } = words;
const results = (page: Page) => page.locator('#search .search-results');
const open = async (page: Page) => {
  await page.keyboard.press('/');
  await page.locator('#search[open]').waitFor();
};
const ask = async (page: Page, query: string) => {
  await page.locator('#search-input').fill(query);
  await page.locator('#search [role=status]').getByText(/found/).waitFor();
};
const groupsOf = (page: Page) => results(page).locator('h2').allInnerTexts();

test('nothing of it is loaded before it is opened', async ({ site, page }) => {
  const asked: string[] = [];
  page.on('request', (request) => asked.push(new URL(request.url()).pathname));
  await page.goto(site.at('/chapters/three-cuts/'), { waitUntil: 'load' });
  expect(asked.filter((path) => /pagefind|search|dialog|uqr|qr\./.test(path))).toEqual([]);
});

test('a tap opens it; results stand by kind with the match marked', async ({ site, page }) => {
  await page.goto(site.at('/'));
  await page.locator('.bottom-bar [data-search]').click();
  await page.locator('#search[open]').waitFor();
  await ask(page, 'collar');
  const groups = await groupsOf(page);
  expect(groups).toContain(search.kinds.term);
  expect(groups).toContain(search.kinds.chapter);
  const first = results(page).locator('section', { hasText: search.kinds.term }).locator('a').first();
  expect(await first.locator('strong mark').innerText()).toBe('collar');
  await first.click();
  await page.waitForURL(/\/terms\/c\/#collar$/);
});

test('typing errors are forgiven', async ({ site, page }) => {
  await page.goto(site.at('/'));
  await open(page);
  await ask(page, 'kikback');
  expect(await results(page).locator('a').first().getAttribute('href')).toMatch(/\/terms\/k\/#kickback$/);
});

test('words that stand only in the text of a page are found and marked', async ({ site, page }) => {
  await page.goto(site.at('/'));
  await open(page);
  await ask(page, 'shed roof');
  await results(page).locator('a[href*="/chapters/three-cuts/"] mark').first().waitFor();
});

test('what is found in a chapter opens at its section', async ({ site, page }) => {
  await page.goto(site.at('/'));
  await open(page);
  await ask(page, 'rope and people who know');
  await results(page).locator('a[href*="/chapters/three-cuts/#"]').first().click();
  await page.waitForURL(/\/chapters\/three-cuts\/#.+/);
  expect(await page.locator('#search[open]').count()).toBe(0);
});

test('a bar asked for is answered there, in the units chosen, and opens its calculator', async ({ site, page }) => {
  await page.goto(site.at('/'));
  await open(page);
  await page.locator('#search-input').fill('250 mm bar');
  const answer = page.locator('.search-answer');
  expect(await answer.locator('.search-answer-say').innerText()).toMatch(/250.mm .*\d+.mm/);
  await answer.locator('a').click();
  await page.waitForURL(/\/calculators\/bar-length\/\?.*barLength=250/);
});

test('nothing found helps on', async ({ site, page }) => {
  await page.goto(site.at('/'));
  await open(page);
  await page.locator('#search-input').fill('wobblewrigth');
  const nothing = page.locator('.search-nothing');
  await nothing.waitFor();
  expect(await nothing.innerText()).toContain('wobblewrigth');
  expect(await nothing.locator('a').evaluateAll((links) => links.map((link) => new URL((link as HTMLAnchorElement).href).pathname))).toEqual(
    expect.arrayContaining(['/chapters/', '/terms/']),
  );
});

test('by keyboard alone: open, walk the results, open one, close', async ({ site, page }) => {
  await page.goto(site.at('/chapters/where-to-stand/'));
  await open(page);
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('search-input');
  await page.keyboard.type('three cuts');
  await page.locator('#search [role=status]').getByText(/found/).waitFor();
  await page.keyboard.press('ArrowDown');
  expect(await page.evaluate(() => document.activeElement?.closest('.search-results') !== null)).toBe(true);
  await page.keyboard.press('ArrowUp');
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('search-input');
  await page.keyboard.press('Escape');
  await page.keyboard.press('Escape');
  expect(await page.locator('#search[open]').count()).toBe(0);
  await open(page);
  await page.locator('#search-input').fill('Taking a limb off in three cuts');
  await results(page).locator('a').first().waitFor();
  await page.keyboard.press('Enter');
  await page.waitForURL(/\/chapters\/three-cuts\/$/);
});

test('a slash typed into a field stays in the field', async ({ site, page }) => {
  await page.goto(site.at('/calculators/stance/'));
  const field = page.locator('.field-input input').first();
  await field.fill('');
  await field.press('/');
  expect(await field.inputValue()).toBe('/');
  expect(await page.locator('#search').count()).toBe(0);
});

test('rubbish in the field is only not found', async ({ site, page }) => {
  await page.goto(site.at('/'));
  await open(page);
  for (const rubbish of ['<img src=x onerror=alert(1)>', '%%%', '"', '\\', '(', '  ', '🪚', 'a'.repeat(5000), '12 inch bar '.repeat(50)]) {
    await page.locator('#search-input').fill(rubbish);
    await page.waitForTimeout(80);
  }
  expect(await page.locator('#search img').count()).toBe(0);
});

test('with the server gone it answers all the same', async ({ site, page, allow }) => {
  allow(/ERR_CONNECTION_REFUSED/);
  await page.goto(site.at('/'));
  await untilKept(page);
  await site.stop();
  await page.goto(site.at('/chapters/three-cuts/'));
  await open(page);
  await ask(page, 'shed roof');
  await results(page).locator('a[href*="/chapters/three-cuts/"] mark').first().waitFor();
});
