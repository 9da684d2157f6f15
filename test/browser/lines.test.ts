/** Lines in a real browser: stops are announced, a rule is kept for the whole handbook, tables filter, the page for emergencies. */
import type { Page } from 'playwright-core';
import words from '#content/interface.json';
import { approachDistance } from '#core/calculators/approach-distance.ts';
import { writeLink } from '#core/kit/link.ts';
import { example } from '#core/registry.ts';
import { readPdf } from './pdf.ts';
import { expect, test, untilKept } from './harness.ts';

const { lines, tables, urgent, search } = words;
const link = (some: object): string => `/calculators/approach-distance/?${writeLink(approachDistance, { ...example('approach-distance'), ...some }, 'exact')}`;
const asked = async (page: Page, query: string): Promise<string> => {
  await page.keyboard.press('/');
  await page.locator('#search[open]').waitFor();
  await page.locator('#search-input').fill(query);
  await page.locator('.search-answer-say').waitFor();
  return page.locator('.search-answer-say').innerText();
};

test('a stop is announced: the operator’s figure under the rule’s', async ({ site, page }) => {
  await page.goto(site.at(link({ ruleSet: 'au-sa', voltage: 33, ownDistance: 1 })));
  const stop = page.getByRole('alert').filter({ hasText: words.levels.stop });
  await stop.waitFor();
  expect(await stop.innerText()).toContain('3.00');
  expect(await page.locator('.answer-figure').first().innerText()).toBe('3.00\u00a0m');
});

test('a voltage judged by its look stops, and gives no figure', async ({ site, page }) => {
  await page.goto(site.at(link({ ruleSet: 'au-sa', toldBy: 'look', voltage: 11 })));
  const stop = page.getByRole('alert').filter({ hasText: words.calculator.outside });
  await stop.waitFor();
  expect(await page.locator('.answer-figure').count()).toBe(0);
});

test('an unknown voltage leaves no ring with a figure standing', async ({ site, page }) => {
  await page.goto(site.at(link({ ruleSet: 'fr', voltage: 11 })));
  await page.locator('.drawing svg').first().waitFor();
  await page.locator('input[name=toldBy][value=look]').check({ force: true });
  await page.getByRole('alert').filter({ hasText: words.calculator.outside }).waitFor();
  expect(await page.locator('.drawing').count()).toBe(0);
});

test('figures of the line that are still the example’s are said, and under every stop a field can be seen on a phone', async ({ site, page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto(site.at('/calculators/line-clearance/'));
  await page.locator('#in-lineHeight').fill('6');
  const left = page.getByText(words.calculator.stillExample);
  await left.waitFor();
  expect(await left.innerText()).not.toContain('Height of the line');
  for (const name of ['lineOffset', 'requiredDistance']) await page.locator(`#in-${name}`).fill('3');
  await left.waitFor({ state: 'detached' });
  expect(await page.getByRole('alert').count()).toBeGreaterThan(2);
  for (const name of ['movement', 'cutHeight', 'springUp']) {
    const field = page.locator(`#in-${name}`);
    await field.focus();
    // What stays in view may not lie over the field.
    await expect.poll(() => field.evaluate((e) => {
      const box = e.getBoundingClientRect();
      return document.elementFromPoint(box.x + box.width / 2, box.y + box.height / 2) === e;
    }), { message: name }).toBe(true);
  }
});

test('a rule chosen once is there on the next page, and answers in search', async ({ site, page }) => {
  await page.goto(site.at(link({ ruleSet: 'au-sa', voltage: 33 })));
  await page.getByRole('button', { name: lines.keepRule }).click();
  await page.getByText(lines.ruleKept).waitFor();
  await page.goto(site.at('/terms/'));
  expect(await asked(page, '33 kV')).toContain('3.00');
  await page.goto(site.at('/calculators/approach-distance/'));
  await page.mouse.move(5, 5);
  await page.mouse.move(9, 9);
  await expect.poll(() => page.locator('#in-ruleSet').inputValue()).toBe('au-sa');
});

test('with no rule kept search gives the strictest, and says so', async ({ site, page }) => {
  await page.goto(site.at('/'));
  expect(await asked(page, '33 kV')).toContain('10.00');
  expect(await page.locator('.search-answer').innerText()).toContain(search.quick.lineNoRule.more);
});

test('a usual voltage is chosen instead of typed', async ({ site, page }) => {
  await page.goto(site.at('/calculators/approach-distance/'));
  await page.mouse.move(5, 5);
  await page.mouse.move(9, 9);
  await page.locator('astro-island:not([ssr])').first().waitFor({ state: 'attached' });
  await page.locator('select.steps').selectOption('132');
  await expect.poll(() => page.locator('#in-voltage').inputValue()).toBe('132');
});

test('the table is filtered by words, voltage and how it is known', async ({ site, page }) => {
  await page.goto(site.at('/tables/approach-distances/'));
  const rows = page.locator('[data-distances] >> nth=0').locator('tbody tr:visible');
  const all = await rows.count();
  expect(all).toBeGreaterThan(20);
  await page.locator('#find-rule').fill('quebec');
  await expect.poll(() => rows.count()).toBe(2);
  expect(await page.locator('.rule-entry:visible').count()).toBe(2);
  // What was chosen goes on one sheet.
  expect((await readPdf(await page.pdf({ format: 'A4', printBackground: false }))).pages).toHaveLength(1);
  await page.locator('#find-rule').fill('');
  await page.locator('#find-known').selectOption('published');
  await expect.poll(() => rows.count()).toBeLessThan(all);
  await page.locator('#find-volt').selectOption('33');
  await expect.poll(() => page.locator('[data-distances] >> nth=0').locator('thead th:visible').count()).toBe(2);
  expect(await page.locator('[data-shown]').innerText()).toMatch(/^\d+ of \d+/);
});

test('in black and white, on paper, every stop has its word and every mark its letter', async ({ site, profile }) => {
  const page = await (await profile({ serviceWorkers: 'block' })).newPage();
  await page.goto(site.at(link({ ruleSet: 'au-nsw', voltage: 33, ownDistance: 1 })), { waitUntil: 'networkidle' });
  await page.locator('.finding.stop').first().waitFor();
  const calculator = await readPdf(await page.pdf({ format: 'A4', printBackground: false }));
  expect(calculator.text).toMatch(new RegExp(words.levels.stop, 'i'));
  await page.goto(site.at('/tables/approach-distances/'), { waitUntil: 'networkidle' });
  const table = await readPdf(await page.pdf({ format: 'A4', printBackground: false }));
  expect(table.text).toContain('500');
  expect(table.text.replace(/\s+/g, ' ')).toContain('New South Wales');
  await page.goto(site.at('/tables/qualified-workers/'), { waitUntil: 'networkidle' });
  expect((await readPdf(await page.pdf({ format: 'A4', printBackground: false }))).text.replace(/\s+/g, ' ')).toContain(tables.qualified.title);
});

test('the page for emergencies is one tap away, keeps the site on the device, and dials', async ({ site, profile }) => {
  const page = await (await profile({ viewport: { width: 390, height: 844 }, geolocation: { latitude: -34.5, longitude: 138.25, accuracy: 12 }, permissions: ['geolocation'] })).newPage();
  await page.goto(site.at('/chapters/three-cuts/'));
  await page.locator('.bottom-bar .urgent-link').click();
  await page.getByRole('heading', { level: 1, name: urgent.title }).waitFor();
  await page.locator('#site-operator').fill('+61 8 0000 0000');
  await page.locator('#site-gate').fill('Green gate, code on the post');
  await page.getByRole('button', { name: urgent.locate }).click();
  await expect.poll(() => page.locator('#site-position').inputValue()).toContain('-34.50000, 138.25000');
  await page.reload();
  const say = page.locator('.urgent-say');
  await expect.poll(() => say.innerText()).toContain('Green gate, code on the post');
  expect(await say.locator('a[href^="tel:"]').getAttribute('href')).toBe('tel:+61800000000');
  // What was typed is text, never markup.
  await page.locator('#site-road').fill('<img src=x onerror=alert(1)>');
  await expect.poll(() => say.innerText()).toContain('<img src=x');
  expect(await say.locator('img').count()).toBe(0);
});

test('it prints on one sheet, with a line to write on for what was not entered', async ({ site, page }) => {
  await page.goto(site.at('/urgent/'));
  await page.locator('#site-where').fill('Larch Farm, barn end');
  await expect.poll(() => page.locator('.urgent-say').innerText()).toContain('Larch Farm');
  const { pages, text } = await readPdf(await page.pdf({ format: 'A4' }));
  expect(pages).toHaveLength(1);
  for (const words of ['Larch Farm', urgent.road, urgent.position, urgent.emergency, urgent.operator, urgent.hurtSteps[3]!]) expect(text).toContain(words);
});

test('it opens with no signal', async ({ site, page }) => {
  await page.goto(site.at('/'));
  await untilKept(page);
  await site.stop();
  await page.goto(site.at('/urgent/'));
  await page.getByText(urgent.stay).waitFor();
});

test('a copied link names the rule with its edition; figures that changed since are said', async ({ site, page }) => {
  await page.goto(site.at(link({ ruleSet: 'au-sa', voltage: 33 })));
  await page.locator('#in-voltage').fill('66');
  await expect.poll(() => new URL(page.url()).searchParams.get('rules')).toMatch(/^au-sa\.[0-9a-f]{8}$/);
  const address = page.url();
  await page.goto(address);
  await page.locator('.answer-figure').first().waitFor();
  expect(await page.getByText(lines.ruleChanged).count()).toBe(0);
  await page.goto(address.replace(/rules=au-sa\.[0-9a-f]{8}/, 'rules=au-sa.00000000'));
  await page.getByText(lines.ruleChanged).waitFor();
});
