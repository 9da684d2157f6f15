/** A plan as a link: read as it was written, for ever; one that was cut, changed or made to do harm never throws. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { withEdition } from '#core/plan/edition.ts';
import { newPlan, type Plan } from '#core/plan/facts.ts';
import { longestLink, readPlanLink, type WrittenLink, writePlanLink } from '#core/plan/link.ts';
import { ruleSet, stampOf } from '#core/facts/rule-sets.ts';
import { shapeProblems } from '#core/plan/problems.ts';
import { anyPlan } from './arbitrary.ts';
import { invented } from './invented.ts';

const fragmentOf = (written: WrittenLink): string => {
  if (written.kind === 'tooLong') throw new Error(`${written.length} signs`);
  return written.fragment;
};
/** The check at a link's end, so that what stands before it is judged. From its published definition (FNV-1a, 32 bit). */
const withCheck = (body: string): string => {
  let hash = 2166136261n;
  for (const unit of body) hash = ((hash ^ BigInt(unit.charCodeAt(0))) * 16777619n) & 0xffffffffn;
  return `plan=${body}~${hash.toString(36)}`;
};

describe('a link of a plan', () => {
  it('any plan that fits comes back as it was, and nothing in it but signs that an address may hold', () => {
    const fitted = { yes: 0, no: 0 };
    fc.assert(fc.property(anyPlan(15, 2), (plan) => {
      const written = writePlanLink(plan);
      fitted[written.kind === 'link' ? 'yes' : 'no'] += 1;
      if (written.kind === 'tooLong') {
        expect(written.length).toBeGreaterThan(longestLink);
        return;
      }
      expect(written.fragment).toMatch(/^plan=[A-Za-z0-9%_.~*+-]+$/);
      expect(written.fragment.length).toBeLessThanOrEqual(longestLink);
      for (const mark of ['', '#']) expect(readPlanLink(mark + written.fragment)).toEqual({ kind: 'plan', plan: withEdition(plan) });
    }), { seed: 91, numRuns: 240, endOnFailure: true });
    expect(fitted.yes).toBeGreaterThan(30);
    expect(fitted.no).toBeGreaterThan(5);
  });
  it('one of three limbs fits with room to spare; one of twelve with long notes does not, and says by how much', () => {
    expect(fragmentOf(writePlanLink(invented)).length).toBeLessThan(longestLink / 2);
    const long = { ...invented, limbs: Array(12).fill(invented.limbs[0]), site: { ...invented.site, notes: 'mind the pond '.repeat(20), crew: 'three of us '.repeat(20), tree: 'lime '.repeat(50) } } as Plan;
    expect(writePlanLink(long)).toMatchObject({ kind: 'tooLong', most: longestLink });
  });
  it('half of a pair of signs, as a cut text may end in, becomes a mark', () => {
    const read = readPlanLink(fragmentOf(writePlanLink({ ...invented, name: 'a\ud83d' })));
    expect(read.kind === 'plan' && read.plan.name).toBe('a\ufffd');
  });

  // Links that are out in the world. They are never edited: what they open as stands beside them.
  it('of version 1 opens for ever', () => {
    const old = 'plan=1~d~Invented%3A_the_lime_in_Quince_Row~12_Quince_Row%2C_by_the_pump~~~Common_lime%2C_left_of_the_gate~the_one_with_the_whistle%2C_at_the_gate~one_whistle%3A_stop._Two%3A_go_on._Arm_up%3A_all_clear~one_on_the_saw%2C_one_watching%2C_one_on_the_pavement~Path_closed_from_the_pump_to_the_gate~yyyyyyyy~1.1m~2.4m~4.2m~250m~3m~0~4~11m~m~9m~14m~1~0.5~2~0.2~1~1~20~15~50~25~40~common-lime~ground~yes~us-1910-333~threePhase~operator~0~200~low_limb_over_the_path~2.8m~1.8m~60~15~0.8~0.4~free~none~whole~free~liveWhole~110~200~155~245~long_limb_over_the_drive~3.2m~3m~80~0~2.4~0.5~free~none~whole~mayHold~liveWhole~190~100~55~145~dead_limb_over_the_wall~3.4m~1.5m~50~10~0.5~0.3~free~none~pole~free~deadWet~270~180~135~225~1gdkzup';
    const read = readPlanLink(old);
    expect(read.kind).toBe('plan');
    const { plan } = read as { plan: Plan };
    expect(plan.name).toBe('Invented: the lime in Quince Row');
    expect(plan.facts.lineHeight).toEqual({ value: 9, got: 'measured' });
    expect(plan.facts.lineOffset).toEqual({ value: 14, got: 'measured' });
    expect(plan.facts.ownDistance).toEqual({ value: null, got: 'measured' });
    expect(plan.choices.ruleSet).toBe('us-1910-333');
    expect(plan.bearings).toEqual({ line: 0, downhill: 200 });
    expect(plan.limbs.map((limb) => [limb.facts.cutHeight.value, limb.facts.limbLength.value, limb.choices.condition, limb.bearings.points])).toEqual([
      [2.8, 1.8, 'liveWhole', 110], [3.2, 3, 'liveWhole', 190], [3.4, 1.5, 'deadWet', 270],
    ]);
    // From before the saw was: nothing is known of it.
    expect([plan.v, plan.site.saw, plan.facts.mass, plan.facts.gripSpacing.value]).toEqual([2, '', { value: null, got: 'judged' }, 0.8]);
    expect(shapeProblems(plan)).toEqual([]);
    // From before editions were: there is none, and so nothing is said to have changed.
    expect('ruleEdition' in plan).toBe(false);
  });
  it('of version 2 opens for ever', () => {
    const old = 'plan=2~d~Invented%3A_the_lime_in_Quince_Row~Quince_Row%2C_by_the_pump~~~Common_lime%2C_left_of_the_gate~the_one_with_the_whistle%2C_at_the_gate~one_whistle%3A_stop._Two%3A_go_on._Arm_up%3A_all_clear~one_on_the_saw%2C_one_watching%2C_one_on_the_pavement~Path_closed_from_the_pump_to_the_gate~the_one_with_the_green_tape~yyyyyyyy~1.1m~2.4m~4.2m~250m~3m~0~4~11m~m~9m~14m~1~0.5~2~0.2~1~1~20~15~50~25~40~6.4m~1.5m~0.8~common-lime~ground~yes~us-1910-333.7e2f2a54~threePhase~operator~0~195~low_limb_over_the_path~2.8m~1.8m~60~15~0.8~0.4~free~none~whole~free~liveWhole~105~195~150~240~long_limb_over_the_drive~3.9m~3m~80~0~3.2~0.5~free~none~whole~mayHold~liveWhole~180~90~45~135~dead_limb_over_the_wall~3.4m~1.5m~50~10~0.5~0.3~free~none~pole~free~deadWet~270~180~135~225~1jy7clt';
    const { plan } = readPlanLink(old) as { plan: Plan };
    expect(plan.site).toMatchObject({ notes: 'Path closed from the pump to the gate', saw: 'the one with the green tape' });
    expect([plan.facts.strength.value, plan.facts.mass, plan.facts.balance, plan.facts.gripSpacing]).toEqual([
      40, { value: 6.4, got: 'measured' }, { value: 1.5, got: 'measured' }, { value: 0.8, got: 'judged' },
    ]);
    expect(plan.limbs.map(({ name, bearings }) => [name, bearings.worker])).toEqual([['low limb over the path', 195], ['long limb over the drive', 90], ['dead limb over the wall', 180]]);
    expect(plan.ruleEdition).toMatch(/^[\da-f]{8}$/);
  });
  it('names the edition of the rule behind it; another edition opens, and is kept until the reader has seen it', () => {
    const link = fragmentOf(writePlanLink(invented));
    const edition = stampOf(ruleSet('us-1910-333')!);
    expect(link).toContain(`~us-1910-333.${edition}~`);
    const body = link.slice(5, link.lastIndexOf('~'));
    const read = readPlanLink(withCheck(body.replace(edition, '00000000')));
    const { plan } = read as { plan: Plan };
    expect(plan).toEqual({ ...invented, ruleEdition: '00000000' });
    expect(fragmentOf(writePlanLink(plan))).toContain('~us-1910-333.00000000~');
  });

  it('no plan in the address', () => {
    for (const fragment of ['', '#', '#predict', '#plans=1', '?plan=1']) expect(readPlanLink(fragment)).toEqual({ kind: 'none' });
  });
  it('cut or changed on its way: said, never read as other figures', () => {
    const whole = fragmentOf(writePlanLink(newPlan('Elm', 'limb 1')));
    for (let at = 6; at < whole.length; at++) expect(readPlanLink(whole.slice(0, at)).kind).toBe('bad');
    for (let at = 6; at < whole.length - 8; at++) {
      const digit = whole[at] as string;
      if (/\d/.test(digit)) expect(readPlanLink(whole.slice(0, at) + ((Number(digit) + 1) % 10) + whole.slice(at + 1))).toEqual({ kind: 'bad', problem: at === 5 ? 'newerLink' : 'cutLink' });
    }
  });
  it.each([
    ['of a later edition', withCheck('3~x'), 'newerLink'],
    ['of none', withCheck('0~x'), 'badLink'],
    ['no version', withCheck('~x'), 'badLink'],
    ['empty', 'plan=', 'cutLink'],
    ['too few parts', withCheck('1~~Elm'), 'badLink'],
    ['badly escaped', withCheck('1~~%E0%A4'), 'badLink'],
    ['endless', `plan=1~${'a'.repeat(200_000)}`, 'badLink'],
    ['thousands of limbs', withCheck(`1~${'~'.repeat(50_000)}`), 'badLink'],
  ])('%s', (_, fragment, problem) => {
    expect(readPlanLink(fragment)).toEqual({ kind: 'bad', problem });
  });
  it('any part put in place of another: a plan of the right shape, or said to be none; nothing is run, nothing throws', () => {
    const parts = fragmentOf(writePlanLink(invented)).slice(5).split('~').slice(0, -1);
    const bits = fc.oneof(fc.constantFrom('', 'm', '*', '-', '1e999', '-0', '1m*%', '%', '%00', '_', '__proto__', 'yn', 'constructor', '<b>', 'x'.repeat(301)), fc.string({ maxLength: 6 }).map((s) => s.replaceAll('~', '')));
    const seen = { plan: 0, bad: 0 };
    fc.assert(fc.property(fc.array(fc.tuple(fc.nat(parts.length - 1), bits), { minLength: 1, maxLength: 3 }), (changes) => {
      const mine = [...parts];
      for (const [at, bit] of changes) mine[at] = bit;
      const read = readPlanLink(withCheck(mine.join('~')));
      if (read.kind === 'plan') expect(shapeProblems(read.plan)).toEqual([]);
      seen[read.kind as 'plan' | 'bad'] += 1;
    }), { seed: 92, numRuns: 600, endOnFailure: true });
    expect(Math.min(seen.plan, seen.bad)).toBeGreaterThan(100);
    expect(({} as { v?: unknown }).v).toBeUndefined();
  });
  it('any text at all never throws', () => {
    fc.assert(fc.property(fc.oneof(fc.string({ unit: 'grapheme', maxLength: 20 }), fc.string().map((s) => `plan=${s}`), fc.string().map((s) => withCheck(`1~${s}`))), (text) => {
      expect(['none', 'bad', 'plan']).toContain(readPlanLink(text).kind);
    }), { seed: 93, numRuns: 500, endOnFailure: true });
  });
});
