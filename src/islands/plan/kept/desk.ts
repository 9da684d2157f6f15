/**
 * The desk: one plan lies open on it, the others are in the list. Every change of the open one is kept without being
 * asked; what the browser refuses to keep is said, and stays open. No words of the page and no elements here.
 */
import type { Plan } from '#core/plan/facts.ts';
import { readAnyPlan, readPlansFile, type ReadFile } from '#core/plan/file.ts';
import { readPlanLink } from '#core/plan/link.ts';
import { recover, type Saving, savingOf, type Standing } from '#device/plans/saving.ts';
import { newId, type PlanStore, type Trouble } from '#device/plans/store.ts';
import type { Place } from '#device/plans/unsaved.ts';
import { copyName, type Entry, entryOf, nameOf, same } from './entries.ts';
import { keepAll } from './keep-all.ts';
import { noteOpen, openBefore } from './session.ts';

/** What was done, or could not be: words stand under the same name. `undo`: what brings back the plan just deleted. */
export type Said =
  | { readonly id: 'opened' | 'duplicated' | 'broughtBack' | 'forgotten' | 'clash'; readonly name: string }
  | { readonly id: 'deleted'; readonly name: string; readonly undo: string }
  | { readonly id: 'started' | 'tookOther' | 'recovered' | 'fromLink' }
  | { readonly id: 'badLink'; readonly problem: 'cutLink' | 'newerLink' | 'badLink' }
  | { readonly id: 'trouble'; readonly trouble: Trouble }
  | { readonly id: 'read'; readonly file: ReadFile; readonly fresh: readonly string[]; readonly here: readonly string[]; readonly loose: number };

export type DeskState = {
  readonly standing: 'none' | Standing;
  /** Those deleted too. */
  readonly entries: readonly Entry[];
  readonly openId: string | null;
  /** Came in a file and could not be kept. */
  readonly loose: readonly Plan[];
  readonly said: Said | null;
  /** Only looked at: there is a plan to go back to. */
  readonly looks: boolean;
};
export const emptyDesk: DeskState = { standing: 'none', entries: [], openId: null, loose: [], said: null, looks: false };

type Options = {
  readonly store: PlanStore;
  readonly place: Place;
  /** The open plan as the page has it now. */
  readonly now: () => Plan;
  /** Lays another plan open on the page. */
  readonly put: (plan: Plan) => void;
  /** Gives the open plan this name, as the reader would. */
  readonly rename: (name: string) => void;
  readonly blank: () => Plan;
  readonly hear: (state: DeskState) => void;
  readonly pauses?: { readonly soon: number; readonly rest: number; readonly atMost: number };
};
export type Desk = ReturnType<typeof deskOf>;

export const deskOf = ({ store, place, now, put, rename, blank, hear, pauses }: Options) => {
  let state = emptyDesk;
  let told: Plan | null = null;
  let before: { readonly id: string | null; readonly plan: Plan } | null = null;
  const set = (some: Partial<DeskState>): void => hear((state = { ...state, ...some }));
  const names = (): string[] => state.entries.map(({ name }) => name);
  const renamed = (plan: Plan): Plan => ({ ...plan, name: copyName(nameOf(plan), names()) });
  const copyOf = (raw: unknown): unknown => {
    const found = readAnyPlan(raw);
    return found.kind === 'plan' ? renamed(found.plan) : raw;
  };

  const list = async (): Promise<readonly Entry[]> => {
    const listed = await store.all();
    if (listed.kind === 'trouble') set({ standing: listed.trouble });
    else set({ entries: listed.plans.map(entryOf) });
    return state.entries;
  };
  const saving: Saving = savingOf({
    store, place, copyOf, ...pauses,
    last: () => {
      if (told) tell(now());
    },
    hear: (standing) => {
      if (standing !== state.standing) set({ standing });
      if (standing === 'kept') void list();
    },
    onCopy: ({ id }) => {
      const { name } = renamed(now());
      noteOpen(id, null);
      set({ openId: id, said: { id: 'clash', name } });
      rename(name);
    },
  });

  /** Keeps a change of the open plan; one that is not kept yet is from now on. */
  const tell = (plan: Plan): void => {
    if (plan === told) return;
    told = plan;
    if (state.openId === null) {
      const id = newId();
      void saving.open({ id, rev: 0 });
      noteOpen(id, null);
      set({ openId: id });
    }
    saving.change(plan);
  };
  /** Lays a plan open; `id` null: it is looked at, and kept from the first change on. */
  const show = async (plan: Plan, id: string | null, rev: number, said: Said | null): Promise<void> => {
    if (told) tell(now());
    await saving.open(id === null ? null : { id, rev });
    told = plan;
    before = null;
    noteOpen(id, id === null && said?.id !== 'started' ? plan : null);
    put(plan);
    const lost = state.standing === 'refused' || state.standing === 'full' ? state.standing : null;
    set({ openId: id, said, looks: false, standing: lost ?? (id === null ? 'none' : 'kept') });
  };
  const start = (): Promise<void> => show(blank(), null, 0, { id: 'started' });
  const openEntry = async (entry: Entry, said: Said | null): Promise<void> => {
    if (entry.plan) await show(entry.plan, entry.id, entry.rev, said);
  };
  const fresh = async (id: string): Promise<Entry | undefined> => {
    await saving.flush();
    return (await list()).find((entry) => entry.id === id);
  };
  /** Reads the fragment of the address; true where it holds a plan, whole or not. */
  const openLink = async (fragment: string): Promise<boolean> => {
    const link = readPlanLink(fragment);
    if (link.kind === 'none') return false;
    if (link.kind === 'bad') set({ said: { id: 'badLink', problem: link.problem } });
    else await show(link.plan, null, 0, { id: 'fromLink' });
    return link.kind === 'plan';
  };

  return {
    /** Call once: what was left unsaved is saved, then the plan of the link, of this tab, or the last one is laid open. */
    begin: async (fragment: string): Promise<void> => {
      const initial = now();
      const results = await recover(store, place, copyOf);
      const entries = await list();
      // Typed before all this was read: that is what lies open.
      if (!same(now(), initial)) {
        tell(now());
        return;
      }
      told = initial;
      const [first] = results;
      if (await openLink(fragment)) return;
      const { said } = state;
      if (first?.result.kind === 'saved') {
        const entry = entries.find(({ id }) => id === (first.result as { kept: { id: string } }).kept.id);
        if (entry?.plan) return openEntry(entry, said ?? { id: 'recovered' });
      } else if (first) {
        const found = readAnyPlan(first.unsaved.plan);
        if (found.kind === 'plan') return show(found.plan, first.unsaved.id, first.unsaved.rev, said ?? { id: 'recovered' });
      }
      const last = openBefore();
      if (last && 'id' in last) {
        const entry = entries.find(({ id, deleted }) => id === last.id && deleted === null);
        if (entry) await openEntry(entry, said);
      } else if (last) {
        const found = readAnyPlan(last.plan);
        if (found.kind === 'plan') await show(found.plan, null, 0, said);
      }
    },
    openLink,
    tell,
    flush: saving.flush,
    start,
    /** Lays open a plan that is not the reader's own, to look at; `back` returns to the one before. */
    look: async (plan: Plan): Promise<void> => {
      const from = { id: state.openId, plan: now() };
      await show(plan, null, 0, null);
      before = from;
      set({ looks: true });
    },
    back: async (): Promise<void> => {
      const from = before;
      const entry = from?.id ? await fresh(from.id) : undefined;
      if (entry?.plan) return openEntry(entry, null);
      return from && from.id === null ? show(from.plan, null, 0, null) : start();
    },
    open: async (id: string): Promise<void> => {
      const entry = await fresh(id);
      if (entry) await openEntry(entry, { id: 'opened', name: entry.name });
    },
    openLoose: (plan: Plan): Promise<void> => show(plan, null, 0, { id: 'opened', name: nameOf(plan) }),
    /** Keeps the open plan as it is, without a change. */
    keep: (): void => {
      told = null;
      tell(now());
      void saving.flush();
    },
    rename: async (id: string, name: string): Promise<void> => {
      if (id === state.openId) return rename(name);
      const entry = await fresh(id);
      if (!entry?.plan) return;
      const saved = await store.save(id, entry.rev, { ...entry.plan, name });
      if (saved.kind === 'trouble') set({ said: { id: 'trouble', trouble: saved.trouble } });
      await list();
    },
    duplicate: async (id: string): Promise<void> => {
      const entry = await fresh(id);
      if (!entry?.plan) return;
      const plan = renamed(entry.plan);
      const saved = await store.save(newId(), 0, plan);
      if (saved.kind === 'trouble') return set({ said: { id: 'trouble', trouble: saved.trouble } });
      await list();
      await show(plan, saved.kept.id, saved.kept.rev, { id: 'duplicated', name: plan.name });
    },
    remove: async (id: string): Promise<void> => {
      const entry = await fresh(id);
      const trouble = entry ? await store.remove(id) : null;
      if (!entry || trouble) return set({ said: trouble ? { id: 'trouble', trouble } : null });
      await list();
      if (id === state.openId) await start();
      set({ said: { id: 'deleted', name: entry.name, undo: id } });
    },
    /** Undoes a deletion and lays the plan open, as it was. */
    bringBack: async (id: string): Promise<void> => {
      const trouble = await store.bringBack(id);
      if (trouble) return set({ said: { id: 'trouble', trouble } });
      const entry = await fresh(id);
      if (!entry) return;
      await openEntry(entry, { id: 'broughtBack', name: entry.name });
      set({ said: { id: 'broughtBack', name: entry.name } });
    },
    forget: async (id: string): Promise<void> => {
      const name = state.entries.find((entry) => entry.id === id)?.name ?? '';
      const trouble = await store.forget(id);
      await list();
      set({ said: trouble ? { id: 'trouble', trouble } : { id: 'forgotten', name } });
    },
    /** Keeps every plan of a file that is whole and not here yet; nothing that is here is touched. A single one is laid open. */
    readFile: async (text: string): Promise<void> => {
      const file = readPlansFile(text);
      await saving.flush();
      const entries = (await list()).filter(({ deleted }) => deleted === null);
      const { kept, here, loose } = await keepAll(store, entries, file.plans);
      await list();
      const said: Said = { id: 'read', file, fresh: [...kept.map(({ plan }) => nameOf(plan)), ...loose.map(nameOf)], here: here.map(({ plan }) => nameOf(plan)), loose: loose.length };
      const [only] = [...kept, ...here, ...loose.map((plan) => ({ plan, id: null, rev: 0 }))];
      if (only && file.plans.length === 1) await show(only.plan, only.id, only.rev, said);
      set({ said, loose: file.plans.length === 1 ? state.loose : [...state.loose, ...loose] });
    },
    /** Another tab has changed what is kept: the list follows, and the open plan too, unless it is being changed here. */
    others: async (): Promise<void> => {
      const entry = (await list()).find(({ id }) => id === state.openId);
      if (!entry?.plan || saving.isWaiting() || same(entry.plan, now())) return;
      await show(entry.plan, entry.id, entry.rev, { id: 'tookOther' });
    },
    stop: saving.stop,
  };
};
