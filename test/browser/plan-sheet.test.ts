/** The sheet in a real browser: it says what core says, in print and as a file, and how it fits on paper. */
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { levels } from '#content/interface.json';
import words from '#content/plan/words.json';
import { lineClearance } from '#core/calculators/line-clearance.ts';
import { readLink } from '#core/kit/link.ts';
import { evaluate } from '#core/kit/outcome.ts';
import { showValue } from '#core/kit/show.ts';
import type { Unit } from '#core/kit/units.ts';
import { planOn } from '#core/plan/feed.ts';
import { writePlansFile } from '#core/plan/file.ts';
import { workPlan } from '#core/plan/work.ts';
import { changed, invented } from '../core/plan/invented.ts';
import { expect, test } from './harness.ts';
import { readPdf } from './pdf.ts';

const SOON = { timeout: 15_000 };
const demo = async (page: Page): Promise<void> => {
  await page.getByRole('button', { name: words.demo }).click();
  await page.locator('.plan-sheet').waitFor(SOON);
};

/** What core says is to stand on the sheet, row by row. */
const expected = (): Record<string, string[]> => {
  const pieces = workPlan(invented).limbs.flatMap((one) => one.pieces.map((piece) => ({ one, piece })));
  const row = (unit: Unit, direction: 'up' | 'down' | 'nearest', value: (of: (typeof pieces)[number]) => number) => pieces.map((of) => showValue({ unit }, value(of), 'metric', direction));
  const { answer } = words;
  return {
    [answer.stand]: row('m', 'up', ({ piece }) => piece.stand!.standOff),
    [answer.room]: row('m', 'down', ({ piece }) => planOn(piece.stance.outcome, 'furthestStandOff')!),
    [answer.angle]: row('deg', 'up', ({ piece }) => piece.stand!.poleAngle),
    [answer.weight]: row('kg', 'up', ({ piece }) => piece.weight!),
    [answer.towards]: row('m', 'up', ({ piece }) => planOn(piece.dropZone.outcome, 'beside')!),
    [answer.outward]: row('m', 'up', ({ piece }) => planOn(piece.dropZone.outcome, 'outward')!),
    [answer.inward]: row('m', 'up', ({ piece }) => planOn(piece.dropZone.outcome, 'inward')!),
    [answer.ready]: row('mm', 'down', ({ piece }) => planOn(piece.order!.outcome, 'readyAt')!),
    [answer.margin]: row('m', 'down', ({ piece }) => Math.min(...piece.clearance.map((run) => planOn(run.outcome, 'margin')!))),
    [answer.perMetre]: row('kg/m', 'up', ({ one }) => planOn(one.weight.outcome, 'perMetre')!),
    [answer.bar]: row('mm', 'up', ({ one }) => planOn(one.bar.outcome, 'barNeeded')!),
  };
};

test('the sheet says what core says, on one side of A4 and of Letter, in print and as a file', { timeout: 120_000 }, async ({ site, profile }) => {
  const page = await (await profile({ serviceWorkers: 'block', viewport: { width: 1280, height: 800 } })).newPage();
  await page.goto(site.at('/plan/'));
  await demo(page);
  const rows = Object.fromEntries(await page.locator('.plan-sheet tbody tr').evaluateAll((all) => all.map((row) => [row.querySelector('th')?.textContent ?? '', [...row.querySelectorAll('td')].map((cell) => cell.querySelector('.metric')?.textContent ?? cell.textContent ?? '')])));
  for (const [label, cells] of Object.entries(expected())) expect(rows[label], label).toEqual(cells);

  await page.locator('#plan-address').evaluate((field) => field.closest('details')?.setAttribute('open', ''));
  for (const format of ['A4', 'Letter'] as const) {
    const { pages, text } = await readPdf(await page.pdf({ format }));
    expect(pages, format).toHaveLength(1);
    // The sheet alone: no field, no list, no question of the gate.
    expect(text).not.toContain(words.gate.title);
    for (const some of [invented.name, invented.site.signals.slice(0, 20), words.sheet.sign, words.invented]) expect(text.replace(/\s+/g, ' ')).toContain(some);
  }
  const sizes = { [words.sheet.saveA4]: [595.276, 841.89], [words.sheet.saveLetter]: [612, 792] };
  for (const [button, [width, height]] of Object.entries(sizes)) {
    const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: button }).click()]);
    const { pages, text } = await readPdf(readFileSync((await download.path()) as string));
    expect(pages.map((sheet) => [sheet.width, sheet.height])).toEqual([[expect.closeTo(width!, 1), expect.closeTo(height!, 1)]]);
    const read = text.replace(/\s+/g, ' ');
    for (const cell of Object.values(expected()).flat()) expect(read).toContain(cell.replace(/\s+/g, ' '));
  }
  // What is dangerous stands first, its level in words: the sheet has no colour. Of what comes too near, once a limb.
  await page.locator('#plan-ruleSet').selectOption('none');
  await page.locator('#plan-lineOffset').fill('9');
  await page.locator('#limb-support').selectOption('tipResting');
  await page.locator('.sheet-stop').filter({ hasText: `${levels.stop}, limb 3: Too near` }).waitFor(SOON);
  const [file] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: words.sheet.saveA4 }).click()]);
  for (const { pages } of [await readPdf(await page.pdf({ format: 'A4' })), await readPdf(readFileSync((await file.path()) as string))]) {
    const side = pages[0]!.text.replace(/\s+/g, ' ');
    const said = [`${levels.stop}, limb 1: Too near`, `${levels.caution}. No rule chosen`, `${levels.caution}, limb 1: A tip that rests`, 'Either face may close', words.answer.keepOut];
    const at = said.map((some) => side.indexOf(some));
    expect(at, side).not.toContain(-1);
    expect(at).toEqual([...at].sort((a, b) => a - b));
    expect(side).not.toContain('too near even as held');
  }
  // The calculator that is opened from a piece says what the piece says: of the line's two ends, the nearer, which here is the second of one piece.
  const near = changed((p) => {
    Object.assign(p, { demo: false, name: 'near' });
    Object.assign(p.facts, { lineOffset: { value: 2, got: 'measured' }, poleLongest: { value: 5.5, got: 'measured' } });
    Object.assign(p.limbs[1].facts, { limbLength: { value: 4, got: 'judged' }, limbAngle: { value: -30, got: 'judged' } });
    Object.assign(p.limbs[1].bearings, { points: 300, worker: 30 });
  });
  await page.locator('input[type=file]').setInputFiles({ name: 'plans.json', mimeType: 'application/json', buffer: Buffer.from(writePlansFile([near], '')) });
  await page.getByRole('button', { name: /near$/ }).first().click();
  await page.locator('.plan-sheet h3').filter({ hasText: 'near' }).waitFor(SOON);
  const pieces = workPlan(near).limbs.flatMap((limb) => limb.pieces);
  const gaps = pieces.map(({ margin }) => margin!);
  expect(pieces.some(({ clearance, margin }) => planOn(clearance[0]!.outcome, 'margin') !== margin)).toBe(true);
  const opened = await page.locator('.piece a[href*="line-clearance"]').evaluateAll((all) => all.map((a) => (a as HTMLAnchorElement).search));
  expect(opened.map((query) => {
    const link = readLink(lineClearance, query);
    return link.kind === 'given' ? planOn(evaluate(lineClearance, link.inputs, link.got), 'margin') : null;
  })).toEqual(gaps.map((gap) => expect.closeTo(gap, 4)));
  await page.locator('#plan-name').fill('Дуб');
  await page.locator('.plan-sheet h3').filter({ hasText: 'Дуб' }).waitFor(SOON);
  await page.getByRole('button', { name: words.sheet.saveA4 }).click();
  await expect.poll(() => page.locator('p[role=status]').allInnerTexts()).toContain(words.sheet.noSign.replace('{sign}', 'Д'));
});

test('the sheet of four, five and six limbs: two sides at the most, no table cut in two', { timeout: 120_000 }, async ({ site, profile }) => {
  const page = await (await profile({ serviceWorkers: 'block', viewport: { width: 1280, height: 800 } })).newPage();
  await page.goto(site.at('/plan/'));
  await demo(page);
  const heads = (text: string): number => text.split(words.sheet.limb).length - 1;
  const ends = (text: string): number => text.split(words.answer.bar).length - 1;
  for (const count of [4, 5, 6]) {
    const limbs = Array.from({ length: count }, (_, k) => invented.limbs[(k + 1) % 3]!);
    const plan = { ...invented, demo: false, name: `of ${count}`, limbs };
    const pieces = workPlan(plan).limbs.flatMap((limb) => limb.pieces).length;
    await page.locator('input[type=file]').setInputFiles({ name: 'plans.json', mimeType: 'application/json', buffer: Buffer.from(writePlansFile([plan], '')) });
    await page.getByRole('button', { name: new RegExp(`${plan.name}$`) }).first().click();
    await page.locator('.plan-sheet h3').filter({ hasText: plan.name }).waitFor(SOON);
    for (const [format, button] of [['A4', words.sheet.saveA4], ['Letter', words.sheet.saveLetter]] as const) {
      const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: button }).click()]);
      const [printed, saved] = await Promise.all([readPdf(await page.pdf({ format })), readPdf(readFileSync((await download.path()) as string))]);
      for (const { pages, text } of [printed, saved]) {
        expect(pages.length, `${count} on ${format}`).toBeLessThanOrEqual(2);
        // As many tables begin on a side as end there, and every piece stands in one.
        for (const side of pages) expect(heads(side.text), side.text).toBe(ends(side.text));
        expect(heads(text)).toBe(Math.ceil(pieces / 4));
        expect(text.replace(/\s+/g, ' ')).toContain(words.sheet.sign);
      }
    }
  }
});
