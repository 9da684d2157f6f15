import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeEach, expect, test } from 'vitest';
import { editionOf, stamp } from '../../src/build/edition.ts';
import { filesUnder, integrityOf } from '../../src/build/files.ts';
import { listFiles, refuseMissing } from '../../src/build/offline.ts';

let dir: string;
const write = (path: string, content: string) => writeFileSync(join(dir, path), content);
beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'edition-'));
  for (const folder of ['_astro', 'terms', 'terms/b']) mkdirSync(join(dir, folder));
  write('index.html', 'home __EDITION__');
  write('404.html', 'none');
  write('_headers', '/*');
  write('worker.js', 'worker __EDITION__');
  write('_astro/a.js', 'a');
  write('terms/index.html', 'terms');
  write('terms/b/index.html', 'b');
});

test('files are listed in one order, whatever the disk says', () => {
  expect(filesUnder(dir)).toEqual(['404.html', '_astro/a.js', '_headers', 'index.html', 'terms/b/index.html', 'terms/index.html', 'worker.js']);
});

test('the edition changes with any content and any name, and with nothing else', () => {
  const first = editionOf(dir);
  expect(first).toMatch(/^[0-9a-f]{8}$/);
  write('terms/index.html', 'terms');
  expect(editionOf(dir)).toBe(first);
  write('terms/index.html', 'terms.');
  expect(editionOf(dir)).not.toBe(first);
  write('terms/index.html', 'terms');
  write('terms/more.html', '');
  expect(editionOf(dir)).not.toBe(first);
});

test('a mark is filled in everywhere it stands', () => {
  stamp(dir, '__EDITION__', '0a1b2c3d');
  expect(readFileSync(join(dir, 'index.html'), 'utf8')).toBe('home 0a1b2c3d');
  expect(readFileSync(join(dir, 'worker.js'), 'utf8')).toBe('worker 0a1b2c3d');
});

test('a mark in a file that is named by its hash fails the build', () => {
  write('_astro/a.js', 'a __EDITION__');
  expect(() => stamp(dir, '__EDITION__', '0a1b2c3d')).toThrow(/_astro\/a\.js carries __EDITION__/);
});

test('the list holds every file that is kept, a page by its folder, with its hash and size', () => {
  expect(listFiles(dir)).toEqual([
    ['./_astro/a.js', integrityOf('a'), 1],
    ['./', integrityOf('home __EDITION__'), 16],
    ['./terms/b/', integrityOf('b'), 1],
    ['./terms/', integrityOf('terms'), 5],
  ]);
});

test('integrity is SHA-256 in base 64', () => {
  // SHA-256 of no bytes: e3b0c442 98fc1c14 … in NIST's example values for FIPS 180-4 (from memory), here in base 64.
  expect(integrityOf('')).toBe('sha256-47DEQpj8HBSa+/TImW+5JCeuQeRkm5NMpJWZG3hSuFU=');
});

test.each([
  ['a page', 'index.html', '<link href="/handbook/_astro/gone.css">', '_astro/gone.css'],
  ['a script', '_astro/a.js', 'import("./gone.js")', '_astro/gone.js'],
])('%s that names a file which was not written fails the build', (_, path, content, missing) => {
  write(path, content);
  expect(() => refuseMissing(dir)).toThrow(`${path} names ${missing}`);
});
test('files that are there are not missed', () => {
  write('index.html', '<script src="/_astro/a.js"></script>');
  expect(() => refuseMissing(dir)).not.toThrow();
});
