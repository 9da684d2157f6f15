/**
 * Every calculator in a real browser: by keyboard alone, by dragging, from a link, with bad input, with scripts off.
 * What is expected on the page is what core's `show` gives for the same inputs.
 */
import type { Locator, Page } from 'playwright-core';
import { describe } from 'vitest';
import words from '#content/interface.json';
import type { AnyCalculator, AnyInput, QuantityInput, QuantityOutput } from '#core/kit/calculator.ts';
import { writeLink } from '#core/kit/link.ts';
import type { Inputs, Quantity } from '#core/kit/outcome.ts';
import { show } from '#core/kit/show.ts';
import { calculators, evaluate, example } from '#core/registry.ts';
import { ready, tabTo } from './alive.ts';
import { expect, launch, test, Watch } from './harness.ts';

const frame = words.calculator;

/** The figure shown large for an output, in metric. */
const shown = (calculator: AnyCalculator, inputs: Inputs, got: Parameters<typeof evaluate>[2]): string[] => {
  const outcome = evaluate(calculator.id, inputs, got);
  if (outcome.kind !== 'answer') throw new Error(`${calculator.id} gives no answer for ${JSON.stringify(inputs)}`);
  return calculator.lead.flatMap((name) => {
    const output = calculator.outputs[name] as QuantityOutput;
    const figure = outcome.outputs[name];
    return output.kind === 'quantity' && figure ? [show(output, figure as Quantity, 'metric')] : [];
  });
};
const figures = (page: Page): Locator => page.locator('.answer-figure');
/** What is seen of the large figures: the texts of the unit system shown. */
const seen = async (page: Page): Promise<string> => (await figures(page).allInnerTexts()).join(' | ');

const quantities = (calculator: AnyCalculator): [string, QuantityInput][] =>
  Object.entries(calculator.inputs as { [name: string]: AnyInput }).filter((e): e is [string, QuantityInput] => e[1].kind === 'quantity');
/** Inputs that differ from the example in one quantity and still give an answer. */
const changed = (calculator: AnyCalculator): { name: string; value: number; inputs: Inputs } => {
  const start = example(calculator.id);
  const before = JSON.stringify(evaluate(calculator.id, start, calculator.exampleGot));
  for (const [name, input] of quantities(calculator)) {
    const from = start[name];
    // Where the example leaves a field empty, its largest figure is a change.
    const values = typeof from === 'number' ? [1, -1, 2, -2, 4, -4].map((steps) => from + steps * input.step) : [input.max];
    for (const value of values.map((v) => Number(v.toFixed(6)))) {
      if (value < input.min || value > input.max) continue;
      const inputs = { ...start, [name]: value };
      const outcome = evaluate(calculator.id, inputs, calculator.exampleGot);
      if (outcome.kind === 'answer' && JSON.stringify(outcome) !== before && shown(calculator, inputs, calculator.exampleGot).join() !== shown(calculator, start, calculator.exampleGot).join()) {
        return { name, value, inputs };
      }
    }
  }
  throw new Error(`${calculator.id}: no small change that shows`);
};

describe.each(calculators.map((c) => [c.id, c] as const))('%s', (id, calculator) => {
  const at = `/calculators/${id}/`;

  test('by keyboard alone: a figure is changed, the answer and the address follow', async ({ site, page }) => {
    await page.goto(site.at(at));
    await ready(page);
    const { name, value, inputs } = changed(calculator);
    await tabTo(page, `#in-${name}`);
    await page.keyboard.press('Control+A');
    await page.keyboard.type(String(value));
    for (const figure of shown(calculator, inputs, calculator.exampleGot)) await expect.poll(() => seen(page)).toContain(figure);
    await expect.poll(() => new URL(page.url()).searchParams.get(name)).toBe(String(value));
  });

  test('handles of the drawing answer to the arrow keys and to dragging', async ({ site, page }) => {
    await page.goto(site.at(at));
    await ready(page);
    const handles = page.locator('.view.chosen [role=slider], .drawing > svg [role=slider]');
    const count = await handles.count();
    // A voltage is told, never drawn.
    if (id !== 'approach-distance') expect(count).toBeGreaterThan(0);
    for (let i = 0; i < count; i++) {
      const handle = handles.nth(i);
      const before = Number(await handle.getAttribute('aria-valuenow'));
      const max = Number(await handle.getAttribute('aria-valuemax'));
      const key = before < max ? 'ArrowUp' : 'ArrowDown';
      await handle.focus();
      await page.keyboard.press(key);
      await expect.poll(async () => Number(await handle.getAttribute('aria-valuenow'))).not.toBe(before);
      const now = Number(await handle.getAttribute('aria-valuenow'));
      const box = await handle.boundingBox();
      if (!box) throw new Error('a handle that cannot be seen');
      const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
      await page.mouse.move(x, y);
      await page.mouse.down();
      for (let step = 1; step <= 6; step++) await page.mouse.move(x - step * 6, y + step * 3);
      await page.mouse.up();
      await expect.poll(async () => Number(await handle.getAttribute('aria-valuenow'))).not.toBe(now);
    }
  });

  test('a link opens with its inputs and never shows the figures of the example first', async ({ site, profile, allow }) => {
    allow(/Service Worker registration blocked/);
    const context = await profile({ serviceWorkers: 'block' });
    const page = await context.newPage();
    await page.route('**/*.js', async (route) => {
      await new Promise((go) => setTimeout(go, 700));
      await route.continue();
    });
    const { inputs } = changed(calculator);
    await page.goto(site.at(`${at}?${writeLink(calculator, inputs, 'exact')}`), { waitUntil: 'commit' });
    await page.locator('.link-words').first().waitFor();
    expect(await page.locator('.held').first().evaluate((e) => getComputedStyle(e).visibility)).toBe('hidden');
    for (const figure of shown(calculator, inputs, 'exact')) await expect.poll(() => seen(page), { timeout: 15_000 }).toContain(figure);
    expect(await page.locator('.held').first().evaluate((e) => getComputedStyle(e).visibility)).toBe('visible');
    expect(await page.locator('.example-words').count()).toBe(0);
  });

  test('a malformed link shows the problem at its field and no answer; the rest comes from the example on a button', async ({ site, page }) => {
    const [name] = quantities(calculator)[0] as [string, QuantityInput];
    const link = writeLink(calculator, example(id), 'measured').replace(new RegExp(`([?&]|^)${name}=[^&]*`), `$1${name}=tall`);
    await page.goto(site.at(`${at}?${link}`));
    await ready(page);
    await page.locator(`#error-${name} .field-error`).waitFor();
    expect(await page.locator(`#in-${name}`).inputValue()).toBe('tall');
    expect(await figures(page).count()).toBe(0);
    await page.getByRole('button', { name: frame.fill }).click();
    await figures(page).first().waitFor();
  });

  test('what cannot be read keeps its text, is said at the field, and quiets the drawing', async ({ site, page }) => {
    await page.goto(site.at(at));
    await ready(page);
    const [name, input] = (quantities(calculator).find(([, i]) => !i.optional) ?? quantities(calculator)[0]) as [string, QuantityInput];
    for (const text of ['abc', '', '-', 'NaN', '1e999', '3 parsecs', String(input.max * 100), '1,250']) {
      await page.locator(`#in-${name}`).fill(text);
      await page.locator(`#error-${name} .field-error`).waitFor();
      expect(await page.locator(`#in-${name}`).inputValue()).toBe(text);
      expect(await figures(page).count()).toBe(0);
    }
    // A reload brings it all back.
    await page.locator(`#in-${name}`).fill('abc');
    await expect.poll(() => new URL(page.url()).searchParams.get(name)).toBe('abc');
    await page.reload();
    await ready(page);
    await expect.poll(() => page.locator(`#in-${name}`).inputValue()).toBe('abc');
  });

  test('with scripts off the example, its drawing and its working stand in the page', async ({ site, profile }) => {
    const page = await (await profile({ javaScriptEnabled: false })).newPage();
    await page.goto(site.at(at));
    for (const figure of shown(calculator, example(id), calculator.exampleGot)) expect(await seen(page)).toContain(figure);
    expect(await page.locator('.drawing svg').count()).toBeGreaterThan(0);
    expect(await page.locator('.working li').count()).toBeGreaterThan(0);
  });

  test('nothing in the page changes when the island takes over', async ({ site, profile }) => {
    const page = await (await profile()).newPage();
    await page.addInitScript(() => {
      const changes: string[] = [];
      Object.assign(globalThis, { changes });
      new MutationObserver((records) => {
        for (const r of records) {
          if (!(r.target instanceof Element) || !r.target.closest('astro-island')) continue;
          // `r`: the target of a handle is sized to the screen, once that is known.
          if (r.type === 'attributes' && (r.attributeName === 'ssr' || r.attributeName === 'r')) continue;
          changes.push(`${r.type} ${r.attributeName ?? ''} ${r.target.outerHTML.slice(0, 90)}`);
        }
      }).observe(document, { subtree: true, childList: true, attributes: true, characterData: true });
      // What is parsed is no change: begin once the page stands.
      document.addEventListener('DOMContentLoaded', () => void (changes.length = 0));
    });
    await page.goto(site.at(at));
    await ready(page);
    await page.waitForTimeout(300);
    expect(await page.evaluate(() => (globalThis as unknown as { changes: string[] }).changes)).toEqual([]);
  });
});

test('a carried result arrives as it is, and asks for the rest', async ({ site, page }) => {
  await page.goto(site.at('/calculators/bar-length/'));
  await ready(page);
  await page.locator('.work .ways-on a[href*="/calculators/reduction/"]').click();
  await expect.poll(() => page.locator('#in-parentDiameter').inputValue()).toBe('100');
  await page.locator('#error-lateralDiameter .field-error').waitFor();
});

test('a learner’s link holds answer, drawing and working back until they are asked for', async ({ site, page }) => {
  await page.goto(site.at('/calculators/stance/?' + writeLink(calculators[0] as AnyCalculator, example('stance'), 'measured') + '#predict'));
  await ready(page);
  await page.locator('.predict').waitFor();
  expect(await figures(page).count() + await page.locator('.drawing, .working').count()).toBe(0);
  await page.getByRole('button', { name: frame.showAnswer }).click();
  expect(await figures(page).count()).toBeGreaterThan(0);
  expect(await page.locator('.working li').count()).toBeGreaterThan(0);
});

test('units: the figures stay what they are, in feet and inches and back', async ({ site, page }) => {
  await page.goto(site.at('/calculators/stance/'));
  await ready(page);
  await page.locator('input[name=units][value=imperial]').first().check();
  await expect.poll(() => page.locator('#in-poleLongest').inputValue()).toBe('11 ft 1.9 in');
  const outcome = evaluate('stance', example('stance'), 'measured');
  const stance = calculators.find((c) => c.id === 'stance') as AnyCalculator;
  if (outcome.kind !== 'answer') throw new Error('no answer');
  expect(await seen(page)).toContain(show(stance.outputs['furthestStandOff'], outcome.outputs['furthestStandOff'] as Quantity, 'imperial'));
  await page.locator('#in-cutHeight').fill(`11'6"`);
  await expect.poll(() => new URL(page.url()).searchParams.get('cutHeight')).toBe('3.5052');
});

test('dragging fast does not run into the limit on address changes', async ({ site }) => {
  const watch = new Watch();
  const browser = await launch({ ignoreDefaultArgs: ['--disable-ipc-flooding-protection'] });
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
  await watch.over(context, site.origin);
  const page = await context.newPage();
  await page.goto(site.at('/calculators/stance/'));
  await ready(page);
  const handle = page.locator('.view.chosen [role=slider]').last();
  const box = await handle.boundingBox();
  if (!box) throw new Error('a handle that cannot be seen');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let i = 0; i < 400; i++) await page.mouse.move(x + 20 * Math.sin(i / 9), y + 20 * Math.cos(i / 7));
  await page.mouse.up();
  await page.locator('#in-cutHeight').fill('3.1');
  await expect.poll(() => new URL(page.url()).searchParams.get('cutHeight')).toBe('3.1');
  expect(watch.problems).toEqual([]);
  await browser.close();
});
