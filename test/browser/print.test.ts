/** On paper: as many sheets as the text needs, the frame left out, address and edition on it. */
import jsQR from 'jsqr';
import type { Page } from 'playwright-core';
import { ready } from './alive.ts';
import { DIST, editionIn, pagesOf } from '../site/built.ts';
import { readPdf } from './pdf.ts';
import { expect, test } from './harness.ts';

const SHEETS = { A4: [595, 842], Letter: [612, 792] } as const;
/** The most sheets each kind of page may take; a worked page that runs over is a fault of its print style. */
const MOST: [kind: RegExp, sheets: number][] = [
  [/^\/chapters\/[^/]+\/$/, 8],
  [/^\/calculators\/[^/]+\/$/, 6],
  [/^\/$/, 3],
  // Ready-reckoners are for one sheet; in letters that can be read the weather and noise take two, the rules for lines more.
  [/^\/tables\/(?!weather|noise|approach-distances|qualified-workers)[^/]+\/$/, 1],
  [/^\/tables\/(weather|noise)\/$/, 2],
];
const printed = pagesOf(DIST).flatMap(({ path }) => MOST.filter(([kind]) => kind.test(path)).map(([, most]) => ({ path, most })));

/** The smallest letters that are printed, in points. */
const smallest = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    let least = Infinity;
    for (let text = texts.nextNode(); text; text = texts.nextNode()) {
      const parent = text.parentElement as HTMLElement;
      if (text.nodeValue?.trim() && parent.checkVisibility() && !parent.closest('.only-read, .mark')) least = Math.min(least, parseFloat(getComputedStyle(parent).fontSize) * 0.75);
    }
    return least;
  });

test.for(printed)('$path', async ({ path, most }, { site, profile }) => {
  const page = await (await profile({ serviceWorkers: 'block' })).newPage();
  await page.goto(site.at(path), { waitUntil: 'networkidle' });
  for (const format of ['A4', 'Letter'] as const) {
    const { pages, text } = await readPdf(await page.pdf({ format, printBackground: false }));
    expect(pages.length, format).toBeGreaterThan(0);
    expect(pages.length, format).toBeLessThanOrEqual(most);
    for (const { width, height, words } of pages) {
      // Chromium rounds a sheet up to whole pixels.
      expect(Math.abs(width - SHEETS[format][0]), format).toBeLessThan(1.5);
      expect(Math.abs(height - SHEETS[format][1]), format).toBeLessThan(1.5);
      // No sheet comes out bare.
      expect(words, format).toBeGreaterThan(3);
    }
    expect(text).toContain(editionIn(DIST));
  }
  if (!path.startsWith('/tables/')) return;
  await page.emulateMedia({ media: 'print' });
  expect(await smallest(page)).toBeGreaterThanOrEqual(8);
});

/** What the code at the foot says, as a phone would read it: eight dots to the module. */
const codeOf = async (page: Page): Promise<string | undefined> => {
  const { d, size } = await page.locator('.print-code .qr-dark').evaluate((dark) => ({ d: dark.getAttribute('d') ?? '', size: Number(dark.closest('svg')?.getAttribute('viewBox')?.split(' ')[2]) }));
  const [dots, width] = [8, size * 8];
  const picture = new Uint8ClampedArray(width * width * 4).fill(255);
  for (const [, x, y, run] of d.matchAll(/M(\d+) (\d+)h(\d+)v1/g)) {
    for (let row = Number(y) * dots; row < (Number(y) + 1) * dots; row++) {
      for (let at = Number(x) * dots; at < (Number(x) + Number(run)) * dots; at++) picture.set([0, 0, 0], (row * width + at) * 4);
    }
  }
  return jsQR(picture, width, width)?.data;
};

test('a calculator prints with the figures as they are now, its address as a code that reads so', async ({ site, page }) => {
  await page.goto(site.at('/calculators/stance/'));
  await ready(page);
  await page.locator('#in-cutHeight').fill('3.27');
  await expect.poll(() => new URL(page.url()).searchParams.get('cutHeight')).toBe('3.27');
  const shown = (await page.locator('.answer-figure').allInnerTexts()).map((text) => text.trim());
  await expect.poll(async () => {
    await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
    return page.locator('.print-code .qr-dark').count();
  }).toBe(1);
  expect(await codeOf(page)).toBe(page.url());
  for (const format of ['A4', 'Letter'] as const) {
    const { text } = await readPdf(await page.pdf({ format }));
    expect(text).toContain('cutHeight=3.27');
    for (const figure of shown) expect(text.replaceAll('\u00a0', ' ')).toContain(figure.replaceAll('\u00a0', ' '));
  }
});
