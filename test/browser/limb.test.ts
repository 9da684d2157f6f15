/** Drop zone and order of cuts in a real browser: the worst fall stepped through, still where motion is not welcome; the cuts to take to the tree. */
import type { Page } from 'playwright-core';
import cutWords from '#content/drawings/cut-order.json';
import dropWords from '#content/drawings/drop-zone.json';
import { calculator as frame } from '#content/interface.json';
import { expect, test } from './harness.ts';

const { player } = dropWords;
const open = async (page: Page, address: string): Promise<void> => {
  await page.goto(address);
  // The page comes alive at the first act.
  await page.mouse.move(5, 5);
  await page.mouse.move(9, 9);
  await page.locator('astro-island:not([ssr])').first().waitFor({ state: 'attached' });
};
const piece = (page: Page): Promise<string | null> => page.locator('svg:has(#drop-zone-side-title) .mark-piece').first().getAttribute('d');
const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });

test('the worst fall is stepped through, to its end and back', async ({ site, page }) => {
  await open(page, site.at('/calculators/drop-zone/'));
  const start = await piece(page);
  expect(await button(page, player.back).isDisabled()).toBe(true);
  const seen = new Set([start]);
  for (let i = 0; i < 40 && !(await button(page, player.on).isDisabled()); i++) {
    await button(page, player.on).click();
    seen.add(await piece(page));
  }
  expect(seen.size).toBeGreaterThan(10);
  expect(await button(page, player.on).isDisabled()).toBe(true);
  for (let i = 0; i < 40 && !(await button(page, player.back).isDisabled()); i++) await button(page, player.back).click();
  expect(await piece(page)).toBe(start);
});

test('it plays by itself, and not where motion is not welcome', async ({ site, page }) => {
  await page.emulateMedia({ reducedMotion: 'no-preference' });
  await open(page, site.at('/calculators/drop-zone/'));
  await button(page, player.play).click();
  await expect.poll(() => button(page, player.on).isDisabled(), { timeout: 20_000 }).toBe(true);

  await page.emulateMedia({ reducedMotion: 'reduce' });
  await open(page, site.at('/calculators/drop-zone/'));
  const start = await piece(page);
  await button(page, player.play).click();
  // One leap to where it lies, nothing between.
  await expect.poll(() => button(page, player.on).isDisabled()).toBe(true);
  expect(await piece(page)).not.toBe(start);
});

test('the cuts stand in order, for this support and this thickness', async ({ site, page }) => {
  await open(page, site.at('/calculators/cut-order/'));
  const steps = page.locator('section', { has: page.getByRole('heading', { name: cutWords.order.title }) }).locator('li');
  expect(await steps.count()).toBe(cutWords.order.threeCuts.length);
  await page.locator('#in-diameter').fill('20');
  await expect.poll(() => steps.count()).toBe(cutWords.order.oneCut.length);
  await page.locator('input[name=support][value=tipResting]').check();
  await page.locator('#in-cutAt').fill('1.2');
  await expect.poll(() => steps.first().innerText()).toContain(cutWords.order.either[0]!.slice(0, 20));
  await page.locator('input[name=fault][value=cracked], #in-fault').first().waitFor();
});

test('a tree is found by either of its names; those with no green weight on file say so', async ({ site, page }) => {
  await open(page, site.at('/calculators/limb-weight/'));
  const options = (): Promise<string[]> => page.locator('#in-species option').allInnerTexts();
  const all = await options();
  expect(all).toHaveLength(1 + 75 + 60);
  expect(all.filter((name) => name.includes(frame.noGreen))).toHaveLength(60);
  for (const [query, tree] of [['sugar map', 'Acer saccharum'], ['taxus bacc', 'Yew'], ['OAK red north', 'Quercus rubra']] as const) {
    await page.locator('input[type=search]').first().fill(query);
    await expect.poll(async () => (await options()).length).toBeLessThan(4);
    expect((await options()).join()).toContain(tree);
  }
});
