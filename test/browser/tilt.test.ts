/** The tilt of a phone, with sensor events that the test sends. */
import type { Page } from 'playwright-core';
import words from '#content/interface.json';
import { expect, test } from './harness.ts';

const { tilt } = words.calculator;

const open = async (page: Page, address: string): Promise<void> => {
  await page.goto(address);
  // The page comes alive at the first act.
  await page.mouse.move(5, 5);
  await page.mouse.move(9, 9);
};

/** Readings for a second and a half, 30 a second, about an angle. */
const hold = (page: Page, beta: number, sway: number) =>
  page.evaluate(async ([angle, swing]) => {
    for (let i = 0; i < 45; i++) {
      dispatchEvent(new DeviceOrientationEvent('deviceorientation', { alpha: 12, beta: angle! + swing! * Math.sin(i), gamma: 3 }));
      await new Promise((go) => setTimeout(go, 33));
    }
  }, [beta, sway]);

test('fills the angle after a steady second, as a guess; the answer follows', async ({ site, page }) => {
  await open(page, site.at('/calculators/height/'));
  await page.getByRole('button', { name: tilt.use }).first().click();
  await page.getByText(tilt.start).waitFor();
  await hold(page, 22.1, 0.2);
  await expect.poll(() => page.locator('#in-angleToCut').inputValue()).toBe('22');
  expect(await page.locator('input[name=angleToCut-got][value=judged]').isChecked()).toBe(true);
  await expect.poll(() => new URL(page.url()).searchParams.get('angleToCut')).toBe('22');
});

test('an unsteady hand fills nothing and is told so; a device without a sensor too', async ({ site, page }) => {
  await open(page, site.at('/calculators/height/'));
  await page.getByRole('button', { name: tilt.use }).first().click();
  await page.getByText(tilt.start).waitFor();
  await hold(page, 22, 6);
  expect(await page.locator('#in-angleToCut').inputValue()).toBe('17');
  await page.getByText(tilt.unsteady).waitFor({ timeout: 12_000 });
  await page.getByRole('button', { name: tilt.use }).nth(1).click();
  await page.getByText(tilt.none).waitFor({ timeout: 12_000 });
});

test('where leave is refused the field stays as it is', async ({ site, page }) => {
  await page.addInitScript(() => {
    Object.assign(globalThis, { asked: 0 });
    Object.assign(DeviceOrientationEvent, { requestPermission: async () => { Object.assign(globalThis, { asked: 1 }); return 'denied'; } });
  });
  await open(page, site.at('/calculators/height/'));
  await page.locator('#in-distance').fill('12');
  const asked = () => page.evaluate(() => (globalThis as unknown as { asked: number }).asked);
  // Not before the reader wants it.
  expect(await asked()).toBe(0);
  await page.getByRole('button', { name: tilt.use }).first().click();
  await page.getByText(tilt.refused).waitFor();
  expect(await asked()).toBe(1);
  expect(await page.locator('#in-angleToCut').inputValue()).toBe('17');
});
