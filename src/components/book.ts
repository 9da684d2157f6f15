/** The handbook as one book: parts and chapters numbered in order, and every source by one number. */
import { parts, type Chapter, type Part } from './handbook.ts';

export type BookChapter = { number: string; chapter: Chapter };
export type BookPart = Pick<Part, 'id' | 'title'> & { number: number; chapters: BookChapter[] };
export type Section = { number: string; id: string; title: string };

/** Parts that have chapters, numbered from 1; a chapter's number is its part's and its own: `3.2`. */
export const bookParts = async (): Promise<BookPart[]> =>
  (await parts()).filter((part) => part.chapters.length > 0).map(({ id, title, chapters }, p) => ({
    id, title, number: p + 1,
    chapters: chapters.map((chapter, c) => ({ number: `${p + 1}.${c + 1}`, chapter })),
  }));

/** Read once a build: every reference asks for it. */
let kept: Promise<BookChapter[]> | undefined;
const everyChapter = (): Promise<BookChapter[]> => (kept ??= bookParts().then((all) => all.flatMap((part) => part.chapters)));

/** @throws for a chapter that is not in the book */
export const numberOf = async (slug: string): Promise<string> => {
  const found = (await everyChapter()).find(({ chapter }) => chapter.id === slug);
  if (!found) throw new Error(`the book has no chapter "${slug}"`);
  return found.number;
};

/** The sources of all chapters in the order they first come up, each once: its number in the book is its place. */
export const bookSources = async (): Promise<string[]> => [...new Set((await everyChapter()).flatMap(({ chapter }) => chapter.data.sources))];

const plain = (html: string): string => html.replace(/<[^>]*>/g, '').trim();

/**
 * The text of a chapter fitted into the book: its headings two levels further down, numbered under the chapter's number and
 * with ids that are the book's own.
 * @param html the chapter's text as built
 */
export const inBook = (html: string, slug: string, number: string): { html: string; sections: Section[] } => {
  const sections: Section[] = [];
  const fitted = html.replace(/<h([2-4]) id="([^"]*)">(.*?)<\/h\1>/gs, (_, level: string, id: string, inside: string) => {
    const own = `${slug}-${id}`;
    const deeper = Number(level) + 2;
    if (level !== '2') return `<h${deeper} id="${own}">${inside}</h${deeper}>`;
    const section = { number: `${number}.${sections.length + 1}`, id: own, title: plain(inside) };
    sections.push(section);
    return `<h4 id="${own}"><span class="book-number">${section.number}</span> ${inside}</h4>`;
  });
  return { html: fitted, sections };
};
