/** Every page is a whole document: one main heading, one main part, ids that are unique and lead somewhere. */
import { describe, expect, test } from 'vitest';
import { DIST, pagesOf } from './built.ts';
import { attribute, elementsOf, textOf } from './document.ts';

const pages = pagesOf(DIST);

test('there are pages of every kind', () => {
  const paths = pages.map(({ path }) => path);
  for (const kind of ['/', '/404.html', '/offline/', '/sources/', '/chapters/', '/calculators/', '/terms/']) expect(paths).toContain(kind);
  for (const kind of [/^\/chapters\/[^/]+\/$/, /^\/calculators\/[^/]+\/$/, /^\/terms\/[^/]+\/$/]) {
    expect(paths.filter((path) => kind.test(path)).length, String(kind)).toBeGreaterThan(2);
  }
});

describe.each(pages)('$path', ({ html }) => {
  const elements = elementsOf(html);
  const named = (tag: string) => elements.filter(({ tagName }) => tagName === tag);

  test('has one h1, one main part, a title, a language and a description', () => {
    expect(named('h1').map(textOf)).toHaveLength(1);
    expect(named('main')).toHaveLength(1);
    expect(named('title').map(textOf).filter((title) => title.trim() !== '').length).toBeGreaterThanOrEqual(1);
    expect(attribute(named('html')[0]!, 'lang')).toBe('en');
    expect(named('meta').some((meta) => attribute(meta, 'name') === 'description' && attribute(meta, 'content'))).toBe(true);
  });

  test('has no id twice, and every reference to one lands', () => {
    const ids = elements.flatMap((element) => attribute(element, 'id') ?? []);
    expect(ids.filter((id, place) => ids.indexOf(id) !== place)).toEqual([]);
    const REFERENCES = ['for', 'aria-labelledby', 'aria-describedby', 'aria-controls', 'aria-details', 'aria-errormessage', 'popovertarget', 'list'];
    const meant = elements.flatMap((element) => REFERENCES.flatMap((name) => attribute(element, name)?.split(/\s+/) ?? []));
    // Drawings point at their own patterns and clip paths.
    const drawn = elements.flatMap(({ attrs }) => attrs.flatMap(({ value }) => /^url\(#([^)]+)\)$/.exec(value)?.[1] ?? []));
    expect([...meant, ...drawn].filter((id) => !ids.includes(id))).toEqual([]);
  });

  test('headings go down one level at a time', () => {
    const levels = elements.flatMap(({ tagName }) => /^h([1-6])$/.exec(tagName)?.[1] ?? []).map(Number);
    levels.forEach((level, place) => expect(level, `heading ${place + 1}`).toBeLessThanOrEqual((levels[place - 1] ?? 0) + 1));
  });

  test('carries the edition and no mark the build should have filled in', () => {
    expect(html).toMatch(/class="edition-id">[0-9a-f]{8}</);
    expect(html).not.toMatch(/__[A-Z]+__/);
  });
});
