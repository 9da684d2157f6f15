/** Ways into a calculator's page as a reader has them. */
import type { Page } from 'playwright-core';

/** The island comes alive at the first act. */
export const ready = async (page: Page): Promise<void> => {
  await page.mouse.move(5, 5);
  await page.mouse.move(9, 9);
  await page.locator('astro-island:not([ssr])').first().waitFor({ state: 'attached' });
};
export const tabTo = async (page: Page, selector: string): Promise<void> => {
  for (let i = 0; i < 200; i++) {
    await page.keyboard.press('Tab');
    if (await page.evaluate((s) => document.activeElement?.matches(s) ?? false, selector)) return;
  }
  throw new Error(`no way to ${selector} by keyboard`);
};
