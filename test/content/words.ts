/** Reads the words of `content/` as a reader meets them: text apart from the components that stand in it. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { parse } from 'yaml';

export type Tag = { name: string; attributes: { [name: string]: string | { expression: string } } };
/** A piece of text a reader sees, and where it stands: `takeAway[0]`, `text`, `Figure caption`. */
export type Piece = { file: string; where: string; text: string };
export type Document = { file: string; slug: string; front: Record<string, unknown>; body: string };

/** What stands in the text in place of a component that shows a figure. */
export const shownFigure = '▢';
const figureComponents = new Set(['Quantity', 'Share', 'Given', 'Result']);

/** Attributes that no reader sees. */
const silent = new Set(['id', 'slug', 'drawing', 'view', 'calculator', 'output', 'got', 'unit', 'class', 'href', 'src', 'size']);

export const filesIn = (folder: string, ending: string): string[] =>
  existsSync(folder)
    ? readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((f) => f.endsWith(ending)).sort().map((f) => `${folder}/${f}`)
    : [];

export const documentFrom = (file: string, text: string): Document => {
  const [, front = '', body = ''] = text.match(/^---\n([\s\S]*?)\n---\n?([\s\S]*)$/) ?? [];
  return { file, slug: file.replace(/^.*\/|\.\w+$/g, ''), front: parse(front) as Record<string, unknown>, body };
};

export const documents = (folder: string, ending: string): Document[] =>
  filesIn(`content/${folder}`, ending).map((file) => documentFrom(file, readFileSync(file, 'utf8')));

/** The index just behind the bracket that closes the one at `from`. Strings inside are skipped. */
const closing = (text: string, from: number): number => {
  let depth = 0;
  for (let i = from; i < text.length; i++) {
    const c = text[i];
    if (c === '"' || c === "'" || c === '`') i = text.indexOf(c, i + 1);
    else if (c === '{') depth++;
    else if (c === '}' && --depth === 0) return i + 1;
    if (i < 0) break;
  }
  throw new Error(`a bracket is not closed: ${text.slice(from, from + 60)}`);
};

const tagAt = (text: string, from: number): { tag: Tag; end: number } | undefined => {
  const name = /^<\/?([A-Za-z][\w.]*)/.exec(text.slice(from, from + 80));
  if (!name) return undefined;
  const attributes: Tag['attributes'] = {};
  let at = from + name[0].length;
  for (;;) {
    at += /^\s*/.exec(text.slice(at))?.[0].length ?? 0;
    const end = /^\/?>/.exec(text.slice(at, at + 2));
    if (end) return { tag: { name: name[1] as string, attributes }, end: at + end[0].length };
    if (text[at] === '{') {
      at = closing(text, at); // {...spread}: nothing in it is text
      continue;
    }
    const attribute = /^([\w:-]+)(=)?/.exec(text.slice(at, at + 80));
    if (!attribute) throw new Error(`cannot read the tag: ${text.slice(from, from + 80)}`);
    at += attribute[0].length;
    let value: string | { expression: string } = '';
    if (attribute[2]) {
      const end = text[at] === '{' ? closing(text, at) : text.indexOf(text[at] as string, at + 1) + 1;
      value = text[at] === '{' ? { expression: text.slice(at + 1, end - 1) } : text.slice(at + 1, end - 1);
      at = end;
    }
    attributes[attribute[1] as string] = value;
  }
};

/** Splits a body into its text (components of figures become ▢, other tags vanish) and its tags. */
export const readBody = (body: string): { text: string; tags: Tag[] } => {
  const source = body.replace(/^(import|export) .*$/gm, '');
  const tags: Tag[] = [];
  let text = '';
  for (let i = 0; i < source.length; ) {
    const found = source[i] === '<' ? tagAt(source, i) : undefined;
    if (found) {
      const opens = source[i + 1] !== '/';
      if (opens) tags.push(found.tag);
      if (opens && figureComponents.has(found.tag.name)) text += shownFigure;
      i = found.end;
    } else if (source[i] === '{') i = closing(source, i);
    else text += source[i++];
  }
  return { text, tags };
};

/** Every string in a value, with its path; numbers and keys are not words. */
export const strings = (value: unknown, path = ''): [string, string][] => {
  if (typeof value === 'string') return [[path, value]];
  if (Array.isArray(value)) return value.flatMap((each, i) => strings(each, `${path}[${i}]`));
  if (value && typeof value === 'object') {
    return Object.entries(value).flatMap(([key, each]) => strings(each, path ? `${path}.${key}` : key));
  }
  return [];
};

/**
 * What is not for reading: ids, options chosen in a plan, words that only search sees, and the formulas of the working,
 * whose figures belong to mathematics.
 */
const unread = /^(sources|calculators|see|carries)\b|^(limbs\[\d+\]\.)?choices\.\w+$|^also\[\d+\]$|^working\.\w+\.(formula|numbers)$/;
/** In the words of the frame: the vocabulary of worded shares itself. */
const vocabulary = /^shares\./;

/** Every piece of text of one file that a reader sees. */
export const piecesOf = (doc: Document): Piece[] => {
  const { text, tags } = readBody(doc.body);
  return [
    ...strings(doc.front).filter(([path]) => !unread.test(path)).map(([where, t]) => ({ file: doc.file, where, text: t })),
    ...text.split(/\n{2,}|\n(?=- |\d+\. )/).filter((t) => t.trim()).map((t) => ({ file: doc.file, where: 'text', text: t.trim().replace(/^\d+\. /gm, '') })),
    ...tags.flatMap(({ name, attributes }) =>
      Object.entries(attributes)
        .filter((pair): pair is [string, string] => typeof pair[1] === 'string' && !silent.has(pair[0]) && pair[1] !== '')
        .map(([attribute, t]) => ({ file: doc.file, where: `${name} ${attribute}`, text: t }))),
  ];
};

/** All words of `content/`. */
export const allPieces = (): Piece[] => [
  ...['chapters', 'calculators', 'cards', 'lessons'].flatMap((f) => documents(f, '.mdx')).flatMap(piecesOf),
  ...documents('terms', '.md').flatMap(piecesOf),
  ...filesIn('content', '.json').flatMap((file) =>
    strings(JSON.parse(readFileSync(file, 'utf8'))).filter(([path]) => !vocabulary.test(path) && !unread.test(path)).map(([where, text]) => ({ file, where, text }))),
];
