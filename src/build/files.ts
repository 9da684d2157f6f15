/** What the integrations that run after the pages share: the built files, and a fingerprint of them. */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';

/** Paths of all files under `dir`, relative, with `/`, in a fixed order. */
export const filesUnder = (dir: string): string[] =>
  readdirSync(dir, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(dir.length).split(sep).filter(Boolean).join('/'))
    .sort();

export const read = (dir: string, path: string): Buffer => readFileSync(join(dir, path));

/** As the `integrity` attribute and a content security policy write it (W3C Subresource Integrity). */
export const integrityOf = (content: Buffer | string): string => `sha256-${createHash('sha256').update(content).digest('base64')}`;

/** Folder of files whose names carry a hash of their content; they must not be changed after Astro has written them. */
export const HASHED = '_astro/';
