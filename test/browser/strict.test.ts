/** A host may send a policy of its own beside the pages': with what search needs in it, all works; nothing leaves the origin. */
import { DIST, pagesOf } from '../site/built.ts';
import { expect, test, untilKept } from './harness.ts';

const HEADER = "default-src 'self'; script-src 'self' 'wasm-unsafe-eval' 'unsafe-inline'; style-src 'self' 'unsafe-inline'; worker-src 'self'; frame-ancestors 'none'";

test('every page runs under a policy sent as header, and search answers', { timeout: 300_000 }, async ({ site, page }) => {
  await site.restart({ extraHeaders: { 'Content-Security-Policy': HEADER } });
  for (const { path } of pagesOf(DIST)) await page.goto(site.at(path));
  // The library itself, in its worker, which takes its policy from the header.
  const library = JSON.stringify(site.at('/pagefind/pagefind.js'));
  const found = await page.evaluate(`import(${library}).then((it) => it.search('limb')).then(({ results }) => results.length)`);
  expect(found).toBeGreaterThan(0);
});

test('framing is refused', async ({ site, page, allow }) => {
  allow(/frame-ancestors|Framing|favicon/i);
  const other = site.at('/');
  await site.restart({ instead: (path) => (path === '/frame' ? { status: 200, body: `<!doctype html><iframe src="${other}"></iframe>` } : undefined) });
  await page.goto(site.at('/frame'));
  const frame = page.frames()[1];
  expect(await frame?.evaluate(() => document.body.textContent ?? '').catch(() => '')).not.toContain('Standing Clear');
});

test('keeping the handbook on the device asks nothing of any other origin', async ({ site, page }) => {
  const asked: string[] = [];
  page.context().on('request', (request) => asked.push(new URL(request.url()).origin));
  await page.goto(site.at('/offline/'));
  await untilKept(page);
  expect(new Set(asked)).toEqual(new Set([site.origin]));
});
