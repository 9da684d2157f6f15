/** A built page as a tree, read with an HTML parser and not with patterns. */
import { parse, type DefaultTreeAdapterTypes as Tree } from 'parse5';

export type Element = Tree.Element;

const isElement = (node: Tree.Node): node is Element => 'tagName' in node;

/** Every element of a page, in order, also those inside templates. */
export const elementsOf = (html: string): Element[] => {
  const found: Element[] = [];
  const walk = (node: Tree.Node): void => {
    if (isElement(node)) found.push(node);
    if ('childNodes' in node) node.childNodes.forEach(walk);
    if ('content' in node) walk(node.content as Tree.Node);
  };
  walk(parse(html));
  return found;
};

export const attribute = (element: Element, name: string): string | undefined => element.attrs.find((attr) => attr.name === name)?.value;

export const textOf = (node: Tree.Node): string =>
  'value' in node ? node.value : 'childNodes' in node ? node.childNodes.map(textOf).join('') : '';

/** What a reader can read or hear: text outside scripts and styles, and the attributes that are read out. */
export const wordsOf = (html: string): string[] => {
  const READ_OUT = new Set(['alt', 'title', 'aria-label', 'aria-valuetext', 'placeholder', 'content']);
  const blocks: string[] = [];
  const walk = (node: Tree.Node): void => {
    if (isElement(node)) {
      if (node.tagName === 'script' || node.tagName === 'style') return;
      if (node.tagName !== 'meta' || attribute(node, 'name') === 'description') {
        blocks.push(...node.attrs.filter(({ name }) => READ_OUT.has(name)).map(({ value }) => value));
      }
      const own = node.childNodes.filter((child) => !isElement(child) || INLINE.has(child.tagName));
      if (own.length > 0 && !INLINE.has(node.tagName)) blocks.push(own.map(textOf).join('').replace(/\s+/g, ' ').trim());
    }
    if ('childNodes' in node) node.childNodes.forEach(walk);
    if ('content' in node) walk(node.content as Tree.Node);
  };
  walk(parse(html));
  return blocks.filter(Boolean);
};
const INLINE = new Set(['a', 'b', 'i', 'em', 'strong', 'span', 'small', 'sub', 'sup', 'abbr', 'cite', 'code', 'button', 'kbd', 'q']);
