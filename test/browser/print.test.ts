/** On paper: as many sheets as the text needs, the frame left out, address and edition on it. */
import { DIST, editionIn, pagesOf } from '../site/built.ts';
import { readPdf } from './pdf.ts';
import { expect, test } from './harness.ts';

const SHEETS = { A4: [595, 842], Letter: [612, 792] } as const;
/** The most sheets each kind of page may take; a worked page that runs over is a fault of its print style. */
const MOST: [kind: RegExp, sheets: number][] = [
  [/^\/chapters\/[^/]+\/$/, 8],
  [/^\/calculators\/[^/]+\/$/, 6],
  [/^\/$/, 3],
  // Ready-reckoners are for one sheet; that of the weather holds ten tables, the rules for lines more than a sheet of rows.
  [/^\/tables\/(?!weather|approach-distances|qualified-workers)[^/]+\/$/, 1],
  [/^\/tables\/weather\/$/, 2],
];
const printed = pagesOf(DIST).flatMap(({ path }) => MOST.filter(([kind]) => kind.test(path)).map(([, most]) => ({ path, most })));

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
});
