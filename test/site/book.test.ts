/** The whole handbook on one page: everything in it, numbered without a gap, references by the right number. */
import { expect, test } from 'vitest';
import handbook from '#content/handbook.json' with { type: 'json' };
import words from '#content/interface.json' with { type: 'json' };
import { DIST, pagesOf } from './built.ts';
import { attribute, elementsOf, type Element, textOf } from './document.ts';

const html = pagesOf(DIST).find(({ path }) => path === '/book/')!.html;
const elements = elementsOf(html);
const says = (element: Element) => textOf(element).replace(/\s+/g, ' ').trim();
const headings = elements.filter(({ tagName }) => /^h[1-6]$/.test(tagName)).map((element) => ({ level: Number(element.tagName[1]), id: attribute(element, 'id') ?? '', text: says(element) }));
const numbered = headings.filter(({ text }) => /^\d+(\.\d+)* /.test(text));
const contents = elements.find((element) => attribute(element, 'class') === 'book-contents')!;
const walk = (element: Element): Element[] => [element, ...element.childNodes.flatMap((child) => ('tagName' in child ? walk(child) : []))];
const linksIn = (element: Element) => walk(element).filter(({ tagName }) => tagName === 'a');

test('every chapter is in it, in the order of the handbook, under the number of its part', () => {
  const expected = handbook.parts.filter(({ chapters }) => chapters.length > 0)
    .flatMap(({ chapters }, p) => chapters.map((slug, c) => `${p + 1}.${c + 1} ${slug}`));
  const found = numbered.filter(({ level, id }) => level === 3 && !id.endsWith('-answers')).map(({ id, text }) => `${text.split(' ')[0]} ${id}`);
  expect(found).toEqual(expected);
});

test('sections count up from one under each chapter', () => {
  const sections = numbered.filter(({ level }) => level === 4);
  expect(sections.length).toBeGreaterThan(100);
  let before: number[] = [];
  for (const { text } of sections) {
    const number = text.split(' ')[0]!.split('.').map(Number);
    const same = number.slice(0, 2).join() === before.slice(0, 2).join();
    expect(number[2], text).toBe(same ? before[2]! + 1 : 1);
    before = number;
  }
});

test('the contents name every part, chapter and section by the number and the words of its heading', () => {
  const listed = new Map(linksIn(contents).map((link) => [attribute(link, 'href')!.slice(1), says(link)]));
  const heads = numbered.filter(({ id }) => !id.endsWith('-answers'));
  expect(heads.filter(({ id, text }) => listed.get(id) !== text)).toEqual([]);
  for (const id of ['answers', 'terms', 'marks', 'book-sources']) expect(listed.has(id), id).toBe(true);
});

test('a reference gives the number of where it leads', () => {
  const numberOf = new Map(numbered.map(({ id, text }) => [id, text.split(' ')[0]!]));
  const [before, after] = words.book.see.split('{number}') as [string, string];
  const references = elements.filter(({ tagName }) => tagName === 'a').map((link) => ({ to: attribute(link, 'href') ?? '', text: says(link) }))
    .filter(({ to, text }) => to.startsWith('#') && text.endsWith(`${after})`) && text.includes(`(${before}`));
  expect(references.length).toBeGreaterThan(30);
  expect(references.filter(({ to, text }) => !text.endsWith(`(${before}${numberOf.get(to.slice(1))}${after})`))).toEqual([]);
});

test('it is not found by search and sends nobody to a chapter apart', () => {
  expect(html).not.toContain('data-pagefind-body');
  const away = elements.filter(({ tagName }) => tagName === 'a').map((link) => attribute(link, 'href') ?? '').filter((href) => /^\/chapters\/./.test(href));
  expect(away).toEqual([]);
});
