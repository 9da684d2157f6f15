/** Which plan this tab has open, so that a reload, or the way back from a calculator, finds it; and which was open last on this device. */
import type { Plan } from '#core/plan/facts.ts';
import { read, write } from '#device/store.ts';

/** `id` of one that is kept; `plan` itself, where it is only looked at. */
export type OpenNow = { readonly id: string } | { readonly plan: unknown } | null;

const name = 'standing-clear.plan-open';
const version = 1;
const isId = (id: unknown): id is string => typeof id === 'string' && /^[a-z0-9]{1,40}$/.test(id);

/** Null where this tab has had no plan open. */
const inSession = (): { readonly [key: string]: unknown } | null => {
  try {
    const found: unknown = JSON.parse(sessionStorage.getItem(name) ?? 'null');
    return typeof found === 'object' && found !== null ? (found as { readonly [key: string]: unknown }) : null;
  } catch {
    return null;
  }
};

export const openBefore = (): OpenNow => {
  const here = inSession();
  if (here && isId(here['id'])) return { id: here['id'] };
  if (here) return here['plan'] === undefined ? null : { plan: here['plan'] };
  const { id } = read(name);
  return isId(id) ? { id } : null;
};

/** Notes what is open; a new plan with nothing in it is nothing to come back to. */
export const noteOpen = (id: string | null, plan: Plan | null): void => {
  try {
    sessionStorage.setItem(name, JSON.stringify(id !== null ? { id } : plan ? { plan } : {}));
  } catch {
    // Storage refused: the next visit begins with a new plan.
  }
  if (id !== null) write(name, { id, v: version });
};
