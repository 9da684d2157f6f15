/** The plan in a real browser: by keyboard alone, by touch alone, out to a calculator and back, gear kept. */
import { createRequire } from 'node:module';
import type axe from 'axe-core';
import type { Page } from 'playwright-core';
import frame from '#content/interface.json';
import words from '#content/plan/words.json';
import { invented } from '../core/plan/invented.ts';
import { expect, test } from './harness.ts';

const SOON = { timeout: 15_000 };

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
  // What is still wanted leads to the first of it, of the limb it belongs to; its label is not under the picture that stays.
  await page.getByRole('button', { name: words.limbs.add }).tap();
  await page.locator('label', { hasText: `1 ${invented.limbs[0]!.name}` }).tap();
  await page.locator('.answer-none a').tap();
  await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('limb-cutHeight');
  expect(await page.locator('input[name=limb]').nth(3).isChecked()).toBe(true);
  await expect.poll(() => page.evaluate(() => document.querySelector('label[for=limb-cutHeight]')!.getBoundingClientRect().top - document.querySelector('.seen')!.getBoundingClientRect().bottom)).toBeGreaterThanOrEqual(0);
  await page.getByRole('button', { name: words.limbs.remove }).tap();
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
  const figures = { poleShortest: '2.1', poleLongest: '3.9', barLength: '230', barTip: '0.17', saw: 'the red one', mass: '6.4', balance: '1.5' };
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
  const blank = { poleShortest: '', poleLongest: '', barLength: '', barTip: '0.2', saw: '', mass: '' };
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
