import { expect, test } from 'vitest';
import { under } from '../../src/components/address.ts';
import { isIn } from '../../src/components/places.ts';
import { countWords, minutes } from '../../src/components/reading-time.ts';
import { fill } from '../../src/components/fill.ts';
import { firstOnPage } from '../../src/components/once.ts';

test.each([
  ['/', '/', '/'], ['/', '/chapters/x/', '/chapters/x/'], ['/handbook/', '/', '/handbook/'],
  ['/handbook/', '/terms/c/#collar', '/handbook/terms/c/#collar'], ['/handbook', '/a/', '/handbook/a/'],
])('under %s, %s is %s', (base, path, whole) => expect(under(base, path)).toBe(whole));
test.each(['chapters/x/', '', '//elsewhere/', 'https://x/'])('%j is no address of the handbook', (path) => {
  expect(() => under('/', path)).toThrow('begins with one slash');
});

test('a page belongs to its place', () => {
  expect(isIn('/', '/')).toBe(true);
  expect(isIn('/', '/chapters/')).toBe(false);
  expect(isIn('/chapters/', '/chapters/x/')).toBe(true);
});

test('reading time counts what is read', () => {
  expect(countWords('import X from "y"\n\n## On wet grass\n\nBoots <Quantity id="a.b" /> with a **heel**.')).toBe(7);
  expect(minutes('')).toBe(1);
  expect(minutes('word '.repeat(900))).toBe(5);
});

test('a sentence is filled, and a gap without words is refused', () => {
  expect(fill('{count} found in {place}', { count: 3, place: 'terms' })).toBe('3 found in terms');
  expect(() => fill('{count} found', {})).toThrow('count');
});

test('once a page', () => {
  const [one, two] = [{}, {}];
  expect([firstOnPage(one, 'a'), firstOnPage(one, 'a'), firstOnPage(one, 'b'), firstOnPage(two, 'a')]).toEqual([true, false, true, true]);
});
