/** Fields in trouble, in a real browser: each is seen with its message, all at once, and can be mended. */
import type { Locator, Page } from 'playwright-core';
import { calculator as frame } from '#content/interface.json';
import { ready } from './alive.ts';
import { expect, test } from './harness.ts';

const figures = (page: Page): Locator => page.locator('.answer-figure');

test('whatever is in trouble is shown with its message, though hidden else, and filled from the example when asked', async ({ site, page }) => {
  const errors = page.locator('.field-error');
  await page.goto(site.at('/calculators/height/'));
  await ready(page);
  await page.locator('#in-angleToCut').fill('abc');
  await page.locator('input[name=scale][value=percent]').check();
  // Hidden by the choice, yet without it there is no answer.
  await page.locator('#error-angleToCut .field-error').waitFor();
  await page.locator('#in-percentToCut').fill('30');
  await page.locator('#in-percentToBase').fill('-15');
  await page.locator('#in-angleToCut').fill('');
  await figures(page).first().waitFor();
  expect(await page.locator('#in-angleToCut').count()).toBe(0);

  // A figure that cannot be read, one out of its range, a choice that is not there: all three are said at once.
  await page.goto(site.at('/calculators/stance/?cutHeight=1000&gripHeight=hip&poleShortest=2.3&poleLongest=3.4&groundRise=0&platformHeight=0&landingReach=1.8'));
  await ready(page);
  await expect.poll(() => errors.count()).toBe(3);
  expect(await errors.allInnerTexts()).toEqual([expect.stringContaining('15'), expect.stringContaining('hip'), expect.not.stringContaining('figure')]);
  await page.getByRole('button', { name: frame.fill }).click();
  await figures(page).first().waitFor();
  expect(await page.locator('#in-cutHeight').inputValue()).toBe('3.5');
  expect(await page.locator('#in-poleLongest').inputValue()).toBe('3.4');

  // With no example to write it like, it may be emptied.
  await page.locator('#in-landingOut').fill('far');
  await expect.poll(() => errors.innerText()).toContain(frame.orEmpty);
});

test('wood that is not to be cut has no picture of its cuts', async ({ site, page }) => {
  await page.goto(site.at('/calculators/cut-order/'));
  await ready(page);
  for (const fault of ['sprung', 'twisted', 'cracked', 'sideways']) {
    await page.locator(`input[name=fault][value=${fault}]`).check();
    await page.locator('.held .finding.stop').waitFor();
    expect(await page.locator('figure.drawing').count() + await figures(page).count()).toBe(0);
    await page.locator('input[name=fault][value=none]').check();
    await page.locator('figure.drawing').waitFor();
  }
});
