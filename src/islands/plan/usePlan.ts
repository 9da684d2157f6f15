/**
 * The state of the plan on its page: the plan as it stands, what is wrong with it, and what was worked out last. Figures are
 * worked out when the hand rests; the picture follows at once, from the bearings alone.
 */
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { worstFirst } from '#core/kit/outcome.ts';
import type { UnitSystem } from '#core/kit/units.ts';
import { byRuleOfNow, withEdition } from '#core/plan/edition.ts';
import { type Fact, newLimb, newPlan, type Plan, type PlanLimb } from '#core/plan/facts.ts';
import type { Memo } from '#core/plan/feed.ts';
import { findingsOf, gateFindings } from '#core/plan/findings.ts';
import { mostLimbs } from '#core/plan/names.ts';
import { type PlanProblem, problemsOf } from '#core/plan/problems.ts';
import type { WayName } from '#core/plan/ways.ts';
import { workPlan, type PlanWork } from '#core/plan/work.ts';
import { onChange, settings } from '#device/settings.ts';
import { useRested } from '../kit/Kept.tsx';
import type { PlanWords } from './words.ts';

/** No problem is always the same one, so that what hangs on it is not drawn again. */
const none: readonly PlanProblem[] = [];

export type Worked = { readonly plan: Plan; readonly work: PlanWork };
export type PlanState = ReturnType<typeof usePlan>;

export const usePlan = (words: PlanWords) => {
  const [plan, setPlan] = useState<Plan>(() => newPlan(words.newName, words.newLimb));
  const [chosen, setChosen] = useState(0);
  const [system, setSystem] = useState<UnitSystem>('metric');
  const [good, setGood] = useState<Worked | null>(null);
  /** What stood before a limb was taken out. */
  const [before, setBefore] = useState<{ plan: Plan; name: string } | null>(null);
  const memo = useRef<Memo>(new Map());

  useEffect(() => {
    setSystem(settings().units);
    return onChange(({ units }) => setSystem(units));
  }, []);

  const problems = useMemo(() => {
    const found = problemsOf(plan);
    return found.length === 0 ? none : found;
  }, [plan]);
  const work = (): void => {
    if (problems.length === 0 && good?.plan !== plan) setGood({ plan, work: workPlan(plan, memo.current) });
  };
  // The first at once.
  useLayoutEffect(() => {
    if (!good) work();
  }, [plan, good === null]);
  useRested(work, [plan]);

  const limb = Math.min(chosen, plan.limbs.length - 1);
  /** A change of the reader's: from then on the plan has the edition of its rule set. */
  const edit = (next: (now: Plan) => Plan): void => setPlan((now) => withEdition(next(now)));
  const toLimb = (next: (limb: PlanLimb) => PlanLimb, at = limb): void =>
    edit((now) => ({ ...now, limbs: now.limbs.map((one, i) => (i === at ? next(one) : one)) }));
  const findings = useMemo(() => (good ? findingsOf(good.plan, good.work, memo.current).filter(({ part, id }) => part !== 'plan' || !id.startsWith('gate')) : []), [good]);

  return {
    plan,
    /** Another plan in its place, as it was kept or read. */
    open: (next: Plan): void => {
      setPlan(next);
      setChosen(0);
      setGood(null);
      setBefore(null);
    },
    limb,
    choose: setChosen,
    system,
    problems,
    good,
    /** Whether the figures are those of the plan as it stands. */
    current: problems.length === 0 && good?.plan === plan,
    /** The worst first; the gate as it stands, the figures as they were worked out last. */
    findings: [...gateFindings(plan), ...findings].sort(worstFirst),
    change: (some: Partial<Plan>): void => edit((now) => ({ ...now, ...some })),
    setFact: (name: string, fact: Fact): void => edit((now) => ({ ...now, facts: { ...now.facts, [name]: fact } })),
    setLimbFact: (name: string, fact: Fact): void => toLimb((one) => ({ ...one, facts: { ...one.facts, [name]: fact } })),
    setChoice: (name: string, option: string): void => edit((now) => {
      const next = { ...now, choices: { ...now.choices, [name]: option } };
      return name === 'ruleSet' ? byRuleOfNow(next) : next;
    }),
    /** The reader has seen that the figures of the rule have changed. */
    takeRuleOfNow: (): void => setPlan(byRuleOfNow),
    setLimbChoice: (name: string, option: string): void => toLimb((one) => ({ ...one, choices: { ...one.choices, [name]: option } })),
    setBearing: (name: string, bearing: number): void => edit((now) => ({ ...now, bearings: { ...now.bearings, [name]: bearing } })),
    setLimbBearing: (name: string, bearing: number): void => toLimb((one) => ({ ...one, bearings: { ...one.bearings, [name]: bearing } })),
    /** A way out that keeps clear, of whichever limb. */
    takeWay: (at: number, name: WayName, bearing: number): void => toLimb((one) => ({ ...one, bearings: { ...one.bearings, [name]: bearing } }), at),
    nameLimb: (name: string): void => toLimb((one) => ({ ...one, name })),
    addLimb: (): void => {
      if (plan.limbs.length >= mostLimbs) return;
      edit((now) => ({ ...now, limbs: [...now.limbs, newLimb(words.newLimb, 90)] }));
      setChosen(plan.limbs.length);
    },
    removeLimb: (): void => {
      setBefore({ plan, name: plan.limbs[limb]!.name });
      edit((now) => ({ ...now, limbs: now.limbs.filter((_, i) => i !== limb) }));
    },
    /** Earlier in the order, or later. */
    moveLimb: (by: -1 | 1): void => {
      const to = limb + by;
      if (to < 0 || to >= plan.limbs.length) return;
      edit((now) => {
        const limbs = [...now.limbs];
        [limbs[limb], limbs[to]] = [limbs[to]!, limbs[limb]!];
        return { ...now, limbs };
      });
      setChosen(to);
    },
    before,
    bringBack: (): void => {
      if (before) setPlan(before.plan);
      setBefore(null);
    },
  };
};
