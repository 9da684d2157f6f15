/**
 * What a page asks for before the reader acts, brotli: its own address and everything it pulls in until it is idle. What the
 * service worker fetches to keep the handbook on the device is counted apart (test/site/budgets.test.ts).
 */
import { packed } from '../../src/build/sizes.ts';
import { DIST, pagesOf } from '../site/built.ts';
import { expect, test } from './harness.ts';

const KB = 1000;
const BUDGETS: [kind: RegExp, budget: number][] = [
  [/^\/chapters\/[^/]+\/$/, 14 * KB],
  [/^\/calculators\/[^/]+\/$/, 35 * KB],
  [/^\/$/, 10 * KB],
  // No figure is asked for the others; the calculators' is the roof.
  [/./, 35 * KB],
];

export type Weighed = { path: string; total: number; requests: string[] };

test('every page is within its budget', async ({ site, profile }) => {
  const weighed: Weighed[] = [];
  for (const { path } of pagesOf(DIST)) {
    const context = await profile({ serviceWorkers: 'block' });
    const page = await context.newPage();
    const bodies: Promise<[string, number]>[] = [];
    page.on('response', (response) => bodies.push(response.body().then((body) => [new URL(response.url()).pathname, packed(body)])));
    await page.goto(site.at(path), { waitUntil: 'networkidle' });
    const sizes = await Promise.all(bodies);
    weighed.push({ path, total: sizes.reduce((sum, [, size]) => sum + size, 0), requests: sizes.map(([name, size]) => `${size} ${name}`) });
    await context.close();
  }
  const over = weighed.filter(({ path, total }) => total > (BUDGETS.find(([kind]) => kind.test(path))?.[1] ?? 0));
  expect(over).toEqual([]);
  expect(weighed.every(({ requests }) => requests.length > 2)).toBe(true);
});
