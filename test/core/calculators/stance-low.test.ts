/** Where to stand for a cut so low that a guess reaches the hand: an answer, as far as the hand; by hand, by school trigonometry and by points of the tolerance. */
import { describe, expect, it } from 'vitest';
import { stance } from '#core/calculators/stance.ts';
import { type Answer, evaluate, type Inputs, type Quantity } from '#core/kit/outcome.ts';
import { pointIn } from '../kit/box.ts';
import { randomFrom } from '../kit/random.ts';

const ground: Inputs = {
  cutHeight: 3, gripHeight: 1.1, poleShortest: 2.3, poleLongest: 3.4, groundRise: 0, platformHeight: 0, standing: 'beside', landingReach: 0,
};
const run = (change: Inputs, got: 'measured' | 'judged' = 'judged') => evaluate(stance, { ...ground, ...change }, got);
const answered = (change: Inputs, got: 'measured' | 'judged' = 'judged'): Answer => {
  const outcome = run(change, got);
  if (outcome.kind !== 'answer') throw new Error(JSON.stringify(outcome));
  return outcome;
};
const planOn = (answer: Answer, name: string): number => (answer.outputs[name] as Quantity).planOn as number;
const raised = (answer: Answer): string[] => answer.findings.map((f) => f.id);

describe('a cut so low that a guess reaches the hand', () => {
  // 1.5 m by eye is 1.2 to 1.8; a hand at 1.1 by eye is 0.95 to 1.25; the ground 5° either way; a pole of 3.4 m 3.35 to 3.45.
  it('is answered as far as the hand, and told so; by hand', () => {
    const answer = answered({ cutHeight: 1.5 });
    expect(raised(answer)).toEqual(['beyondGuess', 'shortestTooLong']);
    expect(answer.findings[0]).toMatchObject({ values: { cutHeight: 1.2, gripHeight: 1.25 } });
    expect(answer.outside).toEqual({});
    // 1.8 − 0.95 = 0.85, rising: 0.85 ÷ (1.7321 − 0.0875) = 0.5168; level with the hand, right under it.
    expect(planOn(answer, 'nearestStandOff')).toBeCloseTo(0.5168, 3);
    expect((answer.outputs['nearestStandOff'] as Quantity).low).toBeCloseTo(0, 6);
    // 0.85 up, rising: 1.00765 s² + 0.14873 s + 0.7225 = 11.2225: s = (−0.14873 + √(0.02212 + 42.3214)) ÷ 2.01531 = 3.1552
    expect(planOn(answer, 'furthestStandOff')).toBeCloseTo(3.1552, 3);
  });
  it('on ground that falls towards it, the least reach is where cut and hand are level', () => {
    // −15°: 10° to 20° down. Level with the hand at 20° down: 3.35 × cos 20° = 3.35 × 0.93969 = 3.1480
    const answer = answered({ cutHeight: 1.5, groundRise: -15 });
    expect(planOn(answer, 'furthestStandOff')).toBeCloseTo(3.148, 3);
    const { cutHeight, gripHeight } = (answer.outputs['furthestStandOff'] as Quantity).planAt as { cutHeight: number; gripHeight: number };
    expect(cutHeight).toBeCloseTo(gripHeight, 6);
    expect(cutHeight).toBeGreaterThan(gripHeight);
  });
  it('whichever of the two was measured', () => {
    for (const got of [{ cutHeight: 'exact' }, { gripHeight: 'exact' }, { cutHeight: 'measured' }, { gripHeight: 'measured' }] as const) {
      const outcome = evaluate(stance, { ...ground, cutHeight: 1.2 }, got);
      expect(outcome).toMatchObject({ kind: 'answer', findings: expect.arrayContaining([expect.objectContaining({ id: 'beyondGuess' })]) });
    }
  });
  it('on a platform so low that it may be the ground', () => {
    expect(raised(answered({ cutHeight: 1.5, platformHeight: 0.3 }))).toContain('beyondGuess');
  });
  it('below the hand as entered, there is no answer however it was got', () => {
    expect(run({ cutHeight: 1.3, gripHeight: 1.3 })).toEqual({ kind: 'outside', limit: 'belowGrip', values: { cutHeight: 1.3, gripHeight: 1.3 } });
  });
  it('nor where the guess from a platform reaches lower than the pole may point: there the nearest moves out', () => {
    expect(run({ platformHeight: 4, cutHeight: 4.2 })).toMatchObject({ kind: 'outside', limit: 'belowPlatform' });
  });

  /** Level distance at which a pole of this length just reaches a cut this far over the grip, and the nearest by the angle: school trigonometry. */
  const tan = (angle: number): number => Math.tan((angle * Math.PI) / 180);
  const furthestBy = (rise: number, slope: number, pole: number): number =>
    (-rise * tan(slope) + Math.sqrt((rise * tan(slope)) ** 2 - (1 + tan(slope) ** 2) * (rise ** 2 - pole ** 2))) / (1 + tan(slope) ** 2);
  const heights = Array.from({ length: 49 }, (_, k) => Number((1.2 + k / 10).toFixed(1)));
  it.each(['judged', 'measured'] as const)('from the ground every height is answered, never milder than any point that the guess allows, %s', (got) => {
    const random = randomFrom(77);
    const milds: string[] = [];
    let [past, worst] = [0, 0];
    for (const cutHeight of heights) for (const groundRise of [-25, -10, 0, 10, 25]) for (const gripHeight of [0.7, 1.1, Math.min(1.6, cutHeight - 0.01)]) {
      const given = { ...ground, cutHeight, groundRise, gripHeight };
      const answer = answered(given, got);
      for (let k = 0; k < 30; k++) {
        const point = pointIn(stance, given, got, random) as { cutHeight: number; gripHeight: number; groundRise: number; poleLongest: number };
        const rise = point.cutHeight - point.gripHeight;
        const milder = (what: string): number => milds.push(`${what} at ${JSON.stringify(point)} of ${JSON.stringify(given)}`);
        // Of the nearest, all of the box is held, the part past the limit too.
        if (planOn(answer, 'nearestStandOff') < rise / (tan(60) - tan(point.groundRise)) - 1e-9) milder('nearest by the angle');
        const there = stance.compute(point as never);
        if (there.kind === 'outside') {
          past++;
          if (!raised(answer).includes('beyondGuess')) milder('past the hand and not said');
          const reach = answer.outputs['furthestStandOff'] as Quantity | null;
          if (reach) worst = Math.max(worst, (reach.planOn as number) - furthestBy(rise, point.groundRise, point.poleLongest));
          continue;
        }
        for (const [name, output] of Object.entries(stance.outputs)) {
          const [figure, value] = [answer.outputs[name] as Quantity | null, there.outputs[name as 'clearance'] as number | null];
          if (figure === null || value === null) continue;
          const over = output.protects === 'up' ? value - (figure.planOn as number) : (figure.planOn as number) - value;
          if (!(over <= 1e-6)) milder(name);
        }
      }
    }
    expect(milds).toEqual([]);
    expect(past).toBeGreaterThan(100);
    // Past the limit the pole reaches a little less far than is told, where the ground falls away steeply.
    expect(worst).toBeLessThan(0.3);
  });
});
