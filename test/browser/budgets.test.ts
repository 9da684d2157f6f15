/** Every page within its budget. What the service worker fetches is counted apart: test/site/budgets.test.ts. */
import { DIST, pagesOf } from '../site/built.ts';
import { expect, test } from './harness.ts';
import { budgetOf, weigh, type Weighed } from './weigh.ts';

test('every page is within its budget', { timeout: 600_000 }, async ({ site, profile }) => {
  const weighed: Weighed[] = [];
  for (const { path } of pagesOf(DIST)) {
    const context = await profile({ serviceWorkers: 'block' });
    weighed.push(await weigh(context, site.at(path), path));
    await context.close();
  }
  expect(weighed.filter(({ path, total }) => total > budgetOf(path))).toEqual([]);
  // A page that pulled in nothing was not measured.
  expect(weighed.filter(({ requests }) => requests.length < 4)).toEqual([]);
});
