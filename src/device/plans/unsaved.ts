/**
 * The last moments of typing: what a tab has not saved yet is written at once, so that a reload, a new edition or a browser
 * that ends loses nothing. Each tab has a place of its own; what a tab left behind is found when the page is opened again.
 */
import { read, write } from '../store.ts';
import { newId } from './store.ts';

export type Unsaved = { readonly id: string; /** The saving it goes on from. */ readonly rev: number; readonly plan: unknown };

export const unsavedName = 'standing-clear.unsaved-plan.';
const tabName = 'standing-clear.tab';
const version = 1;
/** How long the page that this one replaces may take to go, ms. */
const patience = 1000;
const step = 50;

const asUnsaved = (name: string): Unsaved | null => {
  const { id, rev, plan } = read(name);
  return typeof id === 'string' && /^[a-z0-9]{1,40}$/.test(id) && Number.isSafeInteger(rev) && plan !== undefined ? { id, rev: rev as number, plan } : null;
};
const drop = (name: string): void => {
  try {
    localStorage.removeItem(name);
  } catch {
    // Storage refused: then nothing was written either.
  }
};
const places = (): string[] => {
  try {
    return Object.keys(localStorage).filter((name) => name.startsWith(unsavedName));
  } catch {
    return [];
  }
};
const inSession = (act: (session: Storage) => string | null): string | null => {
  try {
    return act(sessionStorage);
  } catch {
    return null;
  }
};

/** True once the place is this page's until it closes; false where another page holds it. Without locks every place is free. */
const claimed = (name: string): Promise<boolean> =>
  typeof navigator === 'undefined' || !navigator.locks
    ? Promise.resolve(true)
    : new Promise((done) => void navigator.locks.request(name, { ifAvailable: true }, (lock) => {
        done(lock !== null);
        return lock ? new Promise(() => undefined) : undefined;
      }).catch(() => done(true)));

/** The place of this tab: the one it had before a reload, or a new one where a copy of the tab holds that. */
const placeOfTab = async (): Promise<string> => {
  const before = inSession((session) => session.getItem(tabName));
  for (let waited = 0; before && /^[a-z0-9]{1,40}$/.test(before) && waited < patience; waited += step) {
    if (await claimed(unsavedName + before)) return unsavedName + before;
    await new Promise((done) => setTimeout(done, step));
  }
  const tab = newId();
  inSession((session) => (session.setItem(tabName, tab), null));
  await claimed(unsavedName + tab);
  return unsavedName + tab;
};

export type Place = {
  /** What was left behind unsaved: by this tab first, then by tabs that are gone. Each stays until it is let go. */
  readonly left: readonly { readonly unsaved: Unsaved; readonly letGo: () => void }[];
  /** False where the browser refuses. */
  readonly hold: (unsaved: Unsaved) => boolean;
  readonly letGo: () => void;
};

export const openPlace = async (): Promise<Place> => {
  const own = await placeOfTab();
  const left: string[] = places().includes(own) ? [own] : [];
  for (const place of places()) if (place !== own && (await claimed(place))) left.push(place);
  return {
    left: left.flatMap((name) => {
      const unsaved = asUnsaved(name);
      return unsaved ? [{ unsaved, letGo: () => drop(name) }] : [];
    }),
    hold: (unsaved) => write(own, { ...unsaved, v: version }),
    letGo: () => drop(own),
  };
};
