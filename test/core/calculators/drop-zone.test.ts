import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dropZone } from '#core/calculators/drop-zone.ts';
import { standing } from '#core/facts/standing.ts';
import { evaluate, type Answer, type Inputs, type Quantity } from '#core/kit/outcome.ts';
import { exampleOf } from '#core/registry.ts';
import { anyGot, anyInputs, checkRows, expectBounded, expectCheck, expectSound, seeded } from './box.ts';

const given: Inputs = exampleOf(dropZone);
const run = (some: Inputs = {}, got: 'exact' | 'measured' | 'judged' = 'exact') => evaluate(dropZone, { ...given, ...some }, got);
const figure = (outcome: ReturnType<typeof run>, name: string): Quantity => (outcome as Answer).outputs[name] as Quantity;
const value = (some: Inputs, name: string): number => figure(run(some), name).value;
const ids = (outcome: ReturnType<typeof run>): string[] => (outcome as Answer).findings.map((f) => f.id);

describe('against sums from outside', () => {
  const rows = checkRows('drop-zone');
  it.each(rows)('$title', (row) => expectCheck(dropZone, row));
  it('there are some', () => expect(rows.length).toBeGreaterThan(2));
});

describe('what it must teach', () => {
  it('a hinge that holds till the limb hangs throws it back under the stem side, further than one cut free', () => {
    expect(value({ release: 'hangs' }, 'inward')).toBeGreaterThan(1.5 * value({ release: 'free' }, 'inward'));
    expect(value({ release: 'hangs' }, 'inward')).toBeGreaterThan(value({ release: 'hangs' }, 'outward'));
    expect(ids(run({ release: 'hangs' }))).toContain('throwsBack');
  });
  it('neither side is ever less than a length', () => {
    for (const release of ['free', 'mayHold', 'hangs']) for (const limbAngle of [-60, 0, 60]) {
      expect(value({ release, limbAngle }, 'outward')).toBeGreaterThanOrEqual(2);
      expect(value({ release, limbAngle }, 'inward')).toBeGreaterThanOrEqual(2);
    }
  });
  it('others keep the bystander distance at the least, and further from a limb that reaches further', () => {
    expect(value({}, 'keepOut')).toBe(standing('bystander-distance'));
    expect(value({ limbLength: 8, cutHeight: 14, release: 'hangs', margin: 10 }, 'keepOut')).toBeGreaterThan(standing('bystander-distance'));
  });
});

describe('beside', () => {
  it('half the spread and the margin, over the cosine of the swing', () =>
    expect(value({ spread: 1, margin: 1, swing: 60 }, 'beside')).toBeCloseTo(3, 9));
  it('a full swing reaches no further than the limb does', () => {
    expect(value({ swing: 90 }, 'beside')).toBeCloseTo(Math.max(value({}, 'outward'), value({}, 'inward')) + 1, 9);
  });
});

describe('longest piece', () => {
  it('beside: its spread, in proportion, keeps short of you', () => {
    const longest = value({ standOff: 2, swing: 0 }, 'longestPiece');
    expect(longest).toBeCloseTo(4, 9);
    expect(value({ limbLength: longest, spread: longest / 2, swing: 0 }, 'beside')).toBeCloseTo(2, 9);
  });
  it('no spread: any; no room: none', () => {
    expect((run({ spread: 0 }) as Answer).outputs['longestPiece']).toBeNull();
    expect(ids(run({ spread: 0 }))).toContain('anyPiece');
    expect(value({ standOff: 0.5 }, 'longestPiece')).toBe(0);
    expect(value({ standOff: 0.5, standing: 'tipSide' }, 'longestPiece')).toBe(0);
    expect(ids(run({ standOff: 0.5 }))).toContain('tooLong');
  });
  it.each(['stemSide', 'tipSide'])('%s: that piece lands short, a longer one need not', (side) => {
    const figureName = side === 'stemSide' ? 'inward' : 'outward';
    const longest = value({ standing: side, standOff: 5 }, 'longestPiece');
    expect(value({ limbLength: longest, standing: side }, figureName) + 1).toBeLessThanOrEqual(5);
    expect(value({ limbLength: longest * 1.15, standing: side }, figureName) + 1).toBeGreaterThan(5);
  });
});

describe('what it sweeps', () => {
  it('nothing above where it can be', () => {
    expect(value({ basketLow: 20, basketHigh: 22 }, 'passingOut')).toBe(0);
    expect(ids(run({ basketLow: 20, basketHigh: 22 }))).not.toContain('passes');
  });
  it('at the height of the cut, at least the limb itself', () =>
    expect(value({ basketLow: 3.5, basketHigh: 6 }, 'passingOut')).toBeGreaterThanOrEqual(2 * Math.cos(Math.PI / 9) - 1e-9));
  it('a person on the ground: as far as it lands', () =>
    expect(value({}, 'passingOut')).toBeGreaterThanOrEqual(value({}, 'outward') - 0.01));
});

describe('outside, problems and the tip that grounds', () => {
  it('the tip in the ground before it moves', () =>
    expect(run({ limbLength: 8, limbAngle: -60 })).toMatchObject({ kind: 'outside', limit: 'tipInGround' }));
  it('a guess that reaches there', () => expect(ids(run({ limbLength: 4, limbAngle: -55 }, 'judged'))).toContain('beyondGuess'));
  it('the tip on the ground, the hinge still holding: the butt kicks', () => {
    expect(ids(run({ limbLength: 5, limbAngle: 0, release: 'hangs' }))).toContain('grounds');
    expect(ids(run({ limbLength: 2, release: 'hangs' }))).not.toContain('grounds');
  });
  it('heights the wrong way round', () =>
    expect(run({ basketLow: 3 })).toMatchObject({ kind: 'problems', problems: [{ input: 'basketHigh', problem: 'basketOrder' }] }));
});

describe('properties', () => {
  it('every outcome is sound', () => {
    fc.assert(fc.property(anyInputs(dropZone), anyGot, (some, got) => expectSound(evaluate(dropZone, some, got))));
  });
  it('as exact, low and high are the value', () => {
    const outcome = run() as Answer;
    expect(figure(outcome, 'outward')).toMatchObject({ high: value({}, 'outward'), planOn: value({}, 'outward') });
  });
  it.each(['free', 'mayHold', 'hangs'])('%s: the corner that is told leads near to what is planned on', (release) => {
    const outcome = run({ release }, 'judged');
    for (const name of ['outward', 'inward']) {
      const { planOn, planAt } = figure(outcome, name) as { planOn: number; planAt: Inputs };
      const there = figure(evaluate(dropZone, planAt, 'exact'), name).value;
      expect(there).toBeLessThanOrEqual(planOn);
      expect(there).toBeGreaterThan(0.85 * planOn);
    }
  });
  // Random boxes and points, other ones each time: nothing the box holds may lie beyond the ends.
  it('low and high bound every point of the box', () => {
    let compared = 0;
    fc.assert(fc.property(anyInputs(dropZone, { basketLow: 0 }), anyGot, fc.integer({ min: 1, max: 2_000_000_000 }), (some, got, seed) => {
      compared += expectBounded(dropZone, some, got, 6, seeded(seed), 0.005);
    }), { numRuns: 300 });
    expect(compared).toBeGreaterThan(1000);
  });
});
