/**
 * After the pages and the search index: bundles the service worker, stamps the edition, and writes into the worker the
 * list of every file of this edition, so that the whole handbook can be kept on a device.
 */
import { cpSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { build, type Rolldown } from 'vite';
import type { ListedFile } from '../worker/messages.ts';
import { editionOf, stamp } from './edition.ts';
import { filesUnder, HASHED, integrityOf, read } from './files.ts';
import { EDITION_PLACEHOLDER, SIZE_PLACEHOLDER } from './placeholders.ts';
import { packedSum } from './sizes.ts';

const WORKER = 'worker.js';
const LIST = '__FILES__';
/** Read by hosts, or fetched by the browser beside the worker's back. */
const NOT_KEPT = new Set([WORKER, '_headers', '404.html']);

const isKept = (path: string) => !NOT_KEPT.has(path);

const bundleWorker = async (): Promise<string> => {
  const built = (await build({
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    define: { 'process.env.NODE_ENV': '"production"' },
    build: {
      write: false,
      copyPublicDir: false,
      rolldownOptions: {
        input: fileURLToPath(new URL('../worker/worker.ts', import.meta.url)),
        output: { format: 'iife', entryFileNames: WORKER },
      },
    },
  })) as Rolldown.RolldownOutput;
  return built.output[0].code;
};

/**
 * Every file that is kept, by the address it is asked for: a folder's page by the folder, so that hosts that redirect
 * away from `index.html` are no trouble.
 */
export const listFiles = (dir: string): ListedFile[] =>
  filesUnder(dir)
    .filter(isKept)
    .map((path) => {
      const content = read(dir, path);
      return [`./${path.replace(/(^|\/)index\.html$/, '$1')}`, integrityOf(content), content.length];
    });

/** @throws when a file names another of the hashed folder that is not there: the reader would find a page without its looks. */
export const refuseMissing = (dir: string): void => {
  const files = filesUnder(dir);
  const there = new Set(files);
  // From anywhere by its folder, between scripts by its name alone.
  const named = new RegExp(`(?:${HASHED}|["'\`]\\./)([\\w.~-]+\\.(?:js|css))`, 'g');
  for (const path of files.filter((file) => file.startsWith(HASHED) || file.endsWith('.html'))) {
    const missing = [...read(dir, path).toString('utf8').matchAll(named)].map(([, name]) => HASHED + name).filter((name) => !there.has(name));
    if (missing.length > 0) throw new Error(`${path} names ${missing.join(', ')}, which the build has not written. Build again.`);
  }
};

/** @throws when a file that is already named by its hash would have to change, or the worker has lost its list */
export const makeOffline = async (dir: string): Promise<{ edition: string; files: number; size: number }> => {
  refuseMissing(dir);
  // Hosts send 404.html with a status that no browser would keep; a copy under an address of its own can be kept.
  cpSync(join(dir, '404.html'), join(dir, 'offline', 'no-such-page', 'index.html'));
  writeFileSync(join(dir, WORKER), await bundleWorker());
  const edition = editionOf(dir);
  stamp(dir, EDITION_PLACEHOLDER, edition);
  // Said in tenths of a megabyte: packing at its best would cost seconds of every build.
  const size = packedSum(dir, filesUnder(dir).filter(isKept), 8);
  stamp(dir, SIZE_PLACEHOLDER, `${(Math.ceil(size / 1e5) / 10).toFixed(1)} MB`);
  const files = listFiles(dir);
  const worker = read(dir, WORKER).toString('utf8');
  if (worker.split(LIST).length !== 2) throw new Error(`${WORKER} must name ${LIST} once`);
  writeFileSync(join(dir, WORKER), worker.replace(LIST, () => JSON.stringify(files)));
  return { edition, files: files.length, size };
};

export const offline = (): AstroIntegration => ({
  name: 'offline',
  hooks: {
    'astro:build:done': async ({ dir, logger }) => {
      const { edition, files, size } = await makeOffline(fileURLToPath(dir));
      logger.info(`edition ${edition}: ${files} files, ${Math.round(size / 1000)} KB packed`);
    },
  },
});
