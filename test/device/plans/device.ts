/** A device and its tabs, for tests: storage that lasts, storage of a tab, and locks that a tab holds until it is gone. */
import { IDBFactory } from 'fake-indexeddb';
import { vi } from 'vitest';
import { type PlanStore, planStore } from '#device/plans/store.ts';
import { openPlace, type Place } from '#device/plans/unsaved.ts';
import { savingOf, type Standing } from '#device/plans/saving.ts';

class Shelf {
  [name: string]: unknown;
  getItem(name: string): string | null {
    return Object.hasOwn(this, name) ? (this[name] as string) : null;
  }
  setItem(name: string, value: string): void {
    this[name] = value;
  }
  removeItem(name: string): void {
    delete this[name];
  }
}

export type Tab = { readonly session: Shelf; readonly holds: Set<string> };

/** A fresh device; `use` makes a tab the one that runs. */
export const device = () => {
  const locks = new Set<string>();
  vi.stubGlobal('indexedDB', new IDBFactory());
  vi.stubGlobal('localStorage', new Shelf());
  const use = (tab: Tab): void => {
    vi.stubGlobal('sessionStorage', tab.session);
    vi.stubGlobal('navigator', {
      locks: {
        request: async (name: string, _how: unknown, act: (lock: object | null) => unknown) => {
          if (locks.has(name)) return act(null);
          locks.add(name);
          tab.holds.add(name);
          return act({});
        },
      },
    });
  };
  return {
    tab: (copied?: Tab): Tab => ({ session: Object.assign(new Shelf(), copied?.session), holds: new Set() }),
    use,
    /** The page of a tab is gone; a reload opens it again with the same session. */
    end: (tab: Tab): void => {
      for (const name of tab.holds) locks.delete(name);
      tab.holds.clear();
    },
  };
};

const names = new Set<PlanStore>();
let count = 0;
/** A name of a store that no other test uses. */
export const freshName = (): string => `plans-${(count += 1)}`;
export const opened = (name: string): PlanStore => {
  const store = planStore(name);
  names.add(store);
  return store;
};
/** Channels of closed stores keep no test alive. */
export const closeAll = (): void => {
  for (const store of names) store.close();
  names.clear();
};

export const copyOf = (plan: unknown): unknown => ({ ...(plan as object), name: `${(plan as { name: string }).name} (2)` });
export const savingIn = async (store: PlanStore, place?: Place) => {
  const heard: Standing[] = [];
  const copies: string[] = [];
  const saving = savingOf({ store, place: place ?? (await openPlace()), copyOf, hear: (standing) => heard.push(standing), onCopy: ({ id }) => copies.push(id), soon: 5, rest: 20, atMost: 60 });
  return { saving, heard, copies };
};
export const until = async (what: () => boolean | Promise<boolean>): Promise<void> => vi.waitUntil(what, { timeout: 2000, interval: 5 }).then(() => undefined);
