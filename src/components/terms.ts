/** The terms of the trade: sorted, by letter, and where each one stands. */
import { getCollection, type CollectionEntry } from 'astro:content';
import { address } from './address.ts';

export type TermEntry = CollectionEntry<'terms'>;

export const letterOf = (entry: TermEntry): string => (entry.data.term.match(/[a-z]/i)?.[0] ?? 'a').toLowerCase();
export const termAddress = (entry: TermEntry): string => address(`/terms/${letterOf(entry)}/#${entry.id}`);

/** All terms in the order of the alphabet. */
export const allTerms = async (): Promise<TermEntry[]> =>
  (await getCollection('terms')).sort((a, b) => a.data.term.localeCompare(b.data.term, 'en'));

/** Letters that have terms, with their terms, in order. */
export const byLetter = async (): Promise<[string, TermEntry[]][]> => [
  ...Map.groupBy(await allTerms(), letterOf),
];
