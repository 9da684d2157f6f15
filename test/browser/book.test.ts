/** The whole handbook printed: contents, numbers on the sheets, nothing cut off at an edge. */
import words from '#content/interface.json' with { type: 'json' };
import handbook from '#content/handbook.json' with { type: 'json' };
import { DIST, editionIn } from '../site/built.ts';
import type { Page } from 'playwright-core';
import { readPdf, type Sheet } from './pdf.ts';
import { expect, test } from './harness.ts';

/** What A4 leaves between the margins of src/styles/print.css, in CSS pixels: 210 − 32 mm by 297 − 33 mm. */
const SHEET = { width: (178 / 25.4) * 96, height: (264 / 25.4) * 96 };

/** Each heading that the contents send to stands on the sheet they name. */
const onTheirSheets = async (page: Page, sheets: readonly Sheet[]): Promise<void> => {
  const sent = await page.evaluate(() => [...document.querySelectorAll<HTMLElement>('[data-sheet-of]')].map((place) => ({
    sheet: Number(place.textContent), heading: document.getElementById(place.dataset['sheetOf']!)!.textContent!,
  })));
  const plain = sheets.map(({ text }) => text.replace(/\s+/g, ' '));
  const astray = sent.filter(({ sheet, heading }) => !plain[sheet - 1]?.includes(heading.replace(/\s+/g, ' ').trim()));
  expect(sent.length).toBeGreaterThan(handbook.parts.flatMap(({ chapters }) => chapters).length + handbook.parts.length);
  expect(astray).toEqual([]);
  // In their order, and past the contents themselves, where every heading stands as well.
  expect(sent.map(({ sheet }) => sheet)).toEqual(sent.map(({ sheet }) => sheet).sort((a, b) => a - b));
  expect(sent[0]!.sheet).toBeGreaterThan(1);
};

test('the printed handbook has its contents, page numbers and every part', { timeout: 300_000 }, async ({ site, profile }) => {
  const page = await (await profile({ serviceWorkers: 'block' })).newPage();
  page.setDefaultTimeout(240_000);
  await page.goto(site.at('/book/'), { waitUntil: 'networkidle' });
  const { pages, text } = await readPdf(await page.pdf({ format: 'A4', printBackground: false }));
  expect(pages.length).toBeGreaterThan(50);
  await onTheirSheets(page, pages);
  expect(pages.filter(({ words: count }) => count <= 3)).toEqual([]);
  const plain = text.replace(/\s+/g, ' ');
  expect(plain).toContain(words.book.contents);
  expect(plain).toContain(`1 / ${pages.length}`);
  expect(plain).toContain(`${pages.length} / ${pages.length}`);
  handbook.parts.filter(({ chapters }) => chapters.length > 0).forEach(({ title }, p) => {
    // Once in the contents and once at its place.
    expect(plain.split(`${p + 1} ${title}`).length, title).toBeGreaterThanOrEqual(3);
  });
  expect(text).toContain(editionIn(DIST));
});

test('no figure of it is cut off: it fits a sheet, and all its words lie inside it', { timeout: 120_000 }, async ({ site, profile }) => {
  const page = await (await profile({ serviceWorkers: 'block', viewport: { width: Math.floor(SHEET.width), height: Math.floor(SHEET.height) } })).newPage();
  await page.emulateMedia({ media: 'print' });
  await page.goto(site.at('/book/'), { waitUntil: 'networkidle' });
  const { figures, wrong } = await page.evaluate(({ width, height }) => {
    const wrong: string[] = [];
    const figures = [...document.querySelectorAll('figure')];
    for (const figure of figures) {
      const box = figure.getBoundingClientRect();
      if (box.height > height || box.right > width + 1 || box.left < -1) wrong.push(`too large: ${figure.textContent?.slice(0, 60)}`);
      for (const svg of figure.querySelectorAll('svg')) {
        const frame = svg.getBoundingClientRect();
        if (frame.width < 50) wrong.push(`not drawn: ${figure.textContent?.slice(0, 60)}`);
        for (const label of svg.querySelectorAll('text')) {
          const at = label.getBoundingClientRect();
          if (at.width > 0 && (at.left < frame.left - 1 || at.right > frame.right + 1 || at.top < frame.top - 1 || at.bottom > frame.bottom + 1)) wrong.push(`cut off: ${label.textContent}`);
        }
      }
    }
    return { figures: figures.length, wrong };
  }, SHEET);
  expect(figures).toBeGreaterThan(40);
  // Styled for paper but not on sheets: no number is better than a wrong one.
  expect(await page.evaluate(() => [...document.querySelectorAll('[data-sheet-of]')].map((place) => place.textContent).join(''))).toBe('');
  expect(wrong).toEqual([]);
});
