/** The full-text index of the pages: loaded when search is opened, asked as the reader types. */
import { address } from '../address.ts';
import { marked, type Part } from './match.ts';
import { askedWords, plain } from './words.ts';

/** `address` leads to the section that holds the words; `page` is that of the page without it. */
export type Hit = { address: string; page: string; title: string; excerpt: Part[] };

type Piece = { url: string; title: string; excerpt: string; weighted_locations: { balanced_score: number }[] };
type Page = { url: string; meta: { title?: string }; sub_results: Piece[] };
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

const weight = ({ weighted_locations }: Piece): number => weighted_locations.reduce((sum, { balanced_score }) => sum + balanced_score, 0);

/** The part of a page that holds most of what was asked for: the page as a whole, or what stands under one heading. */
const bestPiece = (pieces: readonly Piece[]): Piece | undefined =>
  pieces.reduce<Piece | undefined>((best, piece) => (best && weight(best) >= weight(piece) ? best : piece), undefined);

/** Pages that hold the words, best first, each with its best section; an entry of a page of terms is a hit of its own. */
export const fullText = async (query: string, most = 8): Promise<Hit[]> => {
  const { results } = await (await load()).search(query);
  const pages = await Promise.all(results.slice(0, most).map((result) => result.data()));
  return pages.flatMap(({ url: page, meta, sub_results }) => {
    const anchored = sub_results.filter(({ url }) => url.includes('#'));
    const whole = meta.title ?? '';
    const best = page.includes('/terms/') ? anchored : [bestPiece(sub_results)].filter((piece) => piece !== undefined);
    return best
      .map(({ url, title, excerpt }) => ({
        address: url,
        page: page.includes('/terms/') ? url : page,
        title: page.includes('/terms/') || title === whole ? title : `${whole}: ${title}`,
        excerpt: excerptParts(excerpt, query, title),
      }))
      .filter(({ title, excerpt }) => [...excerpt, ...marked(title, query)].some(({ hit }) => hit));
  });
};
