/** What files weigh on the way to the reader: brotli at its best, as hosts pack files that do not change. */
import { brotliCompressSync, constants } from 'node:zlib';
import { read } from './files.ts';

/** @returns bytes after brotli; files that are packed already stay as they are */
export const packed = (content: Buffer, quality = constants.BROTLI_MAX_QUALITY): number => {
  const params = { [constants.BROTLI_PARAM_SIZE_HINT]: content.length, [constants.BROTLI_PARAM_QUALITY]: quality };
  return Math.min(content.length, brotliCompressSync(content, { params }).length);
};

/** @returns the sum for files under `dir` */
export const packedSum = (dir: string, paths: readonly string[], quality?: number): number =>
  paths.reduce((sum, path) => sum + packed(read(dir, path), quality), 0);
