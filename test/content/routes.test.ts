import { describe, expect, it } from 'vitest';
import raw from '#content/routes.json' with { type: 'json' };
import { minutes } from '#components/reading-time.ts';
import { sequence, stillToCome } from '#components/sequence.ts';
import { routes } from '#src/schemas.ts';
import { documents } from './words.ts';

const read = routes.parse(raw).routes;
const bodies = new Map(documents('chapters', '.mdx').map(({ slug, body }) => [slug, body]));

describe.each(read)('The read for "$title"', ({ chapters }) => {
  it('names chapters that are there, each once', () => {
    expect(chapters.filter((slug) => !bodies.has(slug))).toEqual([]);
    expect(new Set(chapters).size).toBe(chapters.length);
  });
  it('takes ten minutes at most', () => expect(minutes(chapters.map((slug) => bodies.get(slug)).join('\n'))).toBeLessThanOrEqual(10));
});

it('there is one for every thing that may be ahead, and no two have one name', () => {
  expect(read.map(({ id }) => id).sort()).toEqual(['dead-wood', 'ground', 'large-wood', 'near-lines', 'no-lines', 'platform', 'roadside', 'small-wood']);
});

describe('A read of several chapters', () => {
  it('is a link to the first with the rest behind it, and reads back', () => {
    expect(sequence(['three-cuts', 'palms', 'young-trees'])).toBe('/chapters/three-cuts/?then=palms,young-trees');
    expect(stillToCome('?then=palms,young-trees')).toEqual(['palms', 'young-trees']);
  });
  it('ends with the last chapter', () => {
    expect(sequence(['palms'])).toBe('/chapters/palms/');
    expect(stillToCome('')).toEqual([]);
  });
  it.each(['?then=', '?then=../urgent', '?then=javascript:alert(1)', '?then=a,,b', '?then=A', `?then=${'a,'.repeat(99)}a`, '?then=//x.example'])('%s leads nowhere', (query) =>
    expect(stillToCome(query)).toEqual([]));
});
