/** The built handbook as tests see it: where it lies, its pages, and a build under a sub-path beside it. */
import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { filesUnder } from '../../src/build/files.ts';

const top = join(import.meta.dirname, '../..');
export const DIST = join(top, 'dist');
export const SUB_PATH = '/handbook/';
export const SUB_PATH_DIST = join(top, '.cache/handbook');
export const HOSTED: [base: string, dir: string][] = [
  ['/', DIST],
  [SUB_PATH, SUB_PATH_DIST],
];

export type BuiltPage = {
  /** Address under the base, from a slash: `/chapters/three-cuts/`. */
  path: string;
  file: string;
  html: string;
};

/** Every page of a built handbook; also what is only shown when another is missing. */
export const pagesOf = (dir: string): BuiltPage[] =>
  filesUnder(dir)
    .filter((file) => file.endsWith('.html'))
    .map((file) => ({ path: `/${file.replace(/(^|\/)index\.html$/, '$1')}`, file, html: readFileSync(join(dir, file), 'utf8') }));

/** The edition that is stamped into a built handbook. */
export const editionIn = (dir: string): string => {
  const found = /class="edition-id">([0-9a-f]{8})</.exec(readFileSync(join(dir, 'index.html'), 'utf8'));
  if (!found?.[1]) throw new Error(`no edition on the home page of ${dir}`);
  return found[1];
};

const builtAt = (dir: string) => (existsSync(join(dir, 'worker.js')) ? statSync(join(dir, 'worker.js')).mtimeMs : 0);

/** Vitest's global setup: `npm test` has built `dist`; the same under a sub-path is built here when it is older. */
export default function setup(): void {
  if (builtAt(DIST) === 0) throw new Error('Nothing is built: run "npm run build" first, or "npm test" for all of it.');
  if (builtAt(SUB_PATH_DIST) > builtAt(DIST)) return;
  console.log(`building the handbook under ${SUB_PATH} for the tests`);
  execFileSync(process.execPath, [join(top, 'node_modules/astro/bin/astro.mjs'), 'build', '--outDir', SUB_PATH_DIST], {
    cwd: top,
    // Vitest sets NODE_ENV and VITEST, which would make another build of it.
    env: { ...process.env, NODE_ENV: 'production', VITEST: '', BASE_PATH: SUB_PATH },
    stdio: ['ignore', 'ignore', 'inherit'],
  });
}
