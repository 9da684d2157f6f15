/** The invented plan, and the same with something changed. */
import demo from '#content/plan/demo.json';
import type { Plan } from '#core/plan/facts.ts';

export const invented = demo as unknown as Plan;

/** `change` may set anything, also what the type does not allow. */
export const changed = (change: (plan: any) => void): Plan => {
  const next = structuredClone(demo);
  change(next);
  return next as unknown as Plan;
};
