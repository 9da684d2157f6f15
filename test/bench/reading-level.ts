/** How hard the chapters are to read, by the Flesch-Kincaid grade (1975): years of school in the United States. */
import { fleschKincaid } from 'flesch-kincaid';
import { syllable } from 'syllable';
import { documents, readBody } from '../content/words.ts';

export type Level = { slug: string; grade: number; words: number };

/** What a reader reads as sentences: headings, lists and paragraphs each end one; a figure counts as a word. */
export const countsOf = (text: string): { sentence: number; word: number; syllable: number } => {
  const sentences = text
    .replace(/▢/g, ' ten ')
    .replace(/[*_`#|>]/g, ' ')
    .split(/\n\s*\n|\n\s*(?=[-\d])|[.!?:](?=\s|$)/)
    .map((sentence) => sentence.match(/[\p{L}’']+(?:-[\p{L}]+)*/gu) ?? [])
    .filter((words) => words.length > 0);
  const words = sentences.flat();
  return { sentence: sentences.length, word: words.length, syllable: words.reduce((sum, word) => sum + syllable(word), 0) };
};

/** Every chapter, the hardest first. */
export const readingLevels = (): Level[] =>
  documents('chapters', '.mdx')
    .map(({ slug, body }) => {
      const counts = countsOf(readBody(body).text);
      return { slug, words: counts.word, grade: fleschKincaid(counts) };
    })
    .sort((a, b) => b.grade - a.grade);
