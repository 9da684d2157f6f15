/** Finds entries of the structured index by title, other names and summary; forgives typing errors. */
import { askedWords, likeness, plain, wordsOf } from './words.ts';

export type Kind = 'chapter' | 'calculator' | 'term' | 'table' | 'page';
/** One thing that can be found: `t` title, `a` address, `o` other names, `s` a line about it (`i`: in imperial, if other). */
export type Entry = { k: Kind; t: string; a: string; o?: string[]; s?: string; i?: string };
export type Found = { entry: Entry; score: number };

const best = (asked: string, text: string): number => Math.max(0, ...wordsOf(text).map((word) => likeness(asked, word)));

/** How well an entry answers one word: a title counts most, another name nearly as much, the line about it less. */
const answers = (asked: string, { t, o = [], s = '' }: Entry): number =>
  Math.max(3 * best(asked, t), 2.7 * Math.max(0, ...o.map((name) => best(asked, name))), 1 * best(asked, s));

/** Whole titles and names count above those that merely hold the words. */
const whole = (query: string, { t, o = [] }: Entry): number =>
  [t, ...o].some((name) => plain(name) === plain(query)) ? 2 : 0;

/** Entries that answer every word asked for, best first; equal ones in the order of the index. */
export const match = (query: string, entries: readonly Entry[], most = 12): Found[] => {
  const asked = askedWords(query);
  if (asked.length === 0) return [];
  return entries
    .map((entry) => {
      const scores = asked.map((word) => answers(word, entry));
      const score = scores.includes(0) ? 0 : scores.reduce((a, b) => a + b, 0) / scores.length + whole(query, entry);
      return { entry, score };
    })
    .filter(({ score }) => score > 0)
    .sort((a, b) => b.score - a.score)
    .slice(0, most);
};

/** Where nothing answers every word: what answers some of them. */
export const near = (query: string, entries: readonly Entry[], most = 4): Entry[] =>
  entries
    .map((entry) => ({ entry, score: Math.max(0, ...askedWords(query).map((word) => answers(word, entry))) }))
    .filter(({ score }) => score > 1)
    .sort((a, b) => b.score - a.score)
    .slice(0, most)
    .map(({ entry }) => entry);

export type Part = { text: string; hit: boolean };

/** `text` cut into parts that answer the query and parts that do not, so that the match can be marked. */
export const marked = (text: string, query: string): Part[] => {
  const asked = askedWords(query);
  const parts: Part[] = [];
  for (const piece of text.split(/([\p{L}\p{N}’']+)/u).filter(Boolean)) {
    const hit = /[\p{L}\p{N}]/u.test(piece) && asked.some((word) => wordsOf(piece).some((own) => likeness(word, own) >= 0.4));
    const last = parts.at(-1);
    if (last && last.hit === hit) last.text += piece;
    else parts.push({ text: piece, hit });
  }
  return parts;
};
