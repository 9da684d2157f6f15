/** Drop zone and order of cuts in a real browser: the worst fall stepped through, still where motion is not welcome; the cuts to take to the tree. */
import type { Page } from 'playwright-core';
import cutWords from '#content/drawings/cut-order.json';
import dropWords from '#content/drawings/drop-zone.json';
import { calculator as frame } from '#content/interface.json';
import type { Answer, Quantity } from '#core/kit/outcome.ts';
import { evaluate, example } from '#core/registry.ts';
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
  // The others, each with steps of its own, and the step cut beside the two.
  for (const [support, cutAt, first] of [['heldBoth', '1.25', cutWords.order.topFirst], ['hungBoth', '1.25', cutWords.order.hungBoth]] as const) {
    await page.locator(`input[name=support][value=${support}]`).check();
    await page.locator('#in-cutAt').fill(cutAt);
    await expect.poll(() => steps.first().innerText()).toContain(first[0]!.slice(0, 10));
    expect(await steps.count()).toBe(first.length);
  }
  await page.locator('input[name=support][value=free]').check();
  await page.locator('#in-diameter').fill('45');
  await page.locator('#in-cutAt').fill('0.4');
  await page.getByText(cutWords.order.farOut).waitFor();
  expect(await steps.count()).toBe(cutWords.order.twoCuts.length + cutWords.order.stepCut.length);
  expect(await steps.allInnerTexts()).not.toContain('');
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

test('the landing is carried on to where to stand: its way towards you, its ends with the margin, its swing', async ({ site, page }) => {
  await open(page, site.at('/calculators/drop-zone/'));
  const inputs = { ...example('drop-zone'), margin: 1.5, swing: 25 };
  await page.locator('#in-margin').fill('1.5');
  await page.locator('#in-swing').fill('25');
  const outcome = evaluate('drop-zone', inputs, 'judged') as Answer;
  const planOn = (name: string): number => (outcome.outputs[name] as Quantity).planOn as number;
  const carried = { landingReach: planOn('beside'), cutHeight: 3.5, landingOut: planOn('outward') + 1.5, landingBack: planOn('inward') + 1.5, landingSwing: 25 };
  const link = page.locator('.work .ways-on a[href*="/calculators/stance/"]');
  await expect.poll(async () => new URLSearchParams((await link.getAttribute('href'))?.split('?')[1]).get('landingSwing')).toBe('25');
  await link.click();
  for (const [name, value] of Object.entries(carried)) await expect.poll(async () => Number(await page.locator(`#in-${name}`).inputValue()), { message: name }).toBeCloseTo(Math.ceil(value * 100 - 1e-6) / 100, 1);
  // Outward, never short of it.
  expect(Number(await page.locator('#in-landingReach').inputValue())).toBeGreaterThanOrEqual(carried.landingReach);

  // A height is a range with no end that protects: it goes as a guess.
  await open(page, site.at('/calculators/height/'));
  await page.locator('.work .ways-on a[href*="/calculators/stance/"]').click();
  await page.waitForURL(/calculators\/stance/);
  await page.locator('input[name=cutHeight-got][value=judged]').waitFor();
  expect(new URL(page.url()).searchParams.get('exact') ?? '').not.toContain('cutHeight');
  expect(await page.locator('input[name=cutHeight-got][value=judged]').isChecked()).toBe(true);
});
