/** What the reader does before a page has come alive, and in the very moment it does, is not lost. */
import type { Page } from 'playwright-core';
import { settingsName } from '#device/settings.ts';
import { expect, test } from './harness.ts';

/** Scripts come late, so that there is time to type before them. */
const late = async (page: Page): Promise<void> => {
  await page.route('**/*.js', async (route) => {
    await new Promise((go) => setTimeout(go, 400));
    await route.continue();
  });
};
const alive = (page: Page): Promise<void> => page.locator('astro-island:not([ssr])').first().waitFor({ state: 'attached' });
/** Adds keys to a field as soon as its island listens: no task of the page comes before them. */
const typeAtOnce = (page: Page, keys: { field: string; more: string }): Promise<unknown> =>
  page.evaluate(({ field, more }) => {
    new MutationObserver((_, observer) => {
      observer.disconnect();
      const input = document.querySelector<HTMLInputElement>(field);
      if (!input) throw new Error('no such field');
      input.value += more;
      input.dispatchEvent(new Event('input', { bubbles: true }));
    }).observe(document, { subtree: true, attributeFilter: ['ssr'] });
  }, keys);
const inAddress = (page: Page, name: string): string | null => new URL(page.url()).searchParams.get(name);

test('what is typed, chosen and pressed before the page has come alive is not lost', async ({ site, profile, allow }) => {
  allow(/Service Worker registration blocked/);
  const page = await (await profile({ serviceWorkers: 'block' })).newPage();
  await late(page);
  await page.goto(site.at('/calculators/stance/'));
  await page.locator('#in-cutHeight').fill('3.2');
  await page.locator('input[name=gripHeight-got][value=judged]').check();
  await page.locator('input[name=standing][value=stemSide]').check();
  await alive(page);
  await expect.poll(() => new URL(page.url()).searchParams.get('cutHeight')).toBe('3.2');
  expect(await page.locator('#in-cutHeight').inputValue()).toBe('3.2');
  expect(await page.locator('input[name=gripHeight-got][value=judged]').isChecked()).toBe(true);
  expect(new URL(page.url()).searchParams.get('standing')).toBe('stemSide');
  expect(await page.locator('.finding.caution').filter({ hasText: 'stem side' }).count()).toBe(1);
});

test('a key in the very moment of coming alive goes on from what was typed before', async ({ site, profile, allow }) => {
  allow(/Service Worker registration blocked/);
  const context = await profile({ serviceWorkers: 'block' });
  for (const [path, field, name] of [['/calculators/stance/', 'cutHeight', 'cutHeight'], ['/card/', 'poleLongest', 'pole']] as const) {
    const page = await context.newPage();
    await late(page);
    await page.goto(site.at(path));
    await typeAtOnce(page, { field: `#in-${field}`, more: '2' });
    await page.locator(`#in-${field}`).fill('4.');
    await alive(page);
    await expect.poll(() => inAddress(page, name), { message: path }).toBe('4.2');
    expect(await page.locator(`#in-${field}`).inputValue()).toBe('4.2');
  }
});

test('what the device keeps goes with what was typed before, not over it; a usual value picked early is taken', async ({ site, profile, allow }) => {
  allow(/Service Worker registration blocked/);
  const context = await profile({ serviceWorkers: 'block' });
  const first = await context.newPage();
  await first.goto(site.at('/offline/'));
  await first.evaluate((name) => localStorage.setItem(name, JSON.stringify({ ruleSet: 'au-sa' })), settingsName);
  const open = async (): Promise<Page> => {
    const page = await context.newPage();
    await late(page);
    await page.goto(site.at('/calculators/approach-distance/'));
    await page.mouse.move(9, 9);
    return page;
  };
  const page = await open();
  await page.locator('select.steps').selectOption('132');
  await alive(page);
  await expect.poll(() => inAddress(page, 'voltage')).toBe('132');
  expect(inAddress(page, 'ruleSet')).toBe('au-sa');

  const other = await open();
  await other.locator('#in-ruleSet').selectOption('fr');
  await other.locator('#in-voltage').fill('66');
  await alive(other);
  await expect.poll(() => inAddress(other, 'voltage')).toBe('66');
  expect(inAddress(other, 'ruleSet')).toBe('fr');
});
