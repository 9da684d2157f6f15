import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { finalCut } from '#core/calculators/final-cut.ts';
import { cutToBranch, levelAngle, mirrorAngle, squareAngle } from '#core/formulas/union.ts';
import { evaluate, type Answer, type Choice, type Inputs, type Quantity } from '#core/kit/outcome.ts';
import { exampleOf } from '#core/registry.ts';

const example = exampleOf(finalCut);
const run = (change: Inputs, got: 'exact' | 'judged' | 'measured' = 'exact') => evaluate(finalCut, { ...example, ...change }, got);
const value = (change: Inputs, name: string): number => ((run(change) as Answer).outputs[name] as Quantity).value;
const ids = (change: Inputs, got: 'exact' | 'judged' | 'measured' = 'exact'): string[] => (run(change, got) as Answer).findings.map((f) => f.id);
const rad = (deg: number): number => (deg * Math.PI) / 180;

/** Plane vectors, x towards the branch, y up the stem's line: worked apart from the formulas. */
const stemLine = [0, -1] as const;
const reflected = ([x, y]: readonly [number, number], [ux, uy]: readonly [number, number]): [number, number] => {
  const dot = x * ux + y * uy;
  return [2 * dot * ux - x, 2 * dot * uy - y];
};
const between = ([ax, ay]: readonly [number, number], [bx, by]: readonly [number, number]): number => (Math.acos(ax * bx + ay * by) * 180) / Math.PI;

describe('plane geometry, with vectors', () => {
  it('the cut is the ridge reflected in the line of the stem, and reflected again it is the ridge', () => {
    for (const ridge of [10, 25, 35, 60, 80]) {
      const down: [number, number] = [-Math.sin(rad(ridge)), -Math.cos(rad(ridge))];
      const cut = reflected(down, stemLine);
      expect(cut[0]).toBeGreaterThan(0);
      expect(between(cut, stemLine)).toBeCloseTo(mirrorAngle(ridge), 9);
      const back = reflected(cut, stemLine);
      expect(back[0]).toBeCloseTo(down[0], 12);
      expect(back[1]).toBeCloseTo(down[1], 12);
    }
  });
  it('meets the branch at the angle between the two directions', () => {
    for (const [cut, branch] of [[35, 50], [10, 15], [80, 60], [-20, 110]] as const) {
      const cutWay: [number, number] = [Math.sin(rad(cut)), -Math.cos(rad(cut))];
      const branchWay: [number, number] = [Math.sin(rad(branch)), Math.cos(rad(branch))];
      expect(between(cutWay, branchWay)).toBeCloseTo(cutToBranch(cut, branch), 9);
    }
  });
  it('a square cut stands square to the branch', () => {
    for (const branch of [15, 50, 90, 120]) expect(cutToBranch(squareAngle(branch), branch)).toBe(90);
  });
  it('the cut across a twin stem ends on its outer edge, level with the foot of the ridge', () => {
    for (const [d, branch, ridge, length] of [[80, 30, 15, 120], [150, 45, 20, 60], [60, 20, 10, 200]] as const) {
      const at = levelAngle(d, branch, ridge, length);
      const down = length * Math.cos(rad(ridge));
      const end: [number, number] = [down * Math.tan(rad(at)), -down];
      // Distance of the end from the twin's inner edge, a line through the top of the ridge.
      const across = end[0] * Math.cos(rad(branch)) - end[1] * Math.sin(rad(branch));
      expect(across).toBeCloseTo(d, 9);
    }
  });
  it('stands to the horizontal as the lean of the stem turns it', () => {
    expect(value({ stemLean: 0 }, 'cutFromHorizontal')).toBe(55);
    expect(value({ stemLean: 20 }, 'cutFromHorizontal')).toBe(75);
    expect(value({ stemLean: -20 }, 'cutFromHorizontal')).toBe(35);
  });
});

describe('the wound', () => {
  // Own integration: the chord of a cylinder at each height of the tilted plane, midpoint rule.
  const integrated = (d: number, toBranch: number, n = 20000): number => {
    const long = d / Math.sin(rad(toBranch));
    let sum = 0;
    for (let i = 0; i < n; i++) {
      const along = ((i + 0.5) / n - 0.5) * long;
      const off = along * Math.sin(rad(toBranch));
      sum += 2 * Math.sqrt((d / 2) ** 2 - off ** 2) * (long / n);
    }
    return sum;
  };
  it.each([[80, 50, 35], [120, 90, 60], [40, 30, 20]])('%d mm, branch at %d°, ridge at %d°: area as integrated', (branchDiameter, branchAngle, ridgeAngle) => {
    const area = value({ branchDiameter, branchAngle, ridgeAngle, stemDiameter: null }, 'woundArea');
    expect(area / integrated(branchDiameter, 180 - branchAngle - ridgeAngle)).toBeCloseTo(1, 4);
  });
  it('is least when the cut is square', () => {
    fc.assert(fc.property(fc.double({ min: 15, max: 120, noNaN: true }), fc.double({ min: 10, max: 80, noNaN: true }), (branchAngle, ridgeAngle) => {
      const there = run({ branchAngle, ridgeAngle });
      fc.pre(there.kind === 'answer');
      expect(value({ branchAngle, ridgeAngle }, 'woundArea')).toBeGreaterThanOrEqual(value({ union: 'dead', branchAngle, ridgeAngle }, 'woundArea') - 1e-9);
    }));
  });
  it('a flush cut through a base half as thick again opens over twice the section at a right angle', () => {
    expect(value({ branchAngle: 90, ridgeAngle: 30, collarSwell: 1.5 }, 'flushArea') / value({ union: 'dead' }, 'woundArea')).toBeCloseTo(2.25, 9);
  });
});

describe('where to stand', () => {
  it('a pole laid along the shift lies in the plane of the cut', () => {
    fc.assert(fc.property(fc.double({ min: 20, max: 70, noNaN: true }), fc.double({ min: 0, max: 70, noNaN: true }), fc.integer({ min: -15, max: 15 }), (ridgeAngle, poleAngle, stemLean) => {
      const there = run({ ridgeAngle, poleAngle, stemLean, branchAngle: 60 });
      fc.pre(there.kind === 'answer');
      const { cutFromHorizontal, shiftAlong, barLies } = (there as Answer).outputs as unknown as { cutFromHorizontal: Quantity; shiftAlong: Quantity | null; barLies: Choice };
      const [P, p, c] = [example['poleLength'] as number, rad(poleAngle), rad(cutFromHorizontal.value)];
      if (shiftAlong === null) {
        expect(barLies.value).toBe('tooSteep');
        expect(Math.sin(p)).toBeGreaterThan(Math.sin(c));
        return;
      }
      // From the cut to the lower end: along the limb, down, and the rest sideways. The plane's normal is square to it.
      const [x, z] = [shiftAlong.value, -P * Math.sin(p)];
      const aside = P * P - x * x - z * z;
      expect(aside).toBeGreaterThanOrEqual(-1e-9);
      expect(x * Math.sin(c) + z * Math.cos(c)).toBeCloseTo(0, 9);
    }));
  });
  it('from nowhere when the pole is steeper than the cut, or the cut rises outwards', () => {
    expect(ids({ poleAngle: 60 })).toContain('barOffPlane');
    expect((run({ ridgeAngle: 80, branchAngle: 50, stemLean: -45 }) as Answer).outputs['barLies']).toEqual({ value: 'cutRises', also: [] });
  });
  it('a guess that reaches a pole too steep says so', () => {
    expect(ids({ poleAngle: 50 }, 'judged')).toContain('barOffPlane');
    expect(ids({ poleAngle: 20 }, 'measured')).not.toContain('barOffPlane');
  });
});

describe('what it says', () => {
  it.each([
    [{ union: 'collar' }, 'collarLeads'],
    [{ union: 'dead' }, 'deadOutside'],
    [{ union: 'codominant', branchAngle: 40, ridgeAngle: 20 }, 'twoRules'],
    [{ branchAngle: 90, ridgeAngle: 45 }, 'rulesApart'],
    [{ branchAngle: 20, ridgeAngle: 15 }, 'narrowFork'],
    [{ branchDiameter: 120 }, 'tooMuchOfStem'],
    [{ branchDiameter: 80 }, 'overThird'],
  ] as const)('%o: %s', (change, id) => expect(ids(change)).toContain(id));
  it('nearly flush only by what the guess allows', () => {
    expect(ids({ ridgeAngle: 15, branchAngle: 60 })).not.toContain('nearlyFlush');
    expect(ids({ ridgeAngle: 15, branchAngle: 60 }, 'judged')).toContain('nearlyFlush');
  });
  it('with the collar in sight, apart rules are no matter', () => expect(ids({ union: 'collar', branchAngle: 90, ridgeAngle: 45 })).not.toContain('rulesApart'));
  it('a thick branch is said to be, from half of its stem on', () => {
    expect(ids({ branchDiameter: 109 })).not.toContain('tooMuchOfStem');
    expect(ids({ branchDiameter: 110 })).toContain('tooMuchOfStem');
    expect(ids({ stemDiameter: null })).not.toContain('overThird');
  });
  it.each([
    [{ branchAngle: 110, ridgeAngle: 60 }, 'alongBranch'],
    [{ union: 'codominant', branchAngle: 85 }, 'noFork'],
  ] as const)('%o is outside: %s', (change, limit) => expect(run(change)).toMatchObject({ kind: 'outside', limit }));
  it('a branch thicker than its stem is a problem at its field', () =>
    expect(run({ stemDiameter: 60 })).toMatchObject({ kind: 'problems', problems: [{ input: 'branchDiameter', problem: 'branchLarger' }] }));
});
