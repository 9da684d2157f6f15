/** Every page in both lights: no violation that axe can find. */
import { createRequire } from 'node:module';
import type axe from 'axe-core';
import { DIST, pagesOf } from '../site/built.ts';
import { expect, test } from './harness.ts';

const AXE = createRequire(import.meta.url).resolve('axe-core/axe.min.js');
/** Everything of WCAG 2.2 A and AA that axe tests, and its own good practice. */
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
const PHONE = { width: 390, height: 844 };
const DESK = { width: 1280, height: 800 };

const paths = pagesOf(DIST).map(({ path }) => path);
const folderOf = (path: string) => path.replace(/[^/]*\/?$/, '');
/** Pages at the top, and the first of each folder: what differs by the width of the screen differs by kind of page. */
const oneOfEach = paths.filter((path, place) => folderOf(path) === '/' || paths.findIndex((other) => folderOf(other) === folderOf(path)) === place);

const violations = async (run: () => Promise<axe.AxeResults>) =>
  (await run()).violations.map(({ id, help, nodes }) => `${id}: ${help}\n${nodes.map(({ html }) => `    ${html.slice(0, 200)}`).join('\n')}`);

test.for([
  { name: 'every page, light, on a phone', colorScheme: 'light', viewport: PHONE, visited: paths },
  { name: 'every page, dark, on a desk', colorScheme: 'dark', viewport: DESK, visited: paths },
  { name: 'one of each kind, light, on a desk', colorScheme: 'light', viewport: DESK, visited: oneOfEach },
  { name: 'one of each kind, dark, on a phone', colorScheme: 'dark', viewport: PHONE, visited: oneOfEach },
] as const)('$name: no violation', { timeout: 600_000 }, async ({ colorScheme, viewport, visited }, { site, profile }) => {
  expect(visited.length).toBeGreaterThan(3);
  // The policy of the pages refuses what tests inject; it has tests of its own.
  const context = await profile({ viewport, colorScheme, bypassCSP: true, serviceWorkers: 'block' });
  const page = await context.newPage();
  const found: string[] = [];
  for (const path of visited) {
    await page.goto(site.at(path));
    await page.addScriptTag({ path: AXE });
    const here = await violations(() =>
      page.evaluate((tags) => (globalThis as unknown as { axe: typeof axe }).axe.run(document, { runOnly: tags, resultTypes: ['violations'] }), TAGS),
    );
    found.push(...here.map((violation) => `${path} ${violation}`));
  }
  expect(found).toEqual([]);
});

test('a page with a fault is caught', async ({ site, profile }) => {
  await site.restart({ instead: () => ({ status: 200, body: '<!doctype html><html lang="en"><title>x</title><main><h1>x</h1><img src="/icon.svg"></main>' }) });
  const page = await (await profile({ serviceWorkers: 'block' })).newPage();
  await page.goto(site.at('/'));
  await page.addScriptTag({ path: AXE });
  const found = await violations(() => page.evaluate(() => (globalThis as unknown as { axe: typeof axe }).axe.run()));
  expect(found.join()).toContain('image-alt');
});
