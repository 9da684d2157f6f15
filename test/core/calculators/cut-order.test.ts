import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutOrder } from '#core/calculators/cut-order.ts';
import { cuts } from '#core/facts/cuts.ts';
import { evaluate, type Answer, type Choice, type Inputs, type Quantity } from '#core/kit/outcome.ts';
import { anyGot, anyInputs, checkRows, expectBounded, expectCheck, expectSound, seeded } from './box.ts';

const limb: Inputs = {
  support: 'free', fault: 'none', length: 2.5, cutAt: 0.4, weight: 20, shape: 'whole', extraLoad: 0, extraAt: 2, limbAngle: 15,
  diameter: 100, strength: 40, undercut: 25,
};
const run = (given: Inputs = {}, got: 'exact' | 'measured' | 'judged' = 'exact') => evaluate(cutOrder, { ...limb, ...given }, got);
const value = (outcome: ReturnType<typeof run>, name: string) => ((outcome as Answer).outputs[name] as Quantity | Choice).value;
const ids = (outcome: ReturnType<typeof run>): string[] => (outcome as Answer).findings.map((f) => f.id);

describe('against worked examples from outside', () => {
  const rows = checkRows('cut-order');
  it.each(rows)('$title', (row) => expectCheck(cutOrder, row));
  it('there are some', () => expect(rows.length).toBeGreaterThan(5));
});

describe('which side', () => {
  it('a limb that points out freely: from below; hung or held at both ends, in the middle: from above', () => {
    expect(value(run(), 'firstCutSide')).toBe('bottom');
    expect(value(run({ support: 'hungBoth', cutAt: 1 }), 'firstCutSide')).toBe('top');
    expect(value(run({ support: 'heldBoth', cutAt: 1.2 }), 'firstCutSide')).toBe('top');
    expect(value(run({ support: 'heldBoth', cutAt: 0.1 }), 'firstCutSide')).toBe('bottom');
  });
  it('a tip at rest: from below near the stem, either past a quarter of the span', () => {
    const near = run({ support: 'tipResting', cutAt: 0.3 });
    expect(value(near, 'firstCutSide')).toBe('bottom');
    expect(ids(near)).toContain('mayTurn');
    const far = run({ support: 'tipResting', cutAt: 0.7 });
    expect(value(far, 'firstCutSide')).toBe('either');
    expect(value(far, 'sequence')).toBe('either');
    expect(ids(far)).toContain('eitherSide');
  });
  it('near where it turns over the place is named', () => {
    const near = run({ support: 'heldBoth', cutAt: 0.6 });
    expect((near as Answer).findings.find((f) => f.id === 'nearTurn')?.values['noMoment']).toBeCloseTo(0.2113 * 2.5, 3);
  });
  it('a guess that may change the side says so', () => {
    expect(((run({ support: 'heldBoth', cutAt: 0.52 }, 'judged') as Answer).outputs['firstCutSide'] as Choice).also).toContain('top');
  });
});

describe('the order of cuts', () => {
  it.each([
    [{ diameter: 25 }, 'oneCut'], [{ diameter: 45 }, 'twoCuts'], [{ diameter: 100 }, 'threeCuts'],
    [{ support: 'heldBoth', cutAt: 1.2 }, 'topFirst'], [{ support: 'hungBoth', cutAt: 1 }, 'hungBoth'],
    [{ cutAt: 2.5 }, 'either'],
  ])('%j: %s', (given, sequence) => expect(value(run(given as Inputs), 'sequence')).toBe(sequence));
  it('so thin that one cut does, it is said beside the first cut that then is left out', () => {
    const twig = { diameter: 25, weight: 0.5, length: 1 };
    expect((run(twig) as Answer).findings).toContainEqual({ id: 'oneCutDoes', level: 'note', values: { thin: cuts('csu-three-cut-over') }, guess: false });
    expect(ids(run({ ...twig, diameter: cuts('csu-three-cut-over') + 1 }))).not.toContain('oneCutDoes');
    expect(ids(run({ ...twig, support: 'heldBoth', cutAt: 0.5 }))).not.toContain('oneCutDoes');
    // Where it may go at the first touch nothing is left out.
    expect(ids(run({ ...twig, weight: 900 }))).not.toContain('oneCutDoes');
  });
});

describe('findings', () => {
  it('undercut too deep or too shallow', () => {
    expect(ids(run({ undercut: 40 }))).toContain('undercutDeep');
    expect(ids(run({ undercut: 10 }))).toContain('undercutShallow');
    expect(ids(run())).not.toContain('undercutDeep');
    expect(ids(run({ undercut: 10, diameter: 22 }))).not.toContain('undercutShallow');
  });
  it('over its strength before the release cut: stop', () => {
    const there = run({ weight: 900, length: 9, diameter: 60 });
    expect(ids(there)).toContain('overAlready');
    expect(value(there, 'readyAt')).toBe(0);
  });
  it('both halves of a hung piece swing', () => expect(ids(run({ support: 'hungBoth', cutAt: 1 }))).toContain('bothSwing'));
  it('the real test always stands', () => expect(ids(run())).toContain('readKerf'));
});

describe('outside and problems', () => {
  it.each(['sprung', 'twisted', 'cracked', 'sideways'])('%s wood', (fault) =>
    expect(run({ fault })).toMatchObject({ kind: 'outside', limit: fault }));
  it('a top', () => expect(run({ limbAngle: 65 })).toMatchObject({ kind: 'outside', limit: 'top' }));
  it('a cut beyond the tip', () => {
    expect(run({ cutAt: 2.6 })).toMatchObject({ kind: 'problems', problems: [{ input: 'cutAt', problem: 'beyondTip' }] });
    expect(run({ extraLoad: 5, extraAt: 3 })).toMatchObject({ kind: 'problems', problems: [{ input: 'extraAt' }] });
    expect(run({ support: 'heldBoth', cutAt: 2.4 }, 'judged')).toMatchObject({ kind: 'outside', limit: 'beyondEnd' });
  });
  it('a guess that reaches past a free tip finds no wood there to bend', () => {
    expect((run({ cutAt: 2.4 }, 'judged') as Answer).outputs['moment']).toMatchObject({ high: 0 });
  });
});

describe('steeper than this covers', () => {
  const steep = (limbAngle: number, got: 'judged' | 'exact') => run({ limbAngle }, got);
  it('as entered: outside', () => expect(steep(65, 'judged')).toMatchObject({ kind: 'outside', limit: 'top' }));
  it.each([55, -55])('%d°, only the guess reaches there, where the weight bends it less: an answer, and it is said', (angle) => {
    const outcome = steep(angle, 'judged') as Answer;
    expect(outcome.kind).toBe('answer');
    expect(outcome.findings.map((f) => f.id)).toContain('beyondGuess');
    expect((steep(angle, 'exact') as Answer).findings.map((f) => f.id)).not.toContain('beyondGuess');
    // Least where the limb lies flattest.
    const flattest = (evaluate(cutOrder, { ...(outcome.outputs['readyAt'] as Quantity).planAt!, limbAngle: angle > 0 ? 45 : -45 }, 'exact') as Answer).outputs['readyAt'] as Quantity;
    expect((outcome.outputs['readyAt'] as Quantity).planOn).toBeCloseTo(flattest.value, 6);
  });
});

describe('properties', () => {
  it('every outcome is sound', () => {
    fc.assert(fc.property(anyInputs(cutOrder), anyGot, (given, got) => expectSound(evaluate(cutOrder, given, got))), { numRuns: 60 });
  });
  it.each(['free', 'tipResting', 'hungBoth', 'heldBoth'])('%s: low and high bound the box', (support) => {
    let compared = 0;
    const place = seeded(11);
    fc.assert(fc.property(
      anyInputs(cutOrder, { support, fault: 'none' }).filter((i) => (i['cutAt'] as number) <= (i['length'] as number)), anyGot,
      (given, got) => { compared += expectBounded(cutOrder, { ...given, limbAngle: (given['limbAngle'] as number) / 2, extraAt: Math.min(given['extraAt'] as number, given['length'] as number) }, got, 20, place, 0.01); },
    ), { numRuns: 60 });
    expect(compared).toBeGreaterThan(200);
  });
});
