/** The edition of the rule set's figures that a plan was made by: taken at the first change, kept, and said where it is another now. */
import { describe, expect, it } from 'vitest';
import { ruleSet, stampOf } from '#core/facts/rule-sets.ts';
import { byRuleOfNow, ruleChanged, withEdition } from '#core/plan/edition.ts';
import type { Plan } from '#core/plan/facts.ts';
import { findingsOf } from '#core/plan/findings.ts';
import { workPlan } from '#core/plan/work.ts';
import { readPlansFile, writePlansFile } from '#core/plan/file.ts';
import { readPlan, shapeProblems } from '#core/plan/problems.ts';
import { changed, invented } from './invented.ts';

const now = stampOf(ruleSet('us-1910-333')!);
const old: Plan = { ...invented, ruleEdition: '00000000' };
const withRule = (ruleSet: string, plan: Plan = invented): Plan => ({ ...plan, choices: { ...plan.choices, ruleSet } });

describe('the edition of the rule set that a plan was made by', () => {
  it('is that of now, where the plan has none; its own stays', () => {
    expect(withEdition(invented)).toEqual({ ...invented, ruleEdition: now });
    expect(withEdition(old)).toBe(old);
  });
  it('is none without a rule set, or with one that this handbook does not have', () => {
    for (const rule of ['none', 'gone']) {
      expect(withEdition(withRule(rule))).toEqual(withRule(rule));
      expect('ruleEdition' in byRuleOfNow(withRule(rule, old))).toBe(false);
      expect(ruleChanged(withRule(rule, old))).toBe(false);
    }
  });
  it('another than that of now: changed; none at all: nothing can be told; taken anew: no longer', () => {
    expect([old, invented, withEdition(invented), byRuleOfNow(old)].map(ruleChanged)).toEqual([true, false, false, false]);
    expect(ruleChanged({ ...invented, ruleEdition: stampOf(ruleSet('au-sa')!) })).toBe(true);
  });
  it('is among the findings, and names the rule; not where no line is near', () => {
    const said = (plan: Plan) => findingsOf(plan, workPlan(plan)).filter(({ id }) => id === 'ruleChanged');
    expect(said(old)).toEqual([{ level: 'caution', part: 'plan', id: 'ruleChanged', limb: null, values: {}, guess: false, mends: ['ruleSet'] }]);
    expect(said(byRuleOfNow(old))).toEqual([]);
    expect(said({ ...old, choices: { ...old.choices, wires: 'no' } })).toEqual([]);
  });
  it('stands last, wherever it comes from, so that the same plan is written the same', () => {
    const ways = [withEdition(invented), byRuleOfNow(old), readPlansFile(writePlansFile([invented], '')).plans[0]];
    expect(new Set(ways.map((plan) => JSON.stringify(plan))).size).toBe(1);
  });
  it('goes with a file as it is, and a plan from before is none the worse', () => {
    expect(readPlansFile(writePlansFile([old], '')).plans).toEqual([old]);
    expect(readPlan(structuredClone(invented))).toEqual({ kind: 'plan', plan: invented });
  });
  it('that is no text is said at its place', () => {
    expect(shapeProblems(changed((p) => (p.ruleEdition = 7)))).toEqual([{ at: 'ruleEdition', problem: 'notText', values: {} }]);
  });
});
