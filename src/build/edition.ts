/**
 * The edition: one short id for everything that is built, so that two people, or a screen and a sheet of paper, can
 * tell whether they read the same. Worked out from the files before it is written into them.
 */
import { createHash } from 'node:crypto';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { filesUnder, HASHED, read } from './files.ts';

/** @returns eight hexadecimal digits of the SHA-256 of all paths and contents under `dir`. */
export const editionOf = (dir: string): string => {
  const hash = createHash('sha256');
  for (const path of filesUnder(dir)) hash.update(`${path}\0`).update(read(dir, path)).update('\0');
  return hash.digest('hex').slice(0, 8);
};

/**
 * Writes `text` wherever `mark` stands in a file under `dir`.
 * @throws when it stands in a file whose name is already a hash of its content.
 */
export const stamp = (dir: string, mark: string, text: string): void => {
  for (const path of filesUnder(dir)) {
    const content = read(dir, path);
    if (!content.includes(mark)) continue;
    if (path.startsWith(HASHED)) {
      throw new Error(`${path} carries ${mark}, but its name is a hash of its content: read it from the page instead.`);
    }
    writeFileSync(join(dir, path), content.toString('utf8').replaceAll(mark, text));
  }
};
