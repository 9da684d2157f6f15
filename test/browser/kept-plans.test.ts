/** Plans kept on the device, in a real browser: nothing entered is lost, nothing that comes in does harm. */
import { readFileSync, rmSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterEach, describe } from 'vitest';
import words from '#content/interface.json';
import planWords from '#content/plan/words.json';
import { DIST, editionIn } from '../site/built.ts';
import { secondEdition } from '../site/second-edition.ts';
import { ruleSet, stampOf } from '#core/facts/rule-sets.ts';
import { writePlanLink } from '#core/plan/link.ts';
import { invented } from '../core/plan/invented.ts';
import { readPdf } from './pdf.ts';
import { expect, type Site, test, untilKept } from './harness.ts';

const { plans, offline } = words;
const SOON = { timeout: 10_000 };
const folders: string[] = [];
afterEach(() => folders.splice(0).forEach((folder) => rmSync(folder, { recursive: true })));

const field = (page: Page, of: 'name' | 'address') => page.locator(`#plan-${of}`);
/** The texts of the site stand folded. */
const unfold = (page: Page) => page.locator('details', { has: page.locator('#plan-name') }).evaluate((details: HTMLDetailsElement) => void (details.open = true));
const standing = (page: Page) => page.locator('.kept-standing');
const said = (page: Page) => page.locator('.kept-note, .kept-said').allInnerTexts().then((texts) => texts.join('\n'));
const titles = async (page: Page): Promise<string[]> => (await page.locator('.kept-plans-part > .kept-plans strong').allInnerTexts()).sort();
const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();
const open = async (page: Page, site: Site, fragment = ''): Promise<void> => {
  await page.goto(site.at(`/plan/${fragment}`));
  await page.mouse.move(5, 5);
  await page.mouse.move(9, 9);
  await page.locator('.kept-plans-part').waitFor();
  await unfold(page);
};
const kept = (page: Page) => expect.poll(() => standing(page).getAttribute('data-standing'), SOON).toBe('kept');
const written = async (page: Page, button: string): Promise<{ name: string; text: string }> => {
  const [download] = await Promise.all([page.waitForEvent('download'), press(page, button)]);
  return { name: download.suggestedFilename(), text: readFileSync((await download.path()) as string, 'utf8') };
};
const give = (page: Page, text: string | Buffer) =>
  page.locator('.kept-plans-part input[type=file]').setInputFiles({ name: 'plans.json', mimeType: 'application/json', buffer: Buffer.from(text) });

describe('nothing entered is lost', () => {
  test('by a reload in mid-typing, a new edition, the server gone', async ({ site, page }) => {
    await open(page, site);
    await untilKept(page);
    await field(page, 'name').fill('Elm at the ford');
    await page.reload();
    await page.mouse.move(5, 5);
    await expect.poll(() => field(page, 'name').inputValue(), SOON).toBe('Elm at the ford');
    await kept(page);
    await unfold(page);

    const second = secondEdition(DIST, 'beefbeef');
    folders.push(second);
    await site.restart({ dir: second });
    await page.evaluate(async () => void (await (await navigator.serviceWorker.ready).update()));
    await page.getByText(offline.offer).waitFor();
    // Typed last, and the button pressed at once.
    await field(page, 'address').fill('3 Mill Lane');
    await page.getByRole('button', { name: offline.offerTake }).click();
    await expect.poll(() => page.locator('footer .edition-id').innerText(), { timeout: 30_000 }).toBe('beefbeef');
    await page.mouse.move(5, 5);
    await expect.poll(() => field(page, 'address').inputValue(), SOON).toBe('3 Mill Lane');
    expect(await field(page, 'name').inputValue()).toBe('Elm at the ford');

    await site.stop();
    await page.goto(site.at('/'));
    await open(page, site);
    await expect.poll(() => field(page, 'address').inputValue(), SOON).toBe('3 Mill Lane');
    await field(page, 'address').fill('4 Mill Lane');
    await press(page, plans.start);
    await expect.poll(() => field(page, 'address').inputValue()).toBe('');
    await expect.poll(() => titles(page), SOON).toEqual(['Elm at the ford']);
    await press(page, `${plans.open}: Elm at the ford`);
    await expect.poll(() => field(page, 'address').inputValue()).toBe('4 Mill Lane');
  });

  test('by two tabs with one plan: both go on, as two', async ({ site, context, page }) => {
    await open(page, site);
    await field(page, 'name').fill('Elm');
    await kept(page);
    const other = await context.newPage();
    await open(other, site);
    await expect.poll(() => field(other, 'name').inputValue(), SOON).toBe('Elm');
    // The one that only looks on follows.
    await field(page, 'address').fill('3 Mill Lane');
    await kept(page);
    await expect.poll(() => field(other, 'address').inputValue(), SOON).toBe('3 Mill Lane');
    // Both at once: the words of neither are lost.
    await Promise.all([field(page, 'address').fill('here'), field(other, 'address').fill('there')]);
    await expect.poll(() => titles(other), SOON).toEqual(['Elm', 'Elm (2)']);
    await expect.poll(async () => (await Promise.all([page, other].map((tab) => said(tab)))).join(''), SOON).toContain(plans.clash.replace('{name}', 'Elm (2)'));
    expect(await Promise.all([page, other].map((tab) => field(tab, 'address').inputValue()))).toEqual(['here', 'there']);
  });

  test('by deleting: undone as it was; found by words, renamed, copied', async ({ site, page }) => {
    await open(page, site);
    for (const name of ['Elm', 'Oak']) {
      await press(page, plans.start);
      await field(page, 'name').fill(name);
      await kept(page);
    }
    await press(page, `${plans.delete}: Oak`);
    await expect.poll(() => titles(page)).toEqual(['Elm']);
    expect(await field(page, 'name').inputValue()).not.toBe('Oak');
    await press(page, plans.undo);
    await expect.poll(() => field(page, 'name').inputValue()).toBe('Oak');
    await expect.poll(() => titles(page)).toEqual(['Elm', 'Oak']);
    await press(page, `${plans.rename}: Elm`);
    await page.keyboard.press('Control+A');
    await page.keyboard.type('Elm by the gate');
    await page.keyboard.press('Enter');
    await expect.poll(() => titles(page)).toEqual(['Elm by the gate', 'Oak']);
    await press(page, `${plans.duplicate}: Elm by the gate`);
    await expect.poll(() => titles(page)).toEqual(['Elm by the gate', 'Elm by the gate (2)', 'Oak']);
    await page.getByLabel(plans.find).fill('gate 2');
    await expect.poll(() => titles(page)).toEqual(['Elm by the gate (2)']);
  });
});

describe('out and in again', () => {
  test('by a file and by a link, on another device: the same plan; a damaged file is said in words, nothing in it is run', async ({ site, page, profile }) => {
    await open(page, site);
    const name = 'Elm <img src=x onerror="document.title=1">';
    await field(page, 'name').fill(name);
    await field(page, 'address').fill('3 Mill Lane');
    await kept(page);
    const file = await written(page, plans.toFile);
    expect(file.name).toMatch(/^standing-clear-elm-img-src-x-onerror-document-title-1-\d{4}-\d\d-\d\d\.json$/);
    const { format, edition, plans: inFile } = JSON.parse(file.text) as { format: string; edition: string; plans: { name: string }[] };
    expect([format, edition]).toEqual(['standing-clear-plans', editionIn(DIST)]);
    await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
    await press(page, plans.copyLink);
    await expect.poll(() => said(page)).toContain(plans.linkCopied);
    const link = await page.evaluate(() => navigator.clipboard.readText());
    expect(link).toMatch(/\/plan\/#plan=2~/);

    const there = await (await profile({ serviceWorkers: 'block' })).newPage();
    await open(there, site);
    await give(there, file.text);
    await expect.poll(() => field(there, 'name').inputValue()).toBe(name);
    expect(JSON.parse((await written(there, plans.toFile)).text).plans).toEqual(inFile);
    // A second time it does not come twice.
    await give(there, file.text);
    await expect.poll(() => said(there)).toContain(plans.hereOne.replace('{name}', name));
    for (const [text, problem] of [
      [file.text.slice(0, 300), plans.fileProblems.fileCut.split('{')[0]],
      ['PK\u0003\u0004', plans.fileProblems.notJson.split('{')[0]],
      [' '.repeat(9_000_000), plans.fileProblems.fileTooLarge.replace('{most}', '2')],
      [file.text.replace('"site": {', '"site": { "__proto__": { "polluted": 1 }, "constructor": 7,').replace('"judged"', '"<script>"'), plans.planProblems.notFact],
    ] as const) {
      await give(there, text);
      await expect.poll(() => said(there)).toContain(problem);
    }
    expect(await titles(there)).toEqual([name]);
    expect(await there.evaluate(() => 'polluted' in {})).toBe(false);
    expect(await there.title()).not.toBe('1');

    const linked = await (await profile({ serviceWorkers: 'block' })).newPage();
    await open(linked, site, new URL(link).hash);
    await expect.poll(() => field(linked, 'address').inputValue()).toBe('3 Mill Lane');
    expect(await titles(linked)).toEqual([]);
    expect(JSON.parse((await written(linked, plans.toFile)).text).plans).toEqual(inFile);
    await field(linked, 'address').fill('5 Mill Lane');
    await kept(linked);
    // A reload brings back what it is now, not what the link said.
    await linked.reload();
    await expect.poll(() => field(linked, 'address').inputValue(), SOON).toBe('5 Mill Lane');
    // Cut on its way, in a page that is open.
    await linked.evaluate((hash) => void (location.hash = hash), new URL(link).hash.slice(0, -5));
    await expect.poll(() => said(linked)).toContain(plans.linkProblems.cutLink);
    expect(await field(linked, 'address').inputValue()).toBe('5 Mill Lane');
  });

  test('by a rule whose figures were others when the plan was made: said beside the rule, and kept, until the reader has seen it', async ({ site, page }) => {
    const link = writePlanLink({ ...invented, ruleEdition: '00000000' });
    const changed = page.locator('.finding').filter({ hasText: planWords.rule.changed });
    await open(page, site, link.kind === 'link' ? `#${link.fragment}` : '');
    await expect.poll(() => changed.count(), SOON).toBe(1);
    await field(page, 'address').fill('5 Mill Lane');
    await kept(page);
    await page.reload();
    await page.mouse.move(5, 5);
    await expect.poll(() => field(page, 'address').inputValue(), SOON).toBe('5 Mill Lane');
    expect(await changed.count()).toBe(1);
    // Among the findings and on the sheet as well.
    const elsewhere = page.locator('.traffic .finding, .sheet-stop').filter({ hasText: planWords.said.ruleChanged });
    await expect.poll(() => elsewhere.count(), SOON).toBe(2);
    await press(page, planWords.rule.seen);
    await expect.poll(() => changed.count()).toBe(0);
    await expect.poll(() => elsewhere.count(), SOON).toBe(0);
    await kept(page);
    await page.reload();
    await page.mouse.move(5, 5);
    await expect.poll(() => field(page, 'address').inputValue(), SOON).toBe('5 Mill Lane');
    expect(await changed.count()).toBe(0);
    // Another rule has an edition of its own.
    await page.locator('#plan-ruleSet').selectOption('au-sa');
    await kept(page);
    const [plan] = (JSON.parse((await written(page, plans.toFile)).text) as { plans: { ruleEdition: string }[] }).plans;
    expect(plan!.ruleEdition).toBe(stampOf(ruleSet('au-sa')!));
  });
});

describe('a browser that keeps nothing, or no more', () => {
  test('refused: said, and the plan is still printed, linked, written and read', async ({ site, profile }) => {
    const context = await profile({ serviceWorkers: 'block' });
    await context.addInitScript(() => {
      const refuse = () => {
        throw new DOMException('The operation is insecure.', 'SecurityError');
      };
      for (const name of ['localStorage', 'sessionStorage', 'indexedDB']) Object.defineProperty(window, name, { get: refuse });
    });
    const page = await context.newPage();
    await open(page, site);
    await field(page, 'name').fill('Elm');
    await expect.poll(() => standing(page).innerText()).toContain(plans.standing.refused);
    const { text } = await written(page, plans.toFile);
    expect(JSON.parse(text).plans[0].name).toBe('Elm');
    await give(page, JSON.stringify({ ...JSON.parse(text), plans: ['Oak', 'Ash'].map((name) => ({ ...JSON.parse(text).plans[0], name })) }));
    await expect.poll(() => titles(page)).toEqual(['Ash', 'Oak']);
    await press(page, `${plans.open}: Ash`);
    await expect.poll(() => field(page, 'name').inputValue()).toBe('Ash');
    // A whole plan prints its sheet.
    await press(page, planWords.demo);
    await page.locator('.plan-sheet').waitFor({ state: 'attached' });
    expect((await readPdf(await page.pdf({ format: 'A4' }))).text).toContain('Quince Row');
  });

  test('full: said; what was kept stays, what is entered now is kept once there is room', async ({ site, page }) => {
    await open(page, site);
    await field(page, 'name').fill('Elm');
    await kept(page);
    await page.evaluate(() => {
      const { put } = IDBObjectStore.prototype;
      IDBObjectStore.prototype.put = () => {
        throw new DOMException('No room.', 'QuotaExceededError');
      };
      addEventListener('room', () => (IDBObjectStore.prototype.put = put));
    });
    await field(page, 'address').fill('3 Mill Lane');
    await expect.poll(() => standing(page).innerText(), SOON).toContain(plans.standing.full);
    expect(JSON.parse((await written(page, plans.toFile)).text).plans[0].site.address).toBe('3 Mill Lane');
    await page.evaluate(() => dispatchEvent(new Event('room')));
    await field(page, 'address').fill('4 Mill Lane');
    await kept(page);
    await expect.poll(() => titles(page)).toEqual(['Elm']);
  });
});
