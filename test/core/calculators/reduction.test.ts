/** Is that lateral big enough: by hand. Common practice and the published rule agree on a third. */
import { describe, expect, it } from 'vitest';
import { reduction } from '#core/calculators/reduction.ts';
import type { GotSet } from '#core/kit/calculator.ts';
import { readLink } from '#core/kit/link.ts';
import { type Answer, evaluate, type Inputs, type Outcome, type Quantity } from '#core/kit/outcome.ts';

const example: Inputs = { parentDiameter: 90, lateralDiameter: 30, lateralAngle: 45, ridgeAngle: null, rule: 'third', furtherLimbs: null, furtherLaterals: null };
const run = (change: Inputs, got: GotSet = 'exact'): Outcome => evaluate(reduction, { ...example, ...change }, got);
const ratio = (change: Inputs, got: GotSet): Quantity => (run(change, got) as Answer).outputs['ratio'] as Quantity;
const figure = (change: Inputs, got: GotSet, name: string): Quantity => (run(change, got) as Answer).outputs[name] as Quantity;
const ids = (change: Inputs, got: GotSet = 'exact'): string[] => (run(change, got) as Answer).findings.map((f) => f.id).filter((id) => id !== 'angleRules');

describe('the rule', () => {
  it('a lateral of just a third is enough; a hair less is a caution, never a stop', () => {
    for (const parent of [30, 60, 90, 120, 150, 270]) expect(ids({ parentDiameter: parent, lateralDiameter: parent / 3 })).toEqual([]);
    expect((run({ lateralDiameter: 29.99 }) as Answer).findings).toMatchObject([{ id: 'lateralTooSmall', level: 'caution', guess: false }, { id: 'angleRules' }]);
  });
  it('where half is asked for', () => {
    expect(ids({ rule: 'half', lateralDiameter: 45 })).toEqual([]);
    expect(ids({ rule: 'half', lateralDiameter: 44 })).toEqual(['lateralTooSmall']);
  });
  it('a lateral larger than its parent is a problem', () => {
    expect(run({ lateralDiameter: 91 })).toEqual({ kind: 'problems', problems: [{ input: 'lateralDiameter', problem: 'lateralLarger', values: { parentDiameter: 90 } }] });
    expect(run({ lateralDiameter: 90 }).kind).toBe('answer');
  });
});

describe('one eye judged both', () => {
  it('what it adds to both the ratio does not feel', () => {
    // Own errors of a tenth each: 27 ÷ 99 = 0.2727, 33 ÷ 81 = 0.4074.
    const { low, high } = ratio({}, 'judged');
    expect(low).toBeCloseTo(27 / 99, 12);
    expect(high).toBeCloseTo(33 / 81, 12);
  });
  it('a diameter does: a tenth of its own on a fifth of the eye', () => {
    // The parent may be 90 × 1.1 × 1.2 = 118.8; a third is 39.6.
    expect(figure({}, 'judged', 'smallestLateral').planOn).toBeCloseTo(39.6, 9);
    // The lateral may be 30 × 0.9 × 0.8 = 21.6; three times is 64.8.
    expect(figure({}, 'judged', 'largestParent').planOn).toBeCloseTo(64.8, 9);
  });
  it('measured: 2 mm each and no eye', () => {
    expect(ratio({}, 'measured').low).toBeCloseTo(28 / 92, 12);
    expect(figure({}, 'measured', 'smallestLateral').planOn).toBeCloseTo(92 / 3, 9);
  });
  it('one measured, one judged: the eye no longer cancels', () => {
    // Parent by eye to 118.8, lateral measured down to 28: 28 ÷ 118.8.
    expect(ratio({}, { lateralDiameter: 'measured' }).low).toBeCloseTo(28 / 118.8, 12);
    expect(ratio({}, { lateralDiameter: 'exact' }).low).toBeCloseTo(30 / 118.8, 12);
    expect(ids({ lateralDiameter: 34 }, { lateralDiameter: 'exact' })).toEqual(['lateralTooSmall']);
  });
});

describe('one eye judged further laterals and their limbs', () => {
  const further = (got: GotSet): Quantity => figure({ furtherLimbs: [90], furtherLaterals: [30] }, got, 'ratioSecond');
  it('the same: it cancels while both were got alike, and no longer when one was measured', () => {
    expect(further('judged').low).toBeCloseTo(27 / 99, 12);
    expect(further({ furtherLaterals: 'measured' }).low).toBeCloseTo(28 / 118.8, 12);
  });
});

describe('the wound', () => {
  // Round section of 90 mm: 6,361.7 mm²
  const round = 6361.7;
  it('halfway between the ridge and square to the limb leads; by hand', () => {
    for (const [ridgeAngle, cut] of [[30, 60], [60, 75], [80, 85]] as const) expect(figure({ ridgeAngle }, 'exact', 'cutAngle').value).toBe(cut);
    // Sine of 60°: 0.8660
    expect(figure({ ridgeAngle: 30 }, 'exact', 'cutArea').value / round).toBeCloseTo(1 / 0.866, 3);
  });
  it('a ridge nobody could see is taken halfway between limb and lateral', () => {
    expect(figure({ lateralAngle: 60 }, 'exact', 'cutAngle').value).toBe(60);
    expect(figure({ lateralAngle: 90 }, 'exact', 'cutAngle').value).toBe(67.5);
  });
  it('the other rules stand beside it: along the ridge, along the lateral, at 45° by the root of two', () => {
    expect(figure({ lateralAngle: 90 }, 'exact', 'alongArea').value).toBeCloseTo(round, 1);
    expect(figure({ lateralAngle: 45 }, 'exact', 'alongArea').value / round).toBeCloseTo(1.4142, 4);
    expect(figure({ ridgeAngle: 30 }, 'exact', 'ridgeArea').value / round).toBeCloseTo(2, 4);
    expect((run({}) as Answer).findings.at(-1)).toMatchObject({ id: 'angleRules', level: 'note' });
  });
  it('a link without a ridge, from before it was asked for, opens as it did', () => {
    const link = readLink(reduction, 'v=1&got=judged&parentDiameter=90&lateralDiameter=30&lateralAngle=45&rule=third&furtherLimbs=&furtherLaterals=');
    expect(link).toMatchObject({ kind: 'given', problems: [], inputs: { ridgeAngle: null } });
  });
});

describe('several laterals to choose from, from the tip inwards', () => {
  const to = (change: Inputs, got: GotSet = 'exact') => (run(change, got) as Answer).outputs['cutBackTo'];
  it('takes the outermost that is large enough', () => {
    expect(to({})).toEqual({ value: 'first', also: [] });
    expect(to({ lateralDiameter: 20, furtherLimbs: [95, 105], furtherLaterals: [25, 50] })).toEqual({ value: 'third', also: [] });
    expect(to({ lateralDiameter: 20, furtherLimbs: [95, 100, 105], furtherLaterals: [40, 50, 60] })).toEqual({ value: 'second', also: [] });
    expect(to({ lateralDiameter: 20, furtherLimbs: [95, 100, 105], furtherLaterals: [20, 20, 60] })).toEqual({ value: 'fourth', also: [] });
  });
  it('none, when none is', () => {
    expect(to({ lateralDiameter: 20, furtherLimbs: [95], furtherLaterals: [25] })).toEqual({ value: 'none', also: [] });
    expect(ids({ lateralDiameter: 20, furtherLimbs: [95], furtherLaterals: [25] })).toEqual(['lateralTooSmall', 'noneBigEnough']);
  });
  it('where half is asked for, another may be it', () => {
    const two = { lateralDiameter: 36, furtherLimbs: [96], furtherLaterals: [60] };
    expect(to(two)).toEqual({ value: 'first', also: [] });
    expect(to({ ...two, rule: 'half' })).toEqual({ value: 'second', also: [] });
  });
  it('says what else the guesses allow', () => expect(to({ furtherLimbs: [95], furtherLaterals: [60] }, 'judged')).toEqual({ value: 'first', also: ['second'] }));
  it('gives each its ratio, and says why', () => {
    expect(figure({ furtherLimbs: [120], furtherLaterals: [30] }, 'exact', 'ratioSecond').value).toBeCloseTo(0.25, 12);
    expect((run({}) as Answer).outputs['ratioSecond']).toBeNull();
    expect(ids({ furtherLimbs: [120], furtherLaterals: [30] })).toEqual(['cutBackTo']);
  });
  it.each([
    [{ furtherLimbs: [95, 100], furtherLaterals: [40] }, 'notPaired'],
    [{ furtherLimbs: null, furtherLaterals: [40] }, 'notPaired'],
    [{ furtherLimbs: [30], furtherLaterals: [40] }, 'furtherLarger'],
  ])('%o is a problem: %s', (change, problem) => expect(run(change)).toMatchObject({ kind: 'problems', problems: [{ input: 'furtherLaterals', problem }] }));
});
