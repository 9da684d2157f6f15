/** With JavaScript off the handbook is still a book: text, drawings, worked examples, and words where something is missing. */
import { describe } from 'vitest';
import words from '#content/interface.json';
import { DIST, pagesOf } from '../site/built.ts';
import { attribute, elementsOf } from '../site/document.ts';
import { expect, test } from './harness.ts';

const pages = pagesOf(DIST);
const chapters = pages.filter(({ path }) => /^\/chapters\/[^/]+\/$/.test(path));
const calculators = pages.filter(({ path }) => /^\/calculators\/[^/]+\/$/.test(path));

describe('scripts off', () => {
  test.for([...chapters, ...calculators])('$path shows its text and its drawings', async ({ path, html }, { site, profile }) => {
    const page = await (await profile({ javaScriptEnabled: false })).newPage();
    await page.goto(site.at(path));
    expect((await page.locator('main').innerText()).length).toBeGreaterThan(500);
    const drawn = elementsOf(html).filter((element) => element.tagName === 'svg' && attribute(element, 'class')?.includes('drawing')).length;
    const visible = await page.locator('main svg:visible').count();
    expect(visible, 'drawings in sight').toBeGreaterThanOrEqual(Math.min(1, drawn));
  });

  test.for(calculators)('$path shows the example with its answer', async ({ path }, { site, profile }) => {
    const page = await (await profile({ javaScriptEnabled: false })).newPage();
    await page.goto(site.at(path));
    await page.locator('.answer-figure:visible').first().waitFor();
    // A figure with its unit, or a word where the answer is a choice.
    for (const figure of await page.locator('.answer-figure:visible').allInnerTexts()) expect(figure.trim()).not.toBe('');
    expect(await page.locator('main svg:visible').count()).toBeGreaterThan(0);
  });

  test('/offline/ says that nothing is kept', async ({ site, profile }) => {
    const page = await (await profile({ javaScriptEnabled: false })).newPage();
    await page.goto(site.at('/offline/'));
    await page.getByText(words.offline.noScript).waitFor();
    expect(await page.locator('button:visible').count()).toBe(0);
  });
});
