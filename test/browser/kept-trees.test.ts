/** Crown share: what was taken off a tree is kept on the device, added to and forgotten. */
import { describe } from 'vitest';
import { kept as words } from '#content/interface.json';
import { expect, test } from './harness.ts';

describe('trees kept on the device', () => {
  test('kept, there again after a reload, gone on from, and forgotten', async ({ site, page }) => {
    await page.goto(site.at('/calculators/crown-share/'));
    await page.mouse.move(5, 5);
    await page.mouse.move(9, 9);
    await page.locator('astro-island:not([ssr])').first().waitFor({ state: 'attached' });
    const status = page.locator('.kept [role=status]');
    const add = page.getByRole('button', { name: words.add, exact: true });

    // The example is nobody's tree.
    await page.locator('#tree-name').fill('Lime at the gate');
    await add.click();
    await expect.poll(() => status.innerText()).toBe(words.figuresFirst);

    await page.locator('#in-cuts').fill('60 45 45 20');
    await add.click();
    await expect.poll(() => page.locator('.kept-trees li').count()).toBe(1);
    // Σd² = 63² + 48² + 48² + 23² over 245²: 15.17 %, shown up to a tenth.
    await expect.poll(() => page.locator('.kept-trees').innerText()).toContain('15.2');

    await page.reload();
    await page.mouse.move(5, 5);
    await page.mouse.move(9, 9);
    await page.locator('.kept-trees li').first().waitFor();
    await page.getByRole('button', { name: `${words.goOn}: Lime at the gate` }).click();
    await expect.poll(() => page.locator('#in-earlier').inputValue()).toBe('15.2');

    await page.getByRole('button', { name: `${words.forget}: Lime at the gate` }).click();
    await page.getByRole('button', { name: `${words.sure}: Lime at the gate` }).click();
    await expect.poll(() => page.locator('.kept-trees').count()).toBe(0);
    expect(await page.evaluate(() => localStorage.getItem('standing-clear.trees'))).not.toContain('Lime');
  });
});
