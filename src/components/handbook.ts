/** The parts of the handbook in their order, each with its calculators and chapters. */
import { getCollection, type CollectionEntry } from 'astro:content';
import raw from '#content/handbook.json';
import { handbook } from '#src/schemas.ts';

export type Chapter = CollectionEntry<'chapters'>;
export type CalculatorPage = CollectionEntry<'calculators'>;
export type Part = { id: string; title: string; calculators: CalculatorPage[]; chapters: Chapter[] };

/** Takes listed entries out of what is written; each may be listed once. */
const taking = <Entry extends { id: string }>(written: Entry[], folder: string) => {
  const left = new Map(written.map((entry) => [entry.id, entry]));
  const take = (id: string): Entry => {
    const entry = left.get(id);
    if (!entry) throw new Error(`content/handbook.json lists "${id}", and content/${folder}/${id}.mdx is not there, or was listed before`);
    left.delete(id);
    return entry;
  };
  return { take, left: () => [...left.keys()].sort() };
};

/** Parts in order. Throws where the list and the files of `content/chapters` and `content/calculators` do not agree. */
export const parts = async (): Promise<Part[]> => {
  const [chapters, calculators] = [
    taking(await getCollection('chapters'), 'chapters'),
    taking(await getCollection('calculators'), 'calculators'),
  ];
  const listed = handbook.parse(raw).parts.map((part) => ({
    ...part,
    calculators: part.calculators.map(calculators.take),
    chapters: part.chapters.map(chapters.take),
  }));
  const left = [...chapters.left(), ...calculators.left()];
  if (left.length > 0) throw new Error(`content/handbook.json does not list: ${left.join(', ')}`);
  return listed.filter((part) => part.calculators.length + part.chapters.length > 0);
};

/** All chapters in order. */
export const chapters = async (): Promise<Chapter[]> => (await parts()).flatMap((part) => part.chapters);
