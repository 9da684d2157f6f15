/** The full-text index of the pages: loaded when search is opened, asked as the reader types. */
import { address } from '../address.ts';
import { marked, type Part } from './match.ts';
import { askedWords, plain } from './words.ts';

export type Hit = { address: string; title: string; excerpt: Part[] };

type Piece = { url: string; title: string; excerpt: string };
type Page = { url: string; meta: { title?: string }; excerpt: string; sub_results: Piece[] };
type Library = {
  init(): Promise<void>;
  search(query: string): Promise<{ results: { data(): Promise<Page> }[] }>;
};

let library: Promise<Library> | undefined;

/** Loads the library; a failure is not remembered, so that it can be tried again. */
export const load = (): Promise<Library> => {
  library ??= (async () => {
    const loaded = (await import(/* @vite-ignore */ address('/pagefind/pagefind.js'))) as Library;
    await loaded.init();
    return loaded;
  })();
  library.catch(() => (library = undefined));
  return library;
};

const named: { [entity: string]: string } = { '&lt;': '<', '&gt;': '>', '&quot;': '"', '&#39;': "'", '&amp;': '&' };
const decoded = (text: string): string => text.replace(/&(?:lt|gt|quot|#39|amp);/g, (entity) => named[entity] as string);

/** True where a marked word is what was asked for; the library also marks words that only begin with the same letters. */
const isMeant = (marked: string, asked: readonly string[]): boolean => {
  const word = plain(marked);
  return asked.some((a) => a === word || (a.length > 2 && (word.startsWith(a) || (word.length > 2 && a.startsWith(word.slice(0, -1))))));
};

/** An excerpt as the library gives it, cut at the `<mark>`s that mean what was asked for; without the title it repeats. */
export const excerptParts = (excerpt: string, query: string, title = ''): Part[] => {
  const asked = askedWords(query);
  const start = new RegExp(`^(<mark>)?${title.replace(/[^\p{L}\p{N} ]/gu, '.')}[.:]?(</mark>)?[.:]? `, 'u');
  return excerpt
    .replace(title ? start : /^\b$/, '')
    .split(/(<mark>.*?<\/mark>)/)
    .filter(Boolean)
    .map((piece) => {
      const text = decoded(piece.replace(/<\/?mark>/g, ''));
      return { text, hit: piece.startsWith('<mark>') && isMeant(text, asked) };
    });
};

/** Pages that hold the words, best first. An entry of a page of terms is a hit of its own. */
export const fullText = async (query: string, most = 8): Promise<Hit[]> => {
  const { results } = await (await load()).search(query);
  const pages = await Promise.all(results.slice(0, most).map((result) => result.data()));
  return pages.flatMap((page) => {
    const inTerms = page.url.includes('/terms/');
    const pieces = inTerms ? page.sub_results.filter(({ url }) => url.includes('#')) : [{ ...page, title: page.meta.title ?? '' }];
    return pieces
      .map(({ url, title, excerpt }) => ({ address: url, title, excerpt: excerptParts(excerpt, query, title) }))
      .filter(({ title, excerpt }) => [...excerpt, ...marked(title, query)].some(({ hit }) => hit));
  });
};
