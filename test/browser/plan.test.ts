/** The plan in a real browser: by keyboard alone, by touch alone, in print, as a file, out to a calculator and back. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type axe from 'axe-core';
import type { Page } from 'playwright-core';
import frame from '#content/interface.json';
import words from '#content/plan/words.json';
import { showValue } from '#core/kit/show.ts';
import type { Unit } from '#core/kit/units.ts';
import { planOn } from '#core/plan/feed.ts';
import { writePlansFile } from '#core/plan/file.ts';
import { workPlan } from '#core/plan/work.ts';
import { invented } from '../core/plan/invented.ts';
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

/** Tab by tab, as the keyboard goes, until the focus stands there. */
const tabTo = async (page: Page, selector: string, key = 'Tab'): Promise<void> => {
  for (let i = 0; i < 220; i++) {
    if (await page.evaluate((to) => document.activeElement?.matches(to) ?? false, selector)) return;
    await page.keyboard.press(key);
  }
  throw new Error(`no key leads to ${selector}`);
};

test('by keyboard alone: the gate, every figure, a bearing, a handle, to the sheet', { timeout: 120_000 }, async ({ site, profile }) => {
  const page = await (await profile({ serviceWorkers: 'block' })).newPage();
  await page.goto(site.at('/plan/'));
  await page.keyboard.press('Tab');
  await page.locator('.kept-plans-part').waitFor(SOON);
  for (const gate of ['lines', 'weight', 'height', 'wood', 'below', 'footing', 'wind']) {
    await tabTo(page, `input[name=gate-${gate}]`);
    await page.keyboard.press('Space');
  }
  await tabTo(page, 'input[name=gate-second]');
  // A no says what instead, and is a stop.
  await page.keyboard.press('ArrowRight');
  await page.locator('#gate-second .field-error').waitFor();
  expect(await page.locator('.traffic .finding.stop').innerText()).toContain(words.gate.questions.second.instead);
  await page.keyboard.press('ArrowLeft');
  await page.getByText(words.gate.done).waitFor();

  const figures: [string, string][] = [
    ['plan-poleShortest', '2.4'], ['plan-poleLongest', '4.2'], ['plan-barLength', '250'], ['plan-groundSlope', '3'],
    ['plan-voltage', '11'], ['plan-lineHeight', '9'], ['plan-lineOffset', 'far'],
    ['plan-movement', '1'], ['limb-cutHeight', '2.8'], ['limb-limbLength', '1.8'], ['limb-limbDiameter', '60'], ['limb-limbAngle', '15'], ['limb-spread', '0.8'],
  ];
  await page.locator('.plan h2').first().click();
  for (const [field, text] of figures) {
    await tabTo(page, `#${field}`);
    await page.keyboard.type(text);
  }
  // What cannot be read keeps its text and is said at its field; the rest is counted.
  expect(await page.locator('#plan-lineOffset-error').innerText()).toContain('far');
  expect(await page.locator('#plan-lineOffset').inputValue()).toBe('far');
  await tabTo(page, '#plan-lineOffset', 'Shift+Tab');
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type('14.');
  await page.locator('.plan-sheet').waitFor(SOON);
  expect(await page.locator('#plan-lineOffset').inputValue()).toBe('14.');

  // The pole's ends the wrong way round are said at the field, in its own label.
  await page.locator('#plan-poleShortest').fill('4.4');
  await expect.poll(() => page.locator('#plan-poleShortest-error').innerText()).toContain(words.facts.poleShortest.label);
  expect(await page.locator('#plan-poleShortest-error').innerText()).toContain('4.2');
  await page.locator('#plan-poleShortest').fill('2.4');
  await expect.poll(() => page.locator('#plan-poleShortest-error').innerText()).toBe('');

  await tabTo(page, '#limb-worker');
  await page.keyboard.press('ArrowDown');
  const before = Number(await page.locator('#limb-worker').inputValue());
  await tabTo(page, `.result [role=slider][aria-label="Where you stand, round the cut"]`, 'Shift+Tab');
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => page.locator('#limb-worker').inputValue()).toBe(String((before + 5) % 360));
});

test('by touch alone: the invented plan, its faces, another limb, a bearing dragged, out to a calculator and back', { timeout: 120_000 }, async ({ site, profile }) => {
  const context = await profile({ hasTouch: true, isMobile: true, viewport: { width: 390, height: 844 }, bypassCSP: true });
  const page = await context.newPage();
  await page.goto(site.at('/plan/'));
  await page.getByRole('button', { name: words.demo }).tap();
  await page.locator('.plan-sheet').waitFor(SOON);
  for (const face of ['side', 'line', 'plan'] as const) {
    await page.locator('.result label').filter({ hasText: new RegExp(`^${words.faces[face]}$`) }).tap();
    await page.locator(`#plan-${face}-title`).waitFor({ state: 'attached' });
  }
  await page.locator('label', { hasText: `2 ${invented.limbs[1]!.name}` }).tap();
  expect(await page.locator('#limb-worker').inputValue()).toBe('90');
  const handle = page.getByRole('slider', { name: 'Where you stand, round the cut' });
  await handle.scrollIntoViewIfNeeded();
  const box = (await handle.locator('circle').last().boundingBox())!;
  const target = (await handle.locator('circle').first().boundingBox())!;
  expect(Math.min(target.width, target.height)).toBeGreaterThanOrEqual(47.5);
  const touch = await context.newCDPSession(page);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  const at = (type: 'touchStart' | 'touchMove' | 'touchEnd', points: { x: number; y: number }[]) => touch.send('Input.dispatchTouchEvent', { type, touchPoints: points });
  await at('touchStart', [{ x, y }]);
  for (let k = 1; k <= 6; k++) await at('touchMove', [{ x: x + k, y: y - 5 * k }]);
  await at('touchEnd', []);
  await expect.poll(() => page.locator('#limb-worker').inputValue()).not.toBe('90');
  const turned = await page.locator('#limb-worker').inputValue();

  // A fact is changed with the picture and the worst finding in sight, and the field is not under them; folded there is more room.
  const [seen, fact] = [page.locator('.plan .seen'), page.locator('#limb-spread')];
  const stands = async (): Promise<number[]> => {
    await page.evaluate(() => scrollTo({ top: 0, behavior: 'instant' }));
    await fact.evaluate((field) => [field.blur(), field.focus()]);
    await expect.poll(async () => (await fact.boundingBox())!.y, SOON).toBeLessThan(844);
    const [above, below] = [(await seen.boundingBox())!, (await fact.boundingBox())!];
    expect(below.y).toBeGreaterThanOrEqual(above.y + above.height);
    return [above.y, above.height];
  };
  const [top, tall] = (await stands()) as [number, number];
  expect(Math.abs(top)).toBeLessThan(1);
  for (const part of ['svg', '.worst']) expect((await seen.locator(part).boundingBox())!.y).toBeGreaterThanOrEqual(0);
  await seen.getByRole('button', { name: words.faces.folding }).tap();
  expect((await stands())[1]).toBeLessThan(tall / 2);
  await seen.getByRole('button', { name: words.faces.folding }).tap();

  // No violation with all of it open.
  await page.addScriptTag({ path: createRequire(import.meta.url).resolve('axe-core/axe.min.js') });
  const found = await page.evaluate(async () => (await (globalThis as unknown as { axe: typeof axe }).axe.run()).violations.map(({ id, nodes }) => `${id} ${nodes[0]?.html.slice(0, 160)}`));
  expect(found).toEqual([]);

  const open = page.locator('.each').nth(1).locator('details').first();
  await open.locator('summary').tap();
  await open.locator('a').first().tap();
  await page.locator('.calculator dl.answer').waitFor(SOON);
  await page.getByRole('link', { name: frame.calculator.backToPlan }).tap();
  await page.locator('.plan-sheet').waitFor(SOON);
  await page.locator('label', { hasText: `2 ${invented.limbs[1]!.name}` }).tap();
  expect(await page.locator('#limb-worker').inputValue()).toBe(turned);
});

test('gear kept under a name is there after a reload, filled in in another plan, taken off and brought back', { timeout: 60_000 }, async ({ site, profile }) => {
  const page = await (await profile({ serviceWorkers: 'block', viewport: { width: 390, height: 844 } })).newPage();
  const { gear, plans } = frame;
  const figures = { poleShortest: '2.1', poleLongest: '3.9', barLength: '230', barTip: '0.17' };
  const field = (name: string) => page.locator(`#plan-${name}`);
  const press = (name: string) => page.getByRole('button', { name, exact: true }).click();
  const said = (text: string) => expect.poll(() => page.locator('.gear-said span').innerText()).toBe(text.replace('{name}', 'Long pole'));
  const holds = async (of: { [name: string]: string }) => {
    for (const [name, text] of Object.entries(of)) await expect.poll(() => field(name).inputValue(), { message: name }).toBe(text);
  };
  /** By keyboard: the list unfolds with Enter. */
  const open = async (): Promise<void> => {
    await page.goto(site.at('/plan/'));
    await page.keyboard.press('Tab');
    await page.locator('.kept-plans-part').waitFor(SOON);
    await page.locator('.gear-list summary').focus();
    await page.keyboard.press('Enter');
  };
  await open();
  await page.locator('#gear-name').fill('Long pole');
  await page.keyboard.press('Enter');
  await said(gear.figuresFirst);
  await field('barTip').evaluate((one) => one.closest('details')?.setAttribute('open', ''));
  for (const [name, text] of Object.entries(figures)) await field(name).fill(text);
  await page.locator('#gear-name').fill(' ');
  await press(gear.keep);
  expect(await page.locator('#gear-name-error').innerText()).toBe(gear.nameFirst);
  await page.locator('#gear-name').fill('Long pole');
  await page.keyboard.press('Enter');
  await said(gear.kept);
  await expect.poll(() => page.locator('.kept-standing').getAttribute('data-standing'), SOON).toBe('kept');

  await page.reload();
  await open();
  await press(plans.start);
  const blank = { poleShortest: '', poleLongest: '', barLength: '', barTip: '0.2' };
  await holds(blank);
  await page.locator('.kept-gear').getByText('230').waitFor();
  for (const button of await page.locator('.gear-list :is(button, summary, input)').all()) expect((await button.boundingBox())!.height).toBeGreaterThanOrEqual(47.5);
  await press(`${gear.use}: Long pole`);
  await holds(figures);
  await said(gear.used);
  await press(gear.undo);
  await holds(blank);

  await press(`${gear.remove}: Long pole`);
  await said(gear.removed);
  // The button that went hands the keyboard on to the way back.
  await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe(gear.undo);
  await page.keyboard.press('Enter');
  await said(gear.putBack);
  await press(`${gear.use}: Long pole`);
  await holds(figures);
  await page.evaluate(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException('no', 'QuotaExceededError');
    };
  });
  await press(`${gear.remove}: Long pole`);
  await said(gear.refused);
  await holds(figures);
});
