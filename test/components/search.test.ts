import { describe, expect, test } from 'vitest';
import { excerptParts } from '../../src/components/search/full-text.ts';
import { marked, match, near, type Entry } from '../../src/components/search/match.ts';
import { grouped, kindOf } from '../../src/components/search/results.ts';
import { askedWords, distance, likeness, plain } from '../../src/components/search/words.ts';

const entries: Entry[] = [
  { k: 'calculator', t: 'Where do I stand?', a: '/calculators/stance/', o: ['stand-off'], s: 'How far from plumb under the cut.' },
  { k: 'chapter', t: 'Where to stand', a: '/chapters/where-to-stand/', s: 'Beside the limb, never under it.' },
  { k: 'term', t: 'branch collar', a: '/terms/b/#branch-collar', o: ['collar'] },
  { k: 'term', t: 'natural target pruning', a: '/terms/n/#natural-target-pruning', o: ['three-cut method'] },
  { k: 'term', t: 'elevating work platform', a: '/terms/e/#platform', o: ['EWP', 'MEWP', 'bucket truck'] },
  { k: 'term', t: 'bar', a: '/terms/b/#bar', o: ['guide bar'] },
];
const first = (query: string) => match(query, entries)[0]?.entry.a;

describe('words', () => {
  test('are compared without case, accents, hyphens', () => {
    expect(plain('Three-Cut  Méthode, 2.5 m.')).toBe('three cut methode 2.5 m');
  });
  test('small ones do not count unless nothing else was asked', () => {
    expect(askedWords('where do I stand')).toEqual(['stand']);
    expect(askedWords('what is it')).toEqual(['what', 'is', 'it']);
  });
  // Classic pairs for these edit distances: kitten/sitting needs 3; a swap of neighbours counts once.
  test.each([['kitten', 'sitting', 3], ['ca', 'ac', 1], ['collar', 'colar', 1], ['same', 'same', 0], ['', 'abc', 3]])(
    'distance of %s and %s is %i', (a, b, far) => expect(distance(a, b, 5)).toBe(far));
  test('a distance over the most asked for is not worked out', () => expect(distance('kitten', 'sitting', 1)).toBe(2));
  test('figures and short words forgive nothing', () => {
    expect(likeness('250', '260')).toBe(0);
    expect(likeness('bar', 'car')).toBe(0);
    expect(likeness('saw', 'sow')).toBe(0);
  });
});

describe('match', () => {
  test.each([
    ['collar', '/terms/b/#branch-collar'],
    ['colar', '/terms/b/#branch-collar'],
    ['coll', '/terms/b/#branch-collar'],
    ['natural targit', '/terms/n/#natural-target-pruning'],
    ['three cut', '/terms/n/#natural-target-pruning'],
    ['mewp', '/terms/e/#platform'],
    ['Bucket Truck', '/terms/e/#platform'],
    ['platfrom', '/terms/e/#platform'],
    ['where to stand', '/chapters/where-to-stand/'],
    ['bar', '/terms/b/#bar'],
  ])('%s finds %s first', (query, address) => expect(first(query)).toBe(address));
  test('every word has to be answered', () => expect(match('collar chainsaw', entries)).toEqual([]));
  test.each(['', '   ', '???', 'wobblewrigth'])('%j finds nothing and does not throw', (query) => expect(match(query, entries)).toEqual([]));
  test('where nothing answers every word, the nearest are offered', () => {
    expect(near('collar chainsaw', entries).map(({ t }) => t)).toEqual(['branch collar']);
  });
});

test('the match is marked, a misspelt one too', () => {
  expect(marked('The branch collar closes', 'colar')).toEqual([
    { text: 'The branch ', hit: false }, { text: 'collar', hit: true }, { text: ' closes', hit: false },
  ]);
  expect(marked('x < y & z', 'collar').map(({ text }) => text).join('')).toBe('x < y & z');
});

describe('excerpts of the full text', () => {
  test('keep their text, decoded, and lose the title they repeat', () => {
    const parts = excerptParts('collar. The <mark>swollen</mark> ring &amp; ridge &lt;b&gt;', 'swollen', 'collar');
    expect(parts).toEqual([
      { text: 'The ', hit: false }, { text: 'swollen', hit: true }, { text: ' ring & ridge <b>', hit: false },
    ]);
  });
  test('words marked for their first letters alone are not marked', () => {
    expect(excerptParts('<mark>mass</mark> and <mark>7.5</mark>', '7.5 m').filter(({ hit }) => hit)).toEqual([{ text: '7.5', hit: true }]);
  });
});

test('a page stands once, under its kind, with the excerpt of the text', () => {
  const groups = grouped(
    match('collar', entries),
    [
      { address: '/chapters/final/#dead', page: '/chapters/final/', title: 'The last cut: Dead branches', excerpt: [{ text: 'collar', hit: true }] },
      { address: '/terms/b/#branch-collar', page: '/terms/b/#branch-collar', title: 'branch collar', excerpt: [{ text: 'swollen ring', hit: false }] },
    ],
    'collar',
  );
  expect(groups.map(({ kind, items }) => [kind, items.map((item) => item.address)])).toEqual([
    ['term', ['/terms/b/#branch-collar']],
    ['chapter', ['/chapters/final/#dead']],
  ]);
  expect(groups[0]?.items[0]?.more).toEqual([{ text: 'swollen ring', hit: false }]);
});

test.each([
  ['/chapters/x/', 'chapter'], ['/handbook/calculators/stance/?v=1', 'calculator'], ['/terms/b/#bar', 'term'],
  ['/tables/x/', 'table'], ['/sources/', 'page'], ['/chapters/', 'page'],
])('%s is of the kind %s', (address, kind) => expect(kindOf(address)).toBe(kind));
