/**
 * Plans kept on the device, many, in IndexedDB. What a plan holds is core's business: here it is what was entered, of any
 * edition, perhaps damaged. A browser may refuse to keep, or run full: that is an answer, never an exception.
 */
import { createStore, del, entries, get, update } from 'idb-keyval';

export type KeptPlan = {
  readonly id: string;
  /** One more with each saving, so that a tab learns that another has saved meanwhile. */
  readonly rev: number;
  /** When it was saved last, ms since 1970. */
  readonly saved: number;
  /** When it was deleted, ms since 1970; null where it was not. */
  readonly deleted: number | null;
  /** To be read with core/plan before it is used. */
  readonly plan: unknown;
};

/** `full`: no room left; `refused`: the browser keeps nothing here. */
export type Trouble = 'refused' | 'full';
export type Saved =
  | { readonly kind: 'saved'; readonly kept: KeptPlan }
  /** Saved from elsewhere since; `kept` is what stands there now, and it was left alone. */
  | { readonly kind: 'clash'; readonly kept: KeptPlan }
  | { readonly kind: 'trouble'; readonly trouble: Trouble };
export type Listed = { readonly kind: 'list'; readonly plans: readonly KeptPlan[] } | { readonly kind: 'trouble'; readonly trouble: Trouble };
export type PlanStore = ReturnType<typeof planStore>;

export const storeName = 'standing-clear.plans';
/** How long a deleted plan can be brought back, ms. */
export const bringBackFor = 30 * 24 * 60 * 60 * 1000;

/** A new id: letters and digits, not to be guessed, never met twice. */
export const newId = (): string => [...crypto.getRandomValues(new Uint8Array(16))].map((byte) => (byte % 36).toString(36)).join('');

const troubleIn = (error: unknown): Trouble => (error instanceof Error || error instanceof DOMException) && error.name === 'QuotaExceededError' ? 'full' : 'refused';
const trouble = (error: unknown) => ({ kind: 'trouble', trouble: troubleIn(error) }) as const;

/** An entry as it lies in the store; one that is damaged counts as a plan that cannot be read, and is not lost. */
const entryOf = (id: string, found: unknown): KeptPlan => {
  const { rev, saved, deleted, plan } = (typeof found === 'object' && found !== null ? found : {}) as Partial<KeptPlan>;
  const whole = Number.isSafeInteger(rev) && Number.isFinite(saved) && (deleted === null || Number.isFinite(deleted)) && plan !== undefined;
  return whole ? { id, rev: rev as number, saved: saved as number, deleted: deleted as number | null, plan } : { id, rev: 0, saved: 0, deleted: null, plan: found };
};

/** @param name of the database; two stores of one name hold the same plans */
export const planStore = (name: string = storeName) => {
  const store = createStore(name, 'plans');
  const channel = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(name);
  const tell = (): void => channel?.postMessage('changed');

  const change = async (id: string, next: (before: KeptPlan | undefined) => KeptPlan): Promise<KeptPlan> => {
    let kept: KeptPlan | undefined;
    await update<unknown>(id, (found) => (kept = next(found === undefined ? undefined : entryOf(id, found))), store);
    tell();
    return kept as unknown as KeptPlan;
  };
  const mark = async (id: string, deleted: number | null): Promise<Trouble | null> => {
    try {
      if ((await get(id, store)) !== undefined) await change(id, (before) => ({ ...(before as KeptPlan), deleted }));
      return null;
    } catch (error) {
      return troubleIn(error);
    }
  };

  return {
    /** All of them, the one saved last first; also those deleted. What was deleted long ago is let go. */
    all: async (now: number = Date.now()): Promise<Listed> => {
      try {
        const plans = (await entries<string, unknown>(store)).map(([id, found]) => entryOf(String(id), found)).sort((a, b) => b.saved - a.saved);
        const isOver = ({ deleted }: KeptPlan): boolean => deleted !== null && now - deleted > bringBackFor;
        await Promise.all(plans.filter(isOver).map(({ id }) => del(id, store)));
        return { kind: 'list', plans: plans.filter((plan) => !isOver(plan)) };
      } catch (error) {
        return trouble(error);
      }
    },
    /** Keeps `plan` under `id`, unless it was saved from elsewhere since `basedOn` (0 for a new one). Brings it back where it was deleted. */
    save: async (id: string, basedOn: number, plan: unknown, now: number = Date.now()): Promise<Saved> => {
      try {
        let clash = false;
        const kept = await change(id, (before) => {
          clash = before !== undefined && before.rev !== basedOn;
          return clash ? (before as KeptPlan) : { id, rev: basedOn + 1, saved: now, deleted: null, plan };
        });
        return { kind: clash ? 'clash' : 'saved', kept };
      } catch (error) {
        return trouble(error);
      }
    },
    /** Sets a plan aside; `bringBack` undoes it, for `bringBackFor`. Null, or why it could not be done. */
    remove: (id: string, now: number = Date.now()): Promise<Trouble | null> => mark(id, now),
    bringBack: (id: string): Promise<Trouble | null> => mark(id, null),
    /** For good. */
    forget: async (id: string): Promise<Trouble | null> => {
      try {
        await del(id, store);
        tell();
        return null;
      } catch (error) {
        return troubleIn(error);
      }
    },
    /** Calls `hear` when another tab has changed what is kept; returns how to stop. */
    onOthers: (hear: () => void): (() => void) => {
      channel?.addEventListener('message', hear);
      return () => channel?.removeEventListener('message', hear);
    },
    close: (): void => channel?.close(),
  };
};
