/** The pocket card in a real browser: on paper, as a file, as a picture, from a link, and with the server gone. */
import jsQR from 'jsqr';
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import words from '#content/cards/card.json' with { type: 'json' };
import { blockFigures } from '#core/card/figures.ts';
import { type CardChoices, exampleIn, noCalls, usualBlocks } from '#core/card/fields.ts';
import { cardSizes } from '#core/card/shape.ts';
import { editionIn, DIST } from '../site/built.ts';
import { chanceLink, linkOf, lookAt } from './card-look.ts';
import { cutsIn, readCardPdf } from './card-pdf.ts';
import { expect, test, untilKept } from './harness.ts';

const usual: CardChoices = { blocks: usualBlocks, inputs: { ...exampleIn('metric'), ruleSet: 'us-1910-333' }, calls: noCalls };
const ready = (page: Page) => page.locator('html:not([data-linked]) .card-sides svg').first().waitFor();
const plain = (text: string): string => text.replace(/\s+/g, ' ');

const saved = async (page: Page, name: string): Promise<Buffer> => {
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name, exact: true }).click()]);
  return readFileSync(await download.path());
};

/** What a code on a picture says, as a phone would read it. */
const decoded = async (page: Page, png: Buffer): Promise<string | undefined> => {
  const { width, height, pixels } = await page.evaluate(async (bytes) => {
    const image = await createImageBitmap(new Blob([Uint8Array.from(atob(bytes), (c) => c.charCodeAt(0))], { type: 'image/png' }));
    const canvas = new OffscreenCanvas(image.width, image.height);
    const pen = canvas.getContext('2d') as OffscreenCanvasRenderingContext2D;
    pen.drawImage(image, 0, 0);
    // The code is grey on white: one channel will do.
    const { data } = pen.getImageData(0, 0, image.width, image.height);
    let text = '';
    for (let i = 0; i < data.length; i += 4) text += String.fromCharCode(data[i] as number);
    return { width: image.width, height: image.height, pixels: btoa(text) };
  }, png.toString('base64'));
  const grey = Buffer.from(pixels, 'base64');
  const all = new Uint8ClampedArray(width * height * 4).map((_, i) => (i % 4 === 3 ? 255 : (grey[i >> 2] as number)));
  return jsQR(all, width, height)?.data;
};

test('with the server gone: file, pictures and code, from the example on', { timeout: 180_000 }, async ({ site, page }) => {
  await page.goto(site.at('/'));
  await untilKept(page);
  await site.stop();
  await page.goto(site.at(linkOf(usual)));
  await ready(page);
  const { pages, text, smallest } = await readCardPdf(await saved(page, words.pdf));

  // Two A6 cards beside each other on A4 laid on its side (ISO 216), front and back.
  expect(pages.map(({ width, height }) => [width, height].map((n) => Math.round(n * 10) / 10))).toEqual([[297, 210], [297, 210]]);
  expect(smallest).toBeGreaterThanOrEqual(7.5 - 1e-6);
  const said = plain(text);
  for (const id of usualBlocks) {
    const { figures, rows } = blockFigures(id, usual.inputs, 'metric');
    for (const cell of [...Object.values(figures), ...rows.flat()]) {
      if ('text' in cell && cell.text !== '1/2') expect(said, `${id}: ${cell.text}`).toContain(plain(cell.text));
    }
  }
  for (const must of [editionIn(DIST), 'USA, federal', words.foot.caution, words.marks.practice.says, words.marks.memory.says, 'Check by']) expect(said).toContain(must);
  expect(said).not.toMatch(/\bsafe/i);

  const back = await saved(page, words.picture.replace('{side}', 'back'));
  const address = await decoded(page, back);
  expect(address).toBe(site.at(linkOf(usual)));
  const before = await page.locator('.card-sides').textContent();
  await page.goto('about:blank');
  await page.goto(address as string);
  await ready(page);
  expect(await page.locator('.card-sides').textContent()).toBe(before);
});

test('every size, on every paper, to the tenth of a millimetre on paper and in the file', { timeout: 180_000 }, async ({ site, profile }) => {
  const page = await (await profile({ serviceWorkers: 'block' })).newPage();
  const sides = ['one', 'two', 'fold'] as const;
  for (const [k, size] of (Object.keys(cardSizes) as (keyof typeof cardSizes)[]).entries()) {
    for (const [n, paper] of (['card', k % 2 === 0 ? 'a4' : 'letter'] as const).entries()) {
      const way = sides[(k + n) % 3]!;
      const choices: CardChoices = { ...usual, blocks: ['out'], inputs: { ...usual.inputs, size, paper, sides: way } };
      await page.goto(site.at(linkOf(choices)));
      await page.locator('.card-page svg').first().waitFor({ state: 'attached' });
      const [width, height] = [cardSizes[size][0] * (way === 'fold' ? 2 : 1), cardSizes[size][1]];
      const file = await saved(page, words.pdf);
      for (const pdf of [await readCardPdf(file), await readCardPdf(await page.pdf({ preferCSSPageSize: true }))]) {
        const expected = paper === 'card' ? [width, height] : paper === 'a4' ? [210, 297] : [215.9, 279.4];
        expect(pdf.pages, `${size} ${way} on ${paper}`).toHaveLength(way === 'two' ? 2 : 1);
        for (const { width: w, height: h } of pdf.pages) {
          const [a, b] = paper === 'card' || w < h ? [w, h] : [h, w];
          expect(Math.abs(a - expected[0]!), `${size} ${way} on ${paper}: ${w} × ${h}`).toBeLessThan(0.3);
          expect(Math.abs(b - expected[1]!), `${size} ${way} on ${paper}: ${w} × ${h}`).toBeLessThan(0.3);
        }
        expect(pdf.text).toContain('15.0');
      }
      if (paper === 'card') continue;
      const cuts = await cutsIn(file);
      const steps = (all: readonly number[]): number[] => all.slice(1).map((x, i) => x - all[i]!).filter((_, i) => i % 2 === 0);
      for (const step of steps(cuts.across)) expect(Math.abs(step - width), `${size} ${way} on ${paper}`).toBeLessThan(0.3);
      for (const step of steps(cuts.down)) expect(Math.abs(step - height), `${size} ${way} on ${paper}`).toBeLessThan(0.3);
      expect(cuts.across.length * cuts.down.length).toBeGreaterThanOrEqual(4);
    }
  }
});

test('forty cards by chance: drawn whole, or refused with words', { timeout: 180_000 }, async ({ site, profile }) => {
  const page = await (await profile({ serviceWorkers: 'block', viewport: { width: 1280, height: 800 } })).newPage();
  const seen = [];
  for (let k = 0; k < 40; k++) seen.push(await lookAt(page, site.at(chanceLink(k))));
  expect(seen.flatMap(({ faults }, k) => faults.map((fault) => `${k}: ${fault}`))).toEqual([]);
  const refused = seen.filter((card) => card.refused).length;
  expect(refused).toBeGreaterThan(3);
  expect(refused).toBeLessThan(37);
});

test('links that are damaged, hostile or of another edition say what is wrong, at its place', { timeout: 120_000 }, async ({ site, page }) => {
  const good = linkOf(usual);
  const told = async (link: string): Promise<string> => {
    await page.goto(site.at(link));
    await ready(page);
    return (await page.locator('.finding, .field-error').allInnerTexts()).join('\n');
  };
  expect(await told(good.replace('v=1', 'v=2'))).toContain(words.problems.newerLink);
  expect(await told(good.replace('card=a6', 'card=b6'))).toContain('Size: the link asks for one that is not offered');
  expect(await told(good.replace(/card=[^&]*/, 'card=a6'))).toContain(words.problems.badLink);
  expect(await told(`${good}&pole=3`)).toContain('Reach of your pole at its longest: the link gives it more than once');
  expect(await told(good.replace(/&bar=\d+/, ''))).toContain('Your bar: put it in');
  expect(await told(good.replace(/rules=[^&]*/, 'rules=atlantis.00000000'))).toContain('Whose rule: the link names a rule that is not here');
  expect(await told(`${good}&call=%3Cimg%20src%3Dx%20onerror%3Dalert(1)%3E`)).toContain('Emergency number: a number to dial');
  expect(await told(good.replace('blocks=', 'blocks=nonsense_'))).toContain(words.problems.unknownBlock);
  expect(await told(good.replace('card=a6', 'card=id1'))).toContain('A bank card takes two blocks');
  expect(await told(good.replace(/us-1910-333\.\w+/, 'us-1910-333.00000000'))).toContain(words.ruleChanged);
  // Nothing entered is lost: what was wrong stands in its field, and mending it makes the card.
  await told(good.replace(/cuts=[^&]*/, 'cuts=2.5_high'));
  const field = page.locator('#in-cutHeights');
  expect(await field.inputValue()).toBe('2.5 high');
  await field.fill('2.5 3');
  await page.locator('button:enabled', { hasText: words.pdf }).waitFor();
});

test('kept on the device as it is changed; a card that came by a link only when the reader says so', { timeout: 120_000 }, async ({ site, page }) => {
  await page.goto(site.at('/card/'));
  // Typed at once, before the page has come alive.
  await page.locator('#in-barLength').fill('300');
  await page.waitForURL((url) => url.searchParams.get('bar') === '300');
  const shows = (bar: string) => page.locator('.card-sides', { hasText: bar }).waitFor();
  await shows('300 mm');
  await page.goto(site.at(linkOf({ ...usual, inputs: { ...usual.inputs, barLength: 350 } })));
  await ready(page);
  await shows('350 mm');
  await page.goto(site.at('/card/'));
  await shows('300 mm');
  await page.goto(site.at(linkOf({ ...usual, inputs: { ...usual.inputs, barLength: 350 } })));
  await page.getByRole('button', { name: words.keepHere }).click();
  await page.getByText(words.kept).waitFor();
  await page.goto(site.at('/card/'));
  await shows('350 mm');
});
