/** Every page in both lights: no violation that axe can find. */
import { createRequire } from 'node:module';
import type axe from 'axe-core';
import { describe } from 'vitest';
import { DIST, pagesOf } from '../site/built.ts';
import { expect, test } from './harness.ts';

const AXE = createRequire(import.meta.url).resolve('axe-core/axe.min.js');
/** Everything of WCAG 2.2 A and AA that axe tests, and its own good practice. */
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
const VIEWS = [
  { name: 'phone', viewport: { width: 390, height: 844 } },
  { name: 'desk', viewport: { width: 1280, height: 800 } },
];

const violations = async (run: () => Promise<axe.AxeResults>) =>
  (await run()).violations.map(({ id, help, nodes }) => `${id}: ${help}\n${nodes.map(({ html }) => `    ${html.slice(0, 200)}`).join('\n')}`);

describe.each(['light', 'dark'] as const)('in %s', (colorScheme) => {
  test.for(VIEWS)('on a $name, no page has a violation', { timeout: 300_000 }, async ({ viewport }, { site, profile }) => {
    // The policy of the pages refuses what tests inject; it has tests of its own.
    const context = await profile({ viewport, colorScheme, bypassCSP: true, serviceWorkers: 'block' });
    const page = await context.newPage();
    const found: string[] = [];
    for (const { path } of pagesOf(DIST)) {
      await page.goto(site.at(path));
      await page.addScriptTag({ path: AXE });
      const here = await violations(() =>
        page.evaluate((tags) => (globalThis as unknown as { axe: typeof axe }).axe.run(document, { runOnly: tags, resultTypes: ['violations'] }), TAGS),
      );
      found.push(...here.map((violation) => `${path} ${violation}`));
    }
    expect(found).toEqual([]);
  });
});

test('a page with a fault is caught', async ({ site, profile }) => {
  await site.restart({ instead: () => ({ status: 200, body: '<!doctype html><html lang="en"><title>x</title><main><h1>x</h1><img src="/icon.svg"></main>' }) });
  const page = await (await profile({ serviceWorkers: 'block' })).newPage();
  await page.goto(site.at('/'));
  await page.addScriptTag({ path: AXE });
  const found = await violations(() => page.evaluate(() => (globalThis as unknown as { axe: typeof axe }).axe.run()));
  expect(found.join()).toContain('image-alt');
});
