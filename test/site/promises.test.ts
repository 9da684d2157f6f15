/** The handbook says what the numbers say; no page promises that anything is safe. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { DIST, pagesOf } from './built.ts';
import { wordsOf } from './document.ts';

/** Titles of publications are theirs, not ours. */
const titles = readdirSync('shared/sources').flatMap((file) =>
  Object.values(JSON.parse(readFileSync(`shared/sources/${file}`, 'utf8')) as Record<string, { title: string; publisher: string }>).flatMap(
    ({ title, publisher }) => [title, publisher],
  ),
);
/** Whole sentences that may use the word, each with its reason. */
const MAY: [sentence: string, reason: string][] = [];

const PROMISE = /\b(?:un)?safe(?:r|st|ly)?\b|\brisk-free\b|\bharmless\b|\bno danger\b/i;

/** Where a source is found on the web: its words are not ours either. */
const ADDRESS = /(https?:\/\/)?[\w-]+(\.[\w-]+)+\/\S*/g;

const promises = (html: string) =>
  wordsOf(html).map((words) => words.replace(ADDRESS, '')).filter((words) => PROMISE.test([...titles, ...MAY.map(([sentence]) => sentence)].reduce((left, may) => left.replaceAll(may, ''), words)));

test.each(['<p>It is safe to cut.</p>', '<p>Stand <b>safely</b> here.</p>', '<img alt="a safe place">', '<p>The safest side</p>'])('%s is caught', (html) => {
  expect(promises(html)).toHaveLength(1);
});
test('the name of an authority is not', () => {
  expect(promises('<p>Occupational Safety and Health Administration</p><script>var safe = 1</script>')).toEqual([]);
});

describe.each(pagesOf(DIST))('$path', ({ html }) => {
  test('promises nothing', () => expect(promises(html)).toEqual([]));
});

test('every listed sentence is still there', () => {
  const all = pagesOf(DIST).flatMap(({ html }) => wordsOf(html)).join('\n');
  expect(MAY.filter(([sentence]) => !all.includes(sentence))).toEqual([]);
});
