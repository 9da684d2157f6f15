/**
 * Saves the plan that is open as it is entered. Every change is held at once in this tab's own place, then saved when the
 * hand rests; if another tab has saved the same plan meanwhile, both are kept.
 */
import { newId, type PlanStore, type Saved, type Trouble } from './store.ts';
import type { Place, Unsaved } from './unsaved.ts';

export type Standing = 'kept' | 'saving' | Trouble;
export type Open = { readonly id: string; readonly rev: number };
export type Saving = ReturnType<typeof savingOf>;

type Options = {
  readonly store: PlanStore;
  readonly place: Place;
  /** Another plan out of one that two tabs have changed: the same, under a name that tells them apart. */
  readonly copyOf: (plan: unknown) => unknown;
  readonly hear: (standing: Standing) => void;
  /** Called before the page goes: the last moment for a change that was not said yet. */
  readonly last?: () => void;
  /** Another tab has changed the plan; this one goes on under another id, and was saved there as `copyOf` makes it. */
  readonly onCopy: (open: Open) => void;
  /** ms: how soon a change is held, how long the hand must rest before it is saved, how long saving may wait at most. */
  readonly soon?: number;
  readonly rest?: number;
  readonly atMost?: number;
};

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** Saves; where another tab was first with something else, under a new id. `copied` then. */
const saveOrCopy = async (store: PlanStore, { id, rev, plan }: Unsaved, copyOf: (plan: unknown) => unknown): Promise<Saved & { copied?: true }> => {
  const saved = await store.save(id, rev, plan);
  if (saved.kind !== 'clash') return saved;
  if (same(saved.kept.plan, plan)) return { kind: 'saved', kept: saved.kept };
  return { ...(await store.save(newId(), 0, copyOf(plan))), copied: true };
};

/** Saves what was left behind unsaved. The plan and where it stands now, or what the browser said; then it stays where it is. */
export const recover = async (store: PlanStore, place: Place, copyOf: (plan: unknown) => unknown): Promise<readonly { readonly unsaved: Unsaved; readonly result: Saved }[]> => {
  const results: { unsaved: Unsaved; result: Saved }[] = [];
  for (const { unsaved, letGo } of place.left) {
    const result = await saveOrCopy(store, unsaved, copyOf);
    if (result.kind === 'saved') letGo();
    results.push({ unsaved, result });
  }
  return results;
};

export const savingOf = ({ store, place, copyOf, hear, last, onCopy, soon = 150, rest = 500, atMost = 2500 }: Options) => {
  let open: Open | null = null;
  /** Not saved yet; null where all is. */
  let waiting: { plan: unknown } | null = null;
  let holding: ReturnType<typeof setTimeout> | undefined;
  let resting: ReturnType<typeof setTimeout> | undefined;
  let since = 0;
  let running: Promise<void> = Promise.resolve();

  const hold = (): void => {
    clearTimeout(holding);
    holding = undefined;
    if (open && waiting) place.hold({ ...open, plan: waiting.plan });
  };
  const saveNow = async (): Promise<void> => {
    clearTimeout(resting);
    resting = undefined;
    if (!open || !waiting) return;
    hold();
    const what = waiting;
    const result = await saveOrCopy(store, { ...open, plan: what.plan }, copyOf);
    if (result.kind !== 'saved') return hear(result.kind === 'trouble' ? result.trouble : 'refused');
    open = { id: result.kept.id, rev: result.kept.rev };
    if (waiting === what) {
      waiting = null;
      clearTimeout(holding);
      holding = undefined;
      place.letGo();
      hear('kept');
    }
    if (result.copied) onCopy(open);
  };
  /** One saving after another. */
  const flush = (): Promise<void> => (running = running.then(saveNow));

  const leaving = (): void => {
    last?.();
    hold();
    void flush();
  };
  const onVisibility = (): void => {
    if (document.visibilityState === 'hidden') leaving();
  };
  if (typeof document !== 'undefined') {
    addEventListener('pagehide', leaving);
    document.addEventListener('visibilitychange', onVisibility);
  }

  return {
    /** The plan that is entered from now on; null for one that is not kept. At once where all is saved; else that is done first. */
    open: (now: Open | null): Promise<void> => {
      const begin = (): void => {
        open = now;
        waiting = null;
      };
      return waiting ? flush().then(begin) : Promise.resolve(begin());
    },
    isWaiting: (): boolean => waiting !== null,
    /** Call with the whole plan at each change. */
    change: (plan: unknown): void => {
      if (!open) return;
      if (!waiting) since = Date.now();
      waiting = { plan };
      hear('saving');
      holding ??= setTimeout(hold, soon);
      clearTimeout(resting);
      resting = setTimeout(() => void flush(), Math.max(0, Math.min(rest, since + atMost - Date.now())));
    },
    flush,
    stop: async (): Promise<void> => {
      if (typeof document !== 'undefined') {
        removeEventListener('pagehide', leaving);
        document.removeEventListener('visibilitychange', onVisibility);
      }
      await flush();
      clearTimeout(holding);
    },
  };
};
