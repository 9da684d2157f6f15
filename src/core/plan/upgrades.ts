/** Plans of older editions, brought up to this one before they are read. */
import { planVersion } from './facts.ts';

export type Upgrade = (old: { readonly [key: string]: unknown }) => { readonly [key: string]: unknown };

/** One small pure function for each version left behind: `upgrades[0]` takes a plan of version 1 to 2. It may meet damaged data. */
export const upgrades: readonly Upgrade[] = [];

/** The same of this version, where it is of an older one; anything else as it is, for `readPlan` to judge. */
export const upgraded = (data: unknown, steps: readonly Upgrade[] = upgrades, to: number = planVersion): unknown => {
  const from = typeof data === 'object' && data !== null && !Array.isArray(data) ? (data as { v?: unknown }).v : undefined;
  if (typeof from !== 'number' || !Number.isSafeInteger(from) || from < 1 || from >= to) return data;
  return steps.slice(from - 1, to - 1).reduce((plan, step, i) => ({ ...step(plan), v: from + i + 1 }), data as { readonly [key: string]: unknown });
};
