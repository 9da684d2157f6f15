/** What a page asks for before the reader acts: its own address and everything it pulls in until it is idle, brotli. */
import type { BrowserContext } from 'playwright-core';
import { packed } from '../../src/build/sizes.ts';

export type Weighed = { path: string; total: number; requests: string[] };

const KB = 1000;
const BUDGETS: [kind: RegExp, budget: number][] = [
  [/^\/chapters\/[^/]+\/$/, 14 * KB],
  [/^\/calculators\/[^/]+\/$/, 35 * KB],
  [/^\/$/, 10 * KB],
  // Every chapter on one page: nobody is sent there who only wants to read.
  [/^\/book\/$/, 200 * KB],
];
/** No figure is asked for the other pages; the calculators' is their roof. */
const ROOF = 35 * KB;

/** @returns bytes that a page of this path may weigh */
export const budgetOf = (path: string): number => BUDGETS.find(([kind]) => kind.test(path))?.[1] ?? ROOF;
export const hasBudget = (path: string): boolean => BUDGETS.some(([kind]) => kind.test(path));

/** @param context one that has visited nothing yet and blocks the service worker, whose fetching is counted apart */
export const weigh = async (context: BrowserContext, address: string, path: string): Promise<Weighed> => {
  const page = await context.newPage();
  const bodies: Promise<[string, number]>[] = [];
  page.on('response', (response) => bodies.push(response.body().then((body) => [new URL(response.url()).pathname, packed(body)])));
  // A large page on a busy machine can be quiet for a while before it has asked for all it loads.
  await page.goto(address, { waitUntil: 'load' });
  await page.waitForLoadState('networkidle');
  // What comes later is not waited for: its body would be asked of a page that is closed.
  page.removeAllListeners('response');
  const sizes = await Promise.all(bodies);
  return { path, total: sizes.reduce((sum, [, size]) => sum + size, 0), requests: sizes.map(([name, size]) => `${size} ${name}`) };
};
