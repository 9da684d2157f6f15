/** The chapters in their order, each with its part and what stands before and after it. */
import { getCollection, type CollectionEntry } from 'astro:content';
import raw from '#content/handbook.json';
import { handbook } from '#src/schemas.ts';

export type Chapter = CollectionEntry<'chapters'>;
export type Part = { id: string; title: string; chapters: Chapter[] };

/** Parts in order with their chapters. Throws where the list and the files of `content/chapters` do not agree. */
export const parts = async (): Promise<Part[]> => {
  const written = new Map((await getCollection('chapters')).map((chapter) => [chapter.id, chapter]));
  const listed = handbook.parse(raw).parts.map((part) => ({
    ...part,
    chapters: part.chapters.map((slug) => {
      const chapter = written.get(slug);
      if (!chapter) throw new Error(`content/handbook.json lists the chapter "${slug}", and content/chapters/${slug}.mdx is not there`);
      written.delete(slug);
      return chapter;
    }),
  }));
  if (written.size > 0) throw new Error(`content/handbook.json does not list: ${[...written.keys()].sort().join(', ')}`);
  return listed;
};

/** All chapters in order. */
export const chapters = async (): Promise<Chapter[]> => (await parts()).flatMap((part) => part.chapters);
