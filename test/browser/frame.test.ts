/** The frame of every page: units, light and dark, terms in a text, what was read, print. */
import type { Page } from 'playwright-core';
import words from '#content/interface.json';
import { expect, test } from './harness.ts';

const visibleFigure = (page: Page) => page.locator('main .fact').first().innerText();

test('units are chosen once, for every page, and stand before anything is painted', async ({ site, page }) => {
  await page.goto(site.at('/chapters/three-cuts/'));
  expect(await page.locator('.imperial').first().isVisible()).toBe(false);
  const metric = await visibleFigure(page);
  await page.getByRole('radio', { name: words.settings.imperial }).check();
  const imperial = await visibleFigure(page);
  expect(imperial).not.toBe(metric);
  expect(imperial).toMatch(/in|ft/);
  await page.addInitScript(() => {
    new MutationObserver((_, watch) => {
      if (!document.body) return;
      (window as unknown as { firstUnits: string }).firstUnits = document.documentElement.dataset['units'] ?? '';
      watch.disconnect();
    }).observe(document, { childList: true, subtree: true });
  });
  await page.goto(site.at('/chapters/where-to-stand/'));
  expect(await page.evaluate(() => (window as unknown as { firstUnits: string }).firstUnits)).toBe('imperial');
  expect(await page.locator('input[value=imperial]').isChecked()).toBe(true);
});

test('units of a link hold on its page and are not kept', async ({ site, page }) => {
  await page.goto(site.at('/calculators/bar-length/?v=1&got=judged&limbDiameter=100&barLength=250&offSquare=15&margin=50&units=imperial'));
  expect(await page.locator('html').getAttribute('data-units')).toBe('imperial');
  await page.goto(site.at('/chapters/three-cuts/'));
  expect(await page.locator('html').getAttribute('data-units')).toBe('metric');
});

test('dark follows the device, and the reader’s choice goes first', async ({ site, profile }) => {
  const page = await (await profile({ colorScheme: 'dark' })).newPage();
  const paper = () => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
  await page.goto(site.at('/'));
  const dark = await paper();
  await page.getByRole('radio', { name: words.settings.light, exact: true }).check();
  const light = await paper();
  expect(light).not.toBe(dark);
  await page.reload();
  expect(await paper()).toBe(light);
  await page.getByRole('radio', { name: words.settings.device }).check();
  expect(await paper()).toBe(dark);
});

test('where the browser keeps nothing, a choice holds for the page and that is said', async ({ site, page }) => {
  await page.addInitScript(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException('refused', 'QuotaExceededError');
    };
  });
  await page.goto(site.at('/'));
  const said = page.getByText(words.settings.refused);
  expect(await said.isVisible()).toBe(false);
  await page.getByRole('radio', { name: words.settings.imperial }).check();
  expect(await page.locator('html').getAttribute('data-units')).toBe('imperial');
  expect(await said.isVisible()).toBe(true);
});

test('damaged storage stops nothing', async ({ site, page }) => {
  await page.addInitScript(() => {
    localStorage.setItem('standing-clear.settings', '{"units":');
    localStorage.setItem('standing-clear.progress', '[[[');
  });
  await page.goto(site.at('/'));
  expect(await page.locator('html').getAttribute('data-units')).toBe('metric');
});

test('a term’s meaning opens by tap, by keyboard and by mouse, and nobody leaves the page', async ({ site, page }) => {
  await page.goto(site.at('/chapters/three-cuts/'));
  const term = page.locator('.term').first();
  const card = page.locator('.term-card').first();
  await term.click();
  expect(await card.isVisible()).toBe(true);
  expect((await card.innerText()).length).toBeGreaterThan(30);
  await page.keyboard.press('Escape');
  expect(await card.isVisible()).toBe(false);
  // By keyboard it opens where one stands, Escape closes it, and going on closes it too.
  await page.locator('h1').evaluate((h1) => { h1.tabIndex = -1; h1.focus(); });
  const onTerm = () => page.evaluate(() => document.activeElement === document.querySelector('.term'));
  for (let tabs = 0; tabs < 30 && !(await onTerm()); tabs++) await page.keyboard.press('Tab');
  expect(await card.isVisible()).toBe(true);
  await page.keyboard.press('Escape');
  expect(await card.isVisible()).toBe(false);
  await page.keyboard.press('Enter');
  expect(await card.isVisible()).toBe(true);
  for (let tabs = 0; tabs < 2; tabs++) await page.keyboard.press('Tab');
  expect(await card.isVisible()).toBe(false);
  await page.mouse.move(0, 0);
  await term.hover();
  await expect.poll(() => card.isVisible()).toBe(true);
  await page.mouse.move(0, 0);
  await expect.poll(() => card.isVisible()).toBe(false);
  expect(new URL(page.url()).pathname).toBe('/chapters/three-cuts/');
  await term.click();
  await card.getByText(words.terms.more).click();
  await page.waitForURL(/\/terms\/[a-z]\/#/);
});

test('a term’s meaning lies within the window, on a phone and on a desk', async ({ site, profile }) => {
  for (const viewport of [{ width: 320, height: 640 }, { width: 1280, height: 800 }]) {
    const page = await (await profile({ viewport })).newPage();
    await page.goto(site.at('/chapters/three-cuts/'));
    for (const term of (await page.locator('.term').all()).slice(0, 6)) {
      await term.click();
      const box = await page.locator('.term-card:popover-open').boundingBox();
      expect(box && box.x >= 0 && box.x + box.width <= viewport.width && box.y >= 0 && box.y + box.height <= viewport.height).toBe(true);
      await page.keyboard.press('Escape');
    }
  }
});

test('the chapter opened last is offered at home, and one read to its end is marked', async ({ site, page }) => {
  await page.goto(site.at('/'));
  expect(await page.locator('[data-last]').isVisible()).toBe(false);
  await page.goto(site.at('/chapters/three-cuts/'));
  const title = await page.locator('h1').innerText();
  await page.locator('.check-yourself').scrollIntoViewIfNeeded();
  await expect.poll(() => page.evaluate(() => localStorage.getItem('standing-clear.progress'))).toMatch(/"done":\["three-cuts"\]/);
  await page.goto(site.at('/chapters/where-to-stand/'));
  await page.goto(site.at('/'));
  expect(await page.locator('[data-chapter="three-cuts"] .done').isVisible()).toBe(true);
  expect(await page.locator('[data-chapter="where-to-stand"] .done').isVisible()).toBe(false);
  await page.goto(site.at('/chapters/three-cuts/'));
  await page.goto(site.at('/'));
  expect(await page.locator('[data-last] a').innerText()).toBe(title);
});

test('nothing is wider than a small phone, and what is tapped is large enough', async ({ site, profile }) => {
  const page = await (await profile({ viewport: { width: 320, height: 640 } })).newPage();
  for (const path of ['/', '/chapters/', '/chapters/three-cuts/', '/terms/', '/terms/c/', '/404.html']) {
    await page.goto(site.at(path));
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth), path).toBeLessThanOrEqual(0);
    const small = await page.locator('.bottom-bar > *, .ways-on a, .letters a, .switch label, summary').evaluateAll((all) =>
      all.filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < 48).map((one) => one.textContent),
    );
    expect(small, path).toEqual([]);
  }
});

test('on paper there is no frame, ink is black, and the page says where and which it is', async ({ site, profile }) => {
  const page = await (await profile({ colorScheme: 'dark' })).newPage();
  await page.goto(site.at('/chapters/three-cuts/'));
  await page.keyboard.press('Shift');
  await page.emulateMedia({ media: 'print' });
  const foot = page.locator('.print-foot');
  await expect
    .poll(async () => {
      await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
      return page.locator('.print-code .qr .qr-dark').count();
    })
    .toBe(1);
  expect(await page.locator('.frame:visible').count()).toBe(0);
  expect(await foot.innerText()).toContain(site.at('/chapters/three-cuts/'));
  expect(await foot.locator('.edition-id').innerText()).toBe(await page.locator('.footer .edition-id').textContent());
  expect(await page.evaluate(() => getComputedStyle(document.querySelector('main p') as Element).color)).toBe('rgb(0, 0, 0)');
});
