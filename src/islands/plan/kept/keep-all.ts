/** Keeps the plans of a file beside those that are here: none is written over, none comes twice. */
import type { Plan } from '#core/plan/facts.ts';
import { newId, type PlanStore } from '#device/plans/store.ts';
import { withEdition } from '#core/plan/edition.ts';
import { type Entry, same } from './entries.ts';

export type Placed = { readonly plan: Plan; readonly id: string; readonly rev: number };

/** `here`: the same was kept already. `loose`: the browser refused to keep it. */
export const keepAll = async (store: PlanStore, entries: readonly Entry[], plans: readonly Plan[]): Promise<{ kept: Placed[]; here: Placed[]; loose: Plan[] }> => {
  const kept: Placed[] = [];
  const here: Placed[] = [];
  const loose: Plan[] = [];
  for (const plan of plans) {
    // One that is kept from before editions were has one in its file.
    const known = entries.find((entry) => entry.plan && same(withEdition(entry.plan), withEdition(plan))) ?? kept.find((one) => same(one.plan, plan));
    if (known) {
      here.push({ plan, id: known.id, rev: known.rev });
      continue;
    }
    const saved = await store.save(newId(), 0, plan);
    if (saved.kind === 'trouble') loose.push(plan);
    else kept.push({ plan, id: saved.kept.id, rev: saved.kept.rev });
  }
  return { kept, here, loose };
};
