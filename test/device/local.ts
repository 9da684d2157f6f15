/** Local storage of a device, empty before each test: what it holds, and whether it refuses to hold more. */
import { beforeEach, vi } from 'vitest';

export const localShelf = () => {
  const shelf = { held: {} as { [name: string]: string }, refuses: false };
  beforeEach(() => {
    shelf.held = {};
    shelf.refuses = false;
    vi.stubGlobal('localStorage', {
      getItem: (name: string) => shelf.held[name] ?? null,
      setItem: (name: string, value: string) => {
        if (shelf.refuses) throw new DOMException('no', 'QuotaExceededError');
        shelf.held[name] = value;
      },
    });
  });
  return shelf;
};
