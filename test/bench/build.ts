/** What a clean build costs. */
import { execFileSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { join } from 'node:path';

const top = join(import.meta.dirname, '../..');
const out = join(top, '.cache/bench-dist/');
const cache = join(top, '.cache/bench-cache/');

/** @returns processor time of the build and its children in seconds, and the most memory it held at once in bytes */
export const buildCost = (): { seconds: number; bytes: number } => {
  for (const folder of [out, cache]) rmSync(folder, { recursive: true, force: true });
  const said = execFileSync(process.execPath, [join(import.meta.dirname, 'build-once.ts'), out, cache], {
    cwd: top,
    env: { ...process.env, NODE_ENV: 'production' },
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  return JSON.parse(said.trim().split('\n').at(-1) ?? '') as { seconds: number; bytes: number };
};
