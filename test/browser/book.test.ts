/** The whole handbook printed: contents, numbers on the sheets, nothing cut off at an edge. */
import words from '#content/interface.json' with { type: 'json' };
import handbook from '#content/handbook.json' with { type: 'json' };
import { DIST, editionIn } from '../site/built.ts';
import { readPdf } from './pdf.ts';
import { expect, test } from './harness.ts';

/** What A4 leaves between the margins of src/styles/print.css, in CSS pixels: 210 − 32 mm by 297 − 33 mm. */
const SHEET = { width: (178 / 25.4) * 96, height: (264 / 25.4) * 96 };

test('the printed handbook has its contents, page numbers and every part', { timeout: 300_000 }, async ({ site, profile }) => {
  const page = await (await profile({ serviceWorkers: 'block' })).newPage();
  page.setDefaultTimeout(240_000);
  await page.goto(site.at('/book/'), { waitUntil: 'networkidle' });
  const { pages, text } = await readPdf(await page.pdf({ format: 'A4', printBackground: false }));
  expect(pages.length).toBeGreaterThan(50);
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
  expect(wrong).toEqual([]);
});
