/** Every address that a page names lies in the handbook and is there, with its fragment; also under a sub-path. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { filesUnder } from '../../src/build/files.ts';
import { HOSTED, pagesOf } from './built.ts';
import { attribute, elementsOf, type Element } from './document.ts';

const HOST = 'http://handbook.test';
/** Attributes that name another file or page. */
const ADDRESSES = ['href', 'src', 'action', 'formaction', 'poster', 'component-url', 'renderer-url', 'before-hydration-url'];
const addressesIn = (element: Element) => ADDRESSES.flatMap((name) => attribute(element, name) ?? []);
/** Pages of sources elsewhere: the only way out, by a link that the reader chooses. */
const leavesByChoice = (element: Element, address: string) => element.tagName === 'a' && /^https?:\/\//.test(address);

describe.each(HOSTED)('under %s', (base, dir) => {
  const pages = pagesOf(dir);
  const files = new Set(filesUnder(dir));
  const ids = new Map(pages.map(({ file, html }) => [file, new Set(elementsOf(html).flatMap((element) => attribute(element, 'id') ?? []))]));

  test.each(pages)('$path', ({ path, html }) => {
    const wrong: string[] = [];
    for (const element of elementsOf(html)) {
      for (const address of addressesIn(element)) {
        if (leavesByChoice(element, address)) continue;
        const url = new URL(address, HOST + base + path.slice(1));
        if (url.origin !== HOST) wrong.push(`${address} leaves the handbook`);
        else if (!url.pathname.startsWith(base)) wrong.push(`${address} lies outside ${base}`);
        else {
          const place = decodeURI(url.pathname.slice(base.length));
          const file = place === '' || place.endsWith('/') ? `${place}index.html` : place;
          if (!files.has(file)) wrong.push(`${address} is not there`);
          else if (url.hash && !ids.get(file)?.has(decodeURIComponent(url.hash.slice(1)))) wrong.push(`${address} has no such place`);
        }
      }
    }
    expect(wrong).toEqual([]);
  });

  test('the web manifest names files that are there', () => {
    const { icons, start_url, scope } = JSON.parse(readFileSync(join(dir, 'handbook.webmanifest'), 'utf8')) as {
      icons: { src: string }[];
      start_url: string;
      scope: string;
    };
    expect(icons.map(({ src }) => src).filter((src) => !files.has(src))).toEqual([]);
    expect([start_url, scope]).toEqual(['./', './']);
  });
});
