/**
 * The edition of the rule set's figures that a plan was made by (`stampOf`): it is kept and travels with the plan, so that
 * a change since is said. Without a rule set there is none, nor in plans that were kept before editions were.
 */
import { ruleSet, stampOf } from '../facts/rule-sets.ts';
import type { Plan } from './facts.ts';

/** The plan by its rule set as the figures are now. The edition stands last in a plan. */
export const byRuleOfNow = ({ ruleEdition: _, ...plan }: Plan): Plan => {
  const set = ruleSet(plan.choices.ruleSet);
  return set ? { ...plan, ruleEdition: stampOf(set) } : plan;
};

/** The plan with an edition to go by: its own where it has one. */
export const withEdition = (plan: Plan): Plan => (plan.ruleEdition === undefined ? byRuleOfNow(plan) : plan);

/** Whether the figures of its rule set have changed since the plan was made. */
export const ruleChanged = (plan: Plan): boolean => {
  const set = ruleSet(plan.choices.ruleSet);
  return set !== undefined && plan.ruleEdition !== undefined && plan.ruleEdition !== stampOf(set);
};
