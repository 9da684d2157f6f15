/** The files of this edition on the device: put there, looked over, fetched again where the browser cleared some away. */
import { PrecacheController } from 'workbox-precaching';
import type { Holds, ListedFile } from './messages.ts';
import { pooled } from './pool.ts';

export class Shelf {
  readonly edition: string;
  readonly controller = new PrecacheController();
  private readonly bytes = new Map<string, number>();

  /** @param list every file of the edition, written into the worker by the build */
  constructor(edition: string, list: readonly ListedFile[]) {
    this.edition = edition;
    this.controller.addToCacheList(
      list.map(([url, integrity]) => ({
        url,
        integrity,
        // The name of a hashed file is its revision; for any other the first part of its own hash is.
        revision: url.includes('_astro/') ? null : integrity.slice(7, 19),
      })),
    );
    for (const [url, , size] of list) this.bytes.set(new URL(url, location.href).href, size);
  }

  /**
   * Fetches what is not yet held, a few files at a time. A file that does not match the list is refused.
   * @throws when any file could not be had: an edition is whole or it is not taken
   */
  async fill(event: ExtendableEvent, onDone: (done: number, total: number) => void): Promise<void> {
    const files = [...this.controller.getURLsToCacheKeys()];
    await pooled(
      files,
      async ([url, cacheKey]) => {
        const integrity = this.controller.getIntegrityForCacheKey(cacheKey);
        const request = new Request(url, {
          ...(integrity === undefined ? {} : { integrity }),
          cache: cacheKey === url ? 'default' : 'reload',
          credentials: 'same-origin',
        });
        await Promise.all(this.controller.strategy.handleAll({ params: { cacheKey, integrity }, request, event }));
      },
      (done) => onDone(done, files.length),
    );
  }

  async holds(): Promise<Holds> {
    const cache = await caches.open(this.controller.strategy.cacheName);
    const kept = new Set((await cache.keys()).map((request) => request.url));
    const holds: Holds = { type: 'holds', edition: this.edition, files: { held: 0, of: 0 }, bytes: 0, folders: {} };
    for (const [url, cacheKey] of this.controller.getURLsToCacheKeys()) {
      const path = url.slice(new URL('./', location.href).href.length);
      // The page of a folder itself is a list of what is in it, and not one of those.
      const [, top = ''] = /^([^/]+)\/./.exec(path) ?? [];
      const folder = (holds.folders[top] ??= [0, 0]);
      folder[1] += 1;
      holds.files.of += 1;
      if (!kept.has(cacheKey)) continue;
      folder[0] += 1;
      holds.files.held += 1;
      holds.bytes += this.bytes.get(url) ?? 0;
    }
    return holds;
  }
}
