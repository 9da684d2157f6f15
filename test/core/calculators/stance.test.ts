/** Where to stand: examples worked by hand, with their working, and the facts of the trade (common practice, no source). */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stance } from '#core/calculators/stance.ts';
import { type Answer, evaluate, type Inputs, type Quantity } from '#core/kit/outcome.ts';
import { exampleOf } from '#core/registry.ts';
import { gotSets, validInputs } from '../kit/arbitrary.ts';

const ground: Inputs = {
  cutHeight: 3, gripHeight: 1.1, poleShortest: 2.3, poleLongest: 3.4, groundRise: 0, platformHeight: 0, standing: 'beside', landingReach: 1.8,
};
const run = (change: Inputs, got: 'exact' | 'measured' | 'judged' = 'exact') => evaluate(stance, { ...ground, ...change }, got);
const answered = (change: Inputs, got: 'exact' | 'measured' | 'judged' = 'exact'): Answer => {
  const outcome = run(change, got);
  if (outcome.kind !== 'answer') throw new Error(JSON.stringify(outcome));
  return outcome;
};
const value = (answer: Answer, name: string): number => (answer.outputs[name] as Quantity).value;
const planOn = (answer: Answer, name: string): number => (answer.outputs[name] as Quantity).planOn as number;
const raised = (answer: Answer, level?: string): string[] => answer.findings.filter((f) => !level || f.level === level).map((f) => f.id);
const step = (answer: Answer, name: string): number => answer.working.find((s) => s.result.name === name)?.result.value as number;

describe('the normal job', () => {
  // Common practice: grip 1.1 m, pole 2.3 to 3.4 m, cut 3 m up, square beside a limb of 2 m. Pole no steeper than 60°.
  it.each(['exact', 'measured', 'judged'] as const)('is a yes, %s', (got) => {
    const answer = answered({}, got);
    expect(raised(answer, 'stop')).toEqual([]);
    expect(raised(answer, 'caution')).toEqual([]);
    expect(planOn(answer, 'nearestStandOff')).toBeLessThan(planOn(answer, 'furthestStandOff'));
    expect(planOn(answer, 'angleAtNearest')).toBeLessThanOrEqual(60);
  });
  it('by hand', () => {
    const answer = answered({});
    // 3 − 1.1 = 1.9; 1.9 ÷ tan 60° = 1.9 ÷ 1.7321 = 1.0970; the landing is further.
    expect(step(answer, 'rise')).toBeCloseTo(1.9, 12);
    expect(step(answer, 'limitDistance')).toBeCloseTo(1.097, 3);
    expect(value(answer, 'nearestStandOff')).toBe(1.8);
    // √(3.4² − 1.9²) = √(11.56 − 3.61) = √7.95 = 2.8196
    expect(value(answer, 'furthestStandOff')).toBeCloseTo(2.8196, 4);
    expect(value(answer, 'clearance')).toBeCloseTo(1.0196, 4);
    // arctan(1.9 ÷ 1.8): tan 46.5° = 1.0538, tan 46.6° = 1.0575
    expect(value(answer, 'angleAtNearest')).toBeGreaterThan(46.5);
    expect(value(answer, 'angleAtNearest')).toBeLessThan(46.6);
    // 1.1 + 3.4 × 0.8660 = 4.0444
    expect(value(answer, 'highestCut')).toBeCloseTo(4.0445, 3);
    // √(2.3² − 1.9²) = √1.68 = 1.2961
    expect(value(answer, 'shortestReach')).toBeCloseTo(1.2961, 4);
  });
});

describe('five metres up', () => {
  it.each(['exact', 'measured', 'judged'] as const)('wants another way up: a stop, %s', (got) => {
    const answer = answered({ cutHeight: 5 }, got);
    expect(raised(answer, 'stop')).toContain('poleTooShort');
    expect(answer.outputs['furthestStandOff']).toBeNull();
  });
  it('a platform whose floor is 2 m up does it', () => {
    // Grip at 3.1, as from the ground 1.9 below the cut.
    const answer = answered({ cutHeight: 5, platformHeight: 2 });
    expect(raised(answer, 'stop')).toEqual([]);
    expect(value(answer, 'furthestStandOff')).toBeCloseTo(2.8196, 4);
    expect(value(answer, 'highestCut')).toBeCloseTo(6.0445, 3);
  });
  it('is just reached by the pole that reaches it at the limit: half the pole back', () => {
    // 1.1 + P × 0.866025 = 5: P = 4.50333; half of it is 2.25167.
    const answer = answered({ cutHeight: 5, poleLongest: 4.5034 });
    expect(raised(answer, 'stop')).toEqual([]);
    expect(step(answer, 'limitDistance')).toBeCloseTo(4.5034 / 2, 3);
    expect(raised(answered({ cutHeight: 5, poleLongest: 4.5032 }), 'stop')).toEqual(['poleTooShort']);
  });
});

describe('sloping ground, by hand', () => {
  it('rising towards the cut: further back', () => {
    // tan 60° − tan 15° = 1.7321 − 0.2679 = 1.4641; 1.9 ÷ 1.4641 = 1.2977
    const answer = answered({ groundRise: 15, landingReach: 0 });
    expect(step(answer, 'limitDistance')).toBeCloseTo(1.2977, 3);
    // There the cut is 1.9 + 1.2977 × 0.2679 = 2.2477 above the grip: 2.2477 ÷ 1.2977 = 1.7321 = tan 60°
    expect(value(answer, 'angleAtNearest')).toBeCloseTo(60, 6);
    // s² + (1.9 + 0.2679 s)² = 3.4²: 1.07179 s² + 1.01823 s − 7.95 = 0: s = (−1.01823 + √(1.03679 + 34.0830)) ÷ 2.14359 = 2.2896
    expect(value(answer, 'furthestStandOff')).toBeCloseTo(2.2896, 3);
    // 1.1 + 3.4 × (0.8660 − 0.5 × 0.2679) = 1.1 + 3.4 × 0.73205 = 3.5890
    expect(value(answer, 'highestCut')).toBeCloseTo(3.589, 3);
  });
  it('falling towards the cut: nearer, and higher', () => {
    // 1.9 ÷ (1.7321 + 0.2679) = 0.9500
    const answer = answered({ groundRise: -15, landingReach: 0 });
    expect(step(answer, 'limitDistance')).toBeCloseTo(0.95, 3);
    // 1.07179 s² − 1.01823 s − 7.95 = 0: s = (1.01823 + 5.92620) ÷ 2.14359 = 3.2396
    expect(value(answer, 'furthestStandOff')).toBeCloseTo(3.2396, 3);
    // 1.1 + 3.4 × (0.8660 + 0.13397) = 1.1 + 3.4 × 1.0000 = 4.5
    expect(value(answer, 'highestCut')).toBeCloseTo(4.5, 3);
  });
  it('at least half the pole back, on any slope: what to remember at the tree', () => {
    fc.assert(fc.property(validInputs(stance), (inputs) => {
      const outcome = evaluate(stance, { ...inputs, landingReach: 0 }, 'exact');
      if (outcome.kind !== 'answer') return;
      const nearest = value(outcome, 'nearestStandOff');
      const angle = value(outcome, 'angleAtNearest');
      // The pole as long as it is drawn out there: nearest ÷ cos angle. Half of it is no more than the distance.
      expect(nearest).toBeGreaterThanOrEqual((nearest / Math.cos((angle * Math.PI) / 180)) * 0.5 - 1e-9);
    }));
  });
});

describe('from a platform, downwards', () => {
  it('by the triangle of 5, 12 and 13', () => {
    // Floor 4, hand at 5.1, cut at 3.85: 1.25 below. Pole 3.25: √(3.25² − 1.25²) = 3. Angle −arcsin(5 ÷ 13) = −22.62°.
    const answer = answered({ platformHeight: 4, cutHeight: 3.85, poleLongest: 3.25, landingReach: 0 });
    expect(value(answer, 'furthestStandOff')).toBeCloseTo(3, 9);
    expect(value(answer, 'angleAtFurthest')).toBeCloseTo(-22.62, 2);
    // No lower than −30°: 1.25 ÷ tan 30° = 1.25 ÷ 0.57735 = 2.1651
    expect(step(answer, 'limitDistance')).toBeCloseTo(2.1651, 4);
    expect(value(answer, 'angleAtNearest')).toBeCloseTo(-30, 9);
  });
  it('further down than the pole can point: outside', () => {
    // 2 below: 2 ÷ 0.57735 = 3.4641 is further than the pole of 3.25 reaches.
    expect(run({ platformHeight: 4, cutHeight: 3.1, poleLongest: 3.25 })).toMatchObject({ kind: 'outside', limit: 'belowPlatform' });
  });
  it('on ground that falls as fast as the pole may point, there is no place', () => {
    // −25° with 5° of guess is −30°; the hand is level with the cut, and nothing may turn into no number.
    const level: Inputs = { cutHeight: 3.5, gripHeight: 1.5, platformHeight: 2, groundRise: -25 };
    expect(evaluate(stance, { ...ground, ...level }, { cutHeight: 'exact', gripHeight: 'exact', platformHeight: 'exact' }).kind).toBe('answer');
  });
});

describe('findings', () => {
  it('tip side is a stop, stem side a caution, beside neither', () => {
    expect(raised(answered({ standing: 'tipSide' }), 'stop')).toEqual(['tipSide']);
    expect(raised(answered({ standing: 'stemSide' }), 'caution')).toEqual(['stemSide']);
    expect(raised(answered({}))).toEqual([]);
  });
  it('under it: the landing reaches further than the pole', () => {
    expect(raised(answered({ landingReach: 2.82 }), 'stop')).toEqual(['underIt']); // 2.8196 by hand above
    expect(raised(answered({ landingReach: 2.81 }), 'stop')).toEqual([]);
  });
  it('is raised from the guess too, and says so', () => {
    const finding = answered({ landingReach: 2.5 }, 'judged').findings.find((f) => f.id === 'underIt');
    expect(finding).toMatchObject({ level: 'stop', guess: true });
  });
  it('the shortest pole: a note to step back', () => {
    // 1.2 m nearest is less than the 1.2961 m the shortest pole needs.
    expect(raised(answered({ landingReach: 1.2 }), 'note')).toEqual(['shortestTooLong']);
  });
  it('held flat it is heavy from the ground; from a platform the basket rail is near, and no note is made', () => {
    // tan 30° = 0.5774: 1.9 ÷ 0.5774 = 3.29 m. Nearest 3.3 is flatter.
    expect(raised(answered({ landingReach: 3.3, poleLongest: 5 }), 'note')).toContain('heavy');
    expect(raised(answered({ landingReach: 3.2, poleLongest: 5 }), 'note')).not.toContain('heavy');
    expect(raised(answered({ landingReach: 3.3, poleLongest: 5, cutHeight: 5, platformHeight: 2 }), 'note')).not.toContain('heavy');
  });
  it('no band to stand in is never without a stop', () => {
    fc.assert(fc.property(validInputs(stance), gotSets(stance), (inputs, got) => {
      const outcome = evaluate(stance, inputs, got);
      if (outcome.kind !== 'answer' || raised(outcome, 'stop').length > 0) return;
      expect(outcome.outputs['furthestStandOff']).not.toBeNull();
      expect(planOn(outcome, 'nearestStandOff')).toBeLessThanOrEqual(planOn(outcome, 'furthestStandOff') + 1e-9);
      expect(planOn(outcome, 'angleAtNearest')).toBeLessThanOrEqual(60 + 1e-9);
    }), { seed: Number(process.env['SEED'] ?? 3), numRuns: Number(process.env['RUNS'] ?? 300) });
  });
});

describe('outside and problems', () => {
  it('a cut at the hand or below it, from the ground, is another tool’s', () => {
    expect(run({ cutHeight: 1.3, gripHeight: 1.3 })).toEqual({ kind: 'outside', limit: 'belowGrip', values: { cutHeight: 1.3, gripHeight: 1.3 } });
    expect(run({ cutHeight: 1.31, gripHeight: 1.3 }).kind).toBe('answer');
  });
  it('the shortest pole longer than the longest', () => {
    expect(run({ poleShortest: 3.5 })).toEqual({ kind: 'problems', problems: [{ input: 'poleShortest', problem: 'poleOrder', values: { poleLongest: 3.4 } }] });
  });
  it('standing on the ground is no guess', () => {
    const answer = answered({}, 'judged');
    for (const figure of Object.values(answer.outputs)) expect((figure as Quantity).planAt).toMatchObject({ platformHeight: 0 });
  });
  it('its example is the cut of the issue: three and a half metres', () => {
    expect(exampleOf(stance)).toMatchObject({ cutHeight: 3.5, gripHeight: 1.1, poleShortest: 2.3, poleLongest: 3.4, landingReach: 1.8 });
  });
});
