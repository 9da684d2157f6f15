/**
 * What was taken off each tree the reader keeps: under the tree's name the stem's diameter and each visit's share of the
 * live crown. On the device only, never sent anywhere. Damaged entries are left out when read.
 */
import { read, write } from './store.ts';

/** `share` in percent of the live crown; `day` as year-month-day. */
export type Visit = { readonly day: string; readonly share: number };
export type Tree = { readonly name: string; /** mm */ readonly stem: number; readonly visits: readonly Visit[] };

export const treesName = 'standing-clear.trees';
const version = 1;
export const longestName = 60;
const mostTrees = 200;

const isVisit = (value: unknown): value is Visit => {
  const { day, share } = (value ?? {}) as Partial<Visit>;
  return typeof day === 'string' && /^\d{4}-\d\d-\d\d$/.test(day) && !Number.isNaN(Date.parse(day)) && typeof share === 'number' && share > 0 && share <= 100;
};
const isTree = (value: unknown): value is Tree => {
  const { name, stem, visits } = (value ?? {}) as Partial<Tree>;
  return typeof name === 'string' && name.length > 0 && name.length <= longestName && typeof stem === 'number' && stem > 0 && Number.isFinite(stem) && Array.isArray(visits);
};

/** Every tree kept, by name. */
export const trees = (): Tree[] => {
  const kept = read(treesName)['trees'];
  return (Array.isArray(kept) ? kept.filter(isTree) : [])
    .map(({ name, stem, visits }) => ({ name, stem, visits: visits.filter(isVisit) }))
    .slice(0, mostTrees)
    .sort((a, b) => a.name.localeCompare(b.name));
};

const keep = (all: readonly Tree[]): boolean => write(treesName, { ...read(treesName), trees: all, v: version });

/** Adds a visit to the tree of that name, a new one if need be; the stem as it was measured last. False where the browser keeps nothing. */
export const addVisit = (name: string, stem: number, visit: Visit): boolean => {
  const all = trees();
  const before = all.find((tree) => tree.name === name);
  if (!before && all.length >= mostTrees) return false;
  return keep([...all.filter((tree) => tree !== before), { name, stem, visits: [...(before?.visits ?? []), visit] }]);
};

export const forget = (name: string): boolean => keep(trees().filter((tree) => tree.name !== name));

const days = 24 * 60 * 60 * 1000;
/** What the visits of the year up to `today` took together, in percent. */
export const takenInYear = (tree: Tree, today: string): number =>
  tree.visits.filter(({ day }) => Date.parse(today) - Date.parse(day) < 365 * days).reduce((sum, { share }) => sum + share, 0);
