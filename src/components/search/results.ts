/** Puts what the structured index and the full text found together: each page once, grouped by kind. */
import type { Hit } from './full-text.ts';
import { marked, type Entry, type Found, type Kind, type Part } from './match.ts';

export type Item = { address: string; title: Part[]; more: Part[]; score: number };
export type Group = { kind: Kind; items: Item[] };

/** The kind of a page, told by its address. */
export const kindOf = (address: string): Kind => {
  const folder = /\/(chapters|calculators|terms|tables)\/[^/]/.exec(address)?.[1];
  return folder === undefined ? 'page' : (folder.slice(0, -1) as Kind);
};

/** The line about an entry, and those of its other names that answer the query. */
const about = ({ s = '', o = [] }: Entry, query: string): string =>
  [s, ...o.filter((name) => marked(name, query).some(({ hit }) => hit))].filter(Boolean).join(' · ');

/**
 * @param found best first
 * @param hits best first; one whose page is among `found` lends it its excerpt
 * @returns groups by their best item; inside a group, what was found by name stands before what was found in the text
 */
export const grouped = (found: readonly Found[], hits: readonly Hit[], query: string): Group[] => {
  const excerpts = new Map(hits.map((hit) => [hit.page, hit.excerpt]));
  const named = found.map(({ entry, score }): Item & { kind: Kind } => ({
    kind: entry.k,
    address: entry.a,
    title: marked(entry.t, query),
    more: excerpts.get(entry.a) ?? marked(about(entry, query), query),
    score,
  }));
  const known = new Set(named.map(({ address }) => address));
  const inText = hits
    .filter(({ page }) => !known.has(page))
    .map((hit): Item & { kind: Kind } => ({
      kind: kindOf(hit.address),
      address: hit.address,
      title: marked(hit.title, query),
      more: hit.excerpt,
      score: 0,
    }));
  const groups = new Map<Kind, Item[]>();
  for (const { kind, ...item } of [...named, ...inText]) groups.set(kind, [...(groups.get(kind) ?? []), item]);
  return [...groups].map(([kind, items]) => ({ kind, items }));
};
