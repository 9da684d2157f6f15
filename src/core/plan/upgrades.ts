/** Plans of older editions, brought up to this one before they are read. */
import { planVersion } from './facts.ts';

type Old = { readonly [key: string]: unknown };
export type Upgrade = (old: Old) => Old;

/** With what a part lacks; a part that is none stays as it is, for `readPlan` to judge. */
const added = (part: unknown, more: Old): unknown => (typeof part === 'object' && part !== null && !Array.isArray(part) ? { ...part, ...more } : part);

/** The saw: its name, what it weighs with the pole, where that balances, how far apart it is held. Nothing is known of any yet. */
const withSaw: Upgrade = (old) => ({
  ...old,
  site: added(old['site'], { saw: '' }),
  facts: added(old['facts'], { mass: { value: null, got: 'judged' }, balance: { value: null, got: 'judged' }, gripSpacing: { value: 0.8, got: 'judged' } }),
});

/** One small pure function for each version left behind: `upgrades[0]` takes a plan of version 1 to 2. It may meet damaged data. */
export const upgrades: readonly Upgrade[] = [withSaw];

/** The same of this version, where it is of an older one; anything else as it is, for `readPlan` to judge. */
export const upgraded = (data: unknown, steps: readonly Upgrade[] = upgrades, to: number = planVersion): unknown => {
  const from = typeof data === 'object' && data !== null && !Array.isArray(data) ? (data as { v?: unknown }).v : undefined;
  if (typeof from !== 'number' || !Number.isSafeInteger(from) || from < 1 || from >= to) return data;
  return steps.slice(from - 1, to - 1).reduce((plan, step, i) => ({ ...step(plan), v: from + i + 1 }), data as { readonly [key: string]: unknown });
};
