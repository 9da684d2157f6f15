/** Two hundred cards by chance in the browser. */
import type { Browser } from 'playwright-core';
import { chanceLink, lookAt } from '../browser/card-look.ts';

export const manyCards = async (browser: Browser, address: string, count: number): Promise<{ faults: string[]; refused: number }> => {
  const page = await (await browser.newContext({ serviceWorkers: 'block', viewport: { width: 1280, height: 800 } })).newPage();
  const faults: string[] = [];
  let refused = 0;
  for (let k = 0; k < count; k++) {
    const seen = await lookAt(page, address + chanceLink(k).slice(1));
    if (seen.refused) refused += 1;
    faults.push(...seen.faults.map((fault) => `${chanceLink(k)}: ${fault}`));
  }
  await page.context().close();
  return { faults, refused };
};
