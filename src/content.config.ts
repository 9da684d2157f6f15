import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { calculatorWords, chapter, term } from './schemas.ts';

const files = (folder: string, ending: string) =>
  glob({ base: `./content/${folder}`, pattern: `*.${ending}`, generateId: ({ entry }) => entry.replace(/\.\w+$/, '') });

export const collections = {
  chapters: defineCollection({ loader: files('chapters', 'mdx'), schema: chapter }),
  calculators: defineCollection({ loader: files('calculators', 'mdx'), schema: calculatorWords }),
  terms: defineCollection({ loader: files('terms', 'md'), schema: term }),
};
