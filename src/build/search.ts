/** Writes the full-text index after the pages are built: what of Pagefind the search dialog needs, and nothing else. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import * as pagefind from 'pagefind';

/** The library, its worker, the entry file, the English word stems, and the index itself. */
const NEEDED = /^(pagefind\.js|pagefind-worker\.js|pagefind-entry\.json|wasm\.en\.pagefind|.*\.pf_(meta|index|fragment|filter))$/;

const fail = (errors: string[]): never => {
  throw new Error(`The search index could not be built:\n${errors.join('\n')}`);
};

/**
 * Indexes what stands in `data-pagefind-body` of each page under `dir` and writes it to `pagefind/`.
 * @returns how many pages were indexed
 * @throws on any error of the indexer, and when it found no page at all
 */
export const writeIndex = async (dir: string): Promise<number> => {
  try {
    const { index, errors } = await pagefind.createIndex();
    if (!index || errors.length > 0) return fail(errors);
    const added = await index.addDirectory({ path: dir });
    if (added.errors.length > 0) fail(added.errors);
    if (added.page_count === 0) fail(['No page has a part marked data-pagefind-body.']);
    const { files, errors: unwritten } = await index.getFiles();
    if (unwritten.length > 0) fail(unwritten);
    for (const { path, content } of files.filter((file) => NEEDED.test(file.path))) {
      const target = join(dir, 'pagefind', path);
      mkdirSync(dirname(target), { recursive: true });
      writeFileSync(target, content);
    }
    return added.page_count;
  } finally {
    await pagefind.close();
  }
};

export const search = (): AstroIntegration => ({
  name: 'search',
  hooks: {
    'astro:build:done': async ({ dir, logger }) => {
      logger.info(`${await writeIndex(fileURLToPath(dir))} pages indexed`);
    },
  },
});
