/** The plans that are kept, as the list shows them: read, named, found by words. */
import { plans as words } from '#content/interface.json';
import type { Plan } from '#core/plan/facts.ts';
import { readAnyPlan } from '#core/plan/file.ts';
import type { PlanProblem } from '#core/plan/problems.ts';
import type { KeptPlan } from '#device/plans/store.ts';

/** `plan` is null where what is kept cannot be read: then `problems` say why, and `raw` is what is kept. */
export type Entry = {
  readonly id: string;
  readonly rev: number;
  readonly saved: number;
  readonly deleted: number | null;
  readonly raw: unknown;
  readonly name: string;
  readonly plan: Plan | null;
  readonly problems: readonly PlanProblem[];
};

export const nameOf = (plan: Plan): string => plan.name.trim() || words.unnamed;

export const entryOf = ({ id, rev, saved, deleted, plan: raw }: KeptPlan): Entry => {
  const found = readAnyPlan(raw);
  const base = { id, rev, saved, deleted, raw };
  return found.kind === 'plan' ? { ...base, name: nameOf(found.plan), plan: found.plan, problems: [] } : { ...base, name: words.unreadable, plan: null, problems: found.problems };
};

/** Plans that were read have their parts in one order. */
export const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** Small letters without accents, so that `Muhlen` finds `Mühlen`. */
const plain = (text: string): string => text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();

/** Those in which every word of `text` begins somewhere: in the name, a text of the site, the name of a limb. */
export const found = (entries: readonly Entry[], text: string): readonly Entry[] => {
  const wanted = plain(text).split(/\s+/).filter(Boolean);
  return entries.filter(({ name, plan }) => {
    const within = plain([name, ...(plan ? [...Object.values(plan.site), ...plan.limbs.map((limb) => limb.name)] : [])].join(' '));
    return wanted.every((word) => within.includes(word));
  });
};

/** The name of a copy: the first number that no other plan bears. */
export const copyName = (name: string, taken: readonly string[]): string => {
  const [, stem = name] = /^(.*?) \(\d+\)$/.exec(name) ?? [];
  for (let n = 2; ; n++) {
    const copy = words.copyName.replace('{n}', String(n)).replace('{name}', () => stem);
    if (!taken.includes(copy)) return copy;
  }
};

/** The name of the file that plans are written to: letters, figures and hyphens alone. `day`: year-month-day. */
export const fileName = (plans: readonly Plan[], day: string): string => {
  const [only] = plans;
  const slug = plans.length === 1 && only ? plain(only.name).replace(/[^a-z0-9]+/g, '-').replace(/^-+|-+$/g, '').slice(0, 40) : 'plans';
  return `standing-clear-${slug || 'plan'}-${day}.json`;
};
