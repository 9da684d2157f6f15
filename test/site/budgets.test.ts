/** What the whole edition may weigh. What a page may weigh is measured in a browser: test/browser/budgets.test.ts. */
import { expect, test } from 'vitest';
import { filesUnder, read } from '../../src/build/files.ts';
import { packedSum } from '../../src/build/sizes.ts';
import { DIST } from './built.ts';

const files = filesUnder(DIST);

test('the whole offline edition is under 2 MB packed', () => {
  const sum = packedSum(DIST, files);
  expect(sum).toBeGreaterThan(100_000);
  expect(sum).toBeLessThan(2_000_000);
});

test('no font is shipped', () => {
  expect(files.filter((file) => /\.(woff2?|ttf|otf|eot)$/.test(file))).toEqual([]);
});

test('no image is over 10 KB, and there is no film or sound', () => {
  const images = files.filter((file) => /\.(png|jpe?g|gif|webp|avif|svg|ico)$/.test(file));
  expect(images.length).toBeGreaterThan(0);
  expect(images.filter((file) => read(DIST, file).length > 10_000)).toEqual([]);
  expect(files.filter((file) => /\.(mp[34]|webm|ogg|wav|pdf)$/.test(file))).toEqual([]);
});

test('of the search library only what is used is shipped', () => {
  const shipped = files.filter((file) => file.startsWith('pagefind/')).map((file) => file.slice('pagefind/'.length));
  expect(shipped.filter((file) => /ui|highlight|unknown|component/.test(file))).toEqual([]);
  expect(shipped).toEqual(expect.arrayContaining(['pagefind.js', 'pagefind-entry.json', 'wasm.en.pagefind']));
});
