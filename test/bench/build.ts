/** What a clean build costs, run with the switches of `npm run build`. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';

const top = join(import.meta.dirname, '../..');
const out = join(top, '.cache/bench-dist/');
const cache = join(top, '.cache/bench-cache/');
/** How often the memory of the build and its children is added up, ms. */
const often = 25;

const switches = (): string[] => {
  const { scripts } = JSON.parse(readFileSync(join(top, 'package.json'), 'utf8')) as { scripts: { build: string } };
  return scripts.build.split(' ').filter((word) => word.startsWith('--'));
};

/** A process and all that it has started; empty once it has ended. Only Linux tells. */
const withChildren = (id: number): number[] => {
  try {
    const threads = readdirSync(`/proc/${id}/task`);
    return [id, ...threads.flatMap((thread) => readFileSync(`/proc/${id}/task/${thread}/children`, 'utf8').split(' ').filter(Boolean).map(Number).flatMap(withChildren))];
  } catch {
    return [];
  }
};
/** What a process holds in memory now, in bytes. */
const resident = (id: number): number => {
  try {
    return Number(/^VmRSS:\s+(\d+) kB/m.exec(readFileSync(`/proc/${id}/status`, 'utf8'))?.[1] ?? 0) * 1024;
  } catch {
    return 0;
  }
};

/** @returns processor time of the build and its children in seconds, and the most memory they held at once in bytes */
export const buildCost = async (): Promise<{ seconds: number; bytes: number }> => {
  for (const folder of [out, cache]) rmSync(folder, { recursive: true, force: true });
  const build = spawn(process.execPath, [...switches(), join(import.meta.dirname, 'build-once.ts'), out, cache], {
    cwd: top,
    env: { ...process.env, NODE_ENV: 'production' },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  let together = 0;
  const look = setInterval(() => {
    together = Math.max(together, withChildren(build.pid ?? 0).reduce((sum, id) => sum + resident(id), 0));
  }, often);
  const [said, [code]] = await Promise.all([text(build.stdout), once(build, 'exit')]);
  clearInterval(look);
  if (code !== 0) throw new Error(`the build ended with ${code}`);
  const { seconds, bytes } = JSON.parse(said.trim().split('\n').at(-1) ?? '') as { seconds: number; bytes: number };
  // Between two looks the build alone may have held more.
  return { seconds, bytes: Math.max(bytes, together) };
};
