/** The terms of the trade: sorted, by letter, and where each one stands. */
import { getCollection, type CollectionEntry } from 'astro:content';
import { address } from './address.ts';
import { parts } from './handbook.ts';

export type TermEntry = CollectionEntry<'terms'>;

export const letterOf = (entry: TermEntry): string => (entry.data.term.match(/[a-z]/i)?.[0] ?? 'a').toLowerCase();
export const termAddress = (entry: TermEntry): string => address(`/terms/${letterOf(entry)}/#${entry.id}`);

/** What a term means, one or two sentences with `{fact-id}` placeholders. */
export const meaningOf = (entry: TermEntry): string => (entry.body ?? '').replace(/\s+/g, ' ').trim();

/** All terms in the order of the alphabet. */
export const allTerms = async (): Promise<TermEntry[]> =>
  (await getCollection('terms')).sort((a, b) => a.data.term.localeCompare(b.data.term, 'en'));

/** Letters that have terms, with their terms, in order. */
export const byLetter = async (): Promise<[string, TermEntry[]][]> => [
  ...Map.groupBy(await allTerms(), letterOf),
];

export type Use = { title: string; address: string };

/** Where each term is explained in a text: chapters in the order of the handbook, then calculators. */
export const uses = async (): Promise<Map<string, Use[]>> => {
  const all = await parts();
  const pages = (['chapters', 'calculators'] as const).flatMap((folder) => all.flatMap((part) => part[folder].map((entry) => ({ folder, entry }))));
  const found = pages.flatMap(({ folder, entry }) => [...(entry.body ?? '').matchAll(/<Term id="([^"]+)"/g)].map(([, id]) => ({
    id: id as string, title: entry.data.title, address: address(`/${folder}/${entry.id}/`),
  })));
  return Map.groupBy(found, ({ id }) => id);
};

export type Name = { name: string; address: string; other: boolean };

/** Every name a term goes by, its own and the others, by first letter, in order. */
export const namesByLetter = async (): Promise<[string, Name[]][]> => {
  const names = (await allTerms()).flatMap((entry): Name[] => [
    { name: entry.data.term, address: termAddress(entry), other: false },
    ...entry.data.also.map(({ name }) => ({ name, address: termAddress(entry), other: true })),
  ]);
  const letter = ({ name }: Name) => (name.match(/[a-z]/i)?.[0] ?? '#').toLowerCase();
  names.sort((a, b) => a.name.localeCompare(b.name, 'en'));
  return [...Map.groupBy(names, letter)].sort(([a], [b]) => a.localeCompare(b, 'en'));
};
