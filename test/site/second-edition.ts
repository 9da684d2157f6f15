/** Makes another edition out of a built one, as an editor would who changed a word on every page. */
import { cpSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { stamp } from '../../src/build/edition.ts';
import { listFiles } from '../../src/build/offline.ts';
import { editionIn } from './built.ts';

/** A copy of a built handbook, in a folder of its own that a test may spoil. */
export const copyOf = (dir: string): string => {
  const copy = mkdtempSync(join(tmpdir(), 'handbook-'));
  cpSync(dir, copy, { recursive: true });
  return copy;
};

/** @returns the folder of the copy; its edition id is `edition` */
export const secondEdition = (dir: string, edition: string): string => {
  const copy = copyOf(dir);
  stamp(copy, editionIn(dir), edition);
  const worker = join(copy, 'worker.js');
  const list = /\[\["\.\/.*?\]\]/s;
  const before = readFileSync(worker, 'utf8');
  if (!list.test(before)) throw new Error('the worker names no list of files');
  writeFileSync(worker, before.replace(list, () => JSON.stringify(listFiles(copy))));
  return copy;
};
