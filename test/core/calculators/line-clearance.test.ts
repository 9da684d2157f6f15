/** Gaps and margin: hand-made settings whose gaps follow from right triangles, and properties over the whole input box. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lineClearance as calculator, settingOf } from '#core/calculators/line-clearance.ts';
import { reachGap, type Setting, workingGap } from '#core/formulas/line-gaps.ts';
import { gapToReach, gapUnder } from '#core/formulas/plane-gap.ts';
import { readLink, writeLink } from '#core/kit/link.ts';
import { type Answer, evaluate, type Inputs, type Quantity } from '#core/kit/outcome.ts';
import { figureNamed } from '#core/kit/names.ts';
import { showValue } from '#core/kit/show.ts';
import type { GotSet } from '#core/kit/calculator.ts';
import { gotSets, validInputs } from '../kit/arbitrary.ts';

const example: Inputs = Object.fromEntries(Object.entries(calculator.inputs).map(([name, input]) => [name, input.example]));
const answerOf = (some: Inputs, got: GotSet = 'exact'): Answer => {
  const found = evaluate(calculator, { ...example, ...some }, got);
  if (found.kind !== 'answer') throw new Error(JSON.stringify(found));
  return found;
};
const value = (some: Inputs, name: string): number => (answerOf(some).outputs[name] as Quantity).value;
const ids = (some: Inputs, got: GotSet = 'exact'): string[] => answerOf(some, got).findings.map(({ id }) => id);

const leastOf = (setting: Setting): number => Math.min(workingGap(setting), reachGap(setting));

/** Feet 3 m behind plumb, hands at 2 m, a 4 m reach straight up the 3-4-5 way. */
const plain = { standOff: 3, handHeight: 2, poleLength: 3.8, barTip: 0.2, stumble: 0, poleAngle: 0, springUp: 0, movement: 0, requiredDistance: 1, limbLength: 1, limbAngle: 0, cutHeight: 4, lineRuns: 'across' } as const;

describe('Gaps from right triangles', () => {
  it('a level pole under the line: the height between', () => expect(value({ ...plain, lineHeight: 6, lineOffset: -1 }, 'workingGap')).toBeCloseTo(4, 9));
  it('the tip of a level pole 3 m short and 4 m under: 5 m', () => expect(value({ ...plain, lineHeight: 6, lineOffset: 4 }, 'workingGap')).toBeCloseTo(5, 9));
  it('toppling: from the hands 6 m off and 8 m under is 10 m, less the reach of 4 m', () =>
    expect(value({ ...plain, lineHeight: 10, lineOffset: 3 }, 'reachGap')).toBeCloseTo(6, 9));
  it('a stumbling step comes off the level part', () => expect(value({ ...plain, stumble: 1, lineHeight: 10, lineOffset: 4 }, 'reachGap')).toBeCloseTo(6, 9));
  it('along the pole’s way the offset is the level distance to everything', () => {
    expect(value({ ...plain, lineRuns: 'along', lineHeight: 10, lineOffset: 6 }, 'reachGap')).toBeCloseTo(6, 9);
    expect(value({ ...plain, lineRuns: 'along', poleAngle: 90, lineHeight: 9, lineOffset: -4 }, 'workingGap')).toBeCloseTo(5, 9);
  });
  it('a line neither square to the pole nor along it can pass right over you, between cut and feet', () => {
    // Feet 3 m back, the line 2 m from the cut on that side: square on and along both see 1 m or 2 m between, the truth can be none.
    const between = { ...plain, lineHeight: 10, lineOffset: -2 };
    expect(value({ ...between, lineRuns: 'across' }, 'reachGap')).toBeCloseTo(Math.hypot(1, 8) - 4, 9);
    expect(value({ ...between, lineRuns: 'along' }, 'reachGap')).toBeCloseTo(Math.hypot(2, 8) - 4, 9);
    expect(value({ ...between, lineRuns: 'aslant' }, 'reachGap')).toBeCloseTo(4, 9);
    expect(value({ ...between, lineRuns: 'aslant', poleAngle: 90 }, 'workingGap')).toBeCloseTo(4, 9);
  });
  // Feet 3 m back, hands 2 m up, 4 m of pole and bar: seen at some bearing, the highest of it stands 4 m under the line.
  it.each([
    ['up, the tip short of plumb: at plumb as high as the tip', 60, -0.5, 2 + 4 * Math.sin(Math.PI / 3)],
    ['down, the tip short of plumb: at plumb as high as the hands', -60, -0.5, 2],
    ['up, the tip past plumb: as high as the tip', 30, 0.2, 4],
    ['down, the tip past plumb: on your side as high as the hands', -30, -1, 2],
  ])('aslant, the pole held %s', (_, poleAngle, lineOffset, top) =>
    expect(value({ ...plain, lineRuns: 'aslant', poleAngle, lineOffset, lineHeight: top + 4 }, 'workingGap')).toBeCloseTo(4, 9));
  it('a level limb of 1 m under a line 3 m higher: the height between, and less what the parent springs up', () => {
    expect(value({ ...plain, lineHeight: 7, lineOffset: 0 }, 'limbGap')).toBeCloseTo(3, 9);
    expect(value({ ...plain, springUp: 0.8, lineHeight: 7, lineOffset: 0 }, 'limbGap')).toBeCloseTo(2.2, 9);
  });
  it('from a platform everything is the floor’s height nearer, and the basket and boom count', () => {
    const platform = { ...plain, workingFrom: 'platform', platformHeight: 6, boomReach: 0 };
    expect(value({ ...platform, lineHeight: 16, lineOffset: 3 }, 'reachGap')).toBeCloseTo(6, 9);
    // The basket's floor at 8 m is level with the line: 0.9 m of basket, 5 m between.
    expect(value({ ...platform, platformHeight: 8, poleAngle: -30, standOff: 0, lineHeight: 8, lineOffset: -5.9 }, 'workingGap')).toBeCloseTo(5, 9);
    expect(value({ ...platform, boomReach: 4, platformHeight: 8, standOff: 0, lineHeight: 3, lineOffset: -5.2 }, 'workingGap')).toBeLessThan(0.6);
  });
  it('over the line it is the level distance, whatever the straight gap, and a stop', () => {
    const over = { ...plain, workingFrom: 'platform', platformHeight: 20, boomReach: 0, stumble: 0, lineHeight: 6, lineOffset: -9, requiredDistance: 4 };
    expect(value(over, 'reachGap')).toBeCloseTo(2, 9);
    expect(ids(over)).toContain('over');
    expect(ids({ ...over, lineOffset: -12 })).not.toContain('over');
  });
  it('margin is the least gap less distance and movement', () => {
    const at = { ...plain, lineHeight: 10, lineOffset: 3, requiredDistance: 3, movement: 0.7 };
    expect(value(at, 'margin')).toBeCloseTo(Math.min(6, value(at, 'limbGap')) - 3.7, 9);
  });
});

describe('Findings', () => {
  it('what must be left is rounded up, never to nearest: 4 m is 13 ft 1.5 in', () => {
    const needed = figureNamed(calculator, 'needed')!;
    expect(showValue(needed, 4, 'imperial', needed.direction)).toBe('13\u00a0ft\u00a02\u00a0in');
  });
  it('below nothing: stop', () => expect(ids({ ...plain, lineHeight: 6, lineOffset: 0, requiredDistance: 3 })[0]).toBe('tooNear'));
  it('fits as held, not if you stumble', () => {
    const at = { ...plain, lineHeight: 7.5, lineOffset: 1, requiredDistance: 4, limbLength: 0.3, cutHeight: 2 };
    expect(value(at, 'workingGap')).toBeGreaterThan(4);
    expect(ids({ ...at, stumble: 2 })).toContain('notIfYouStumble');
  });
  it('the guess alone can raise the stop', () => {
    const at = { ...plain, lineHeight: 9, lineOffset: 2, requiredDistance: 4, cutHeight: 3 };
    expect(ids(at)).not.toContain('tooNear');
    const judged = answerOf(at, 'judged').findings.find(({ id }) => id === 'tooNear');
    expect(judged).toMatchObject({ level: 'stop', guess: true });
  });
  it('nothing entered for the line’s movement is said', () => expect(ids({ ...plain })).toContain('noMovement'));
  it('a line over the parent limb', () => expect(ids({ ...plain, lineHeight: 20, lineOffset: 0.5 })).toContain('parentSprings'));
  it('within two branch lengths of the line: ask first (network operators, Great Britain)', () => {
    expect(ids({ ...plain, limbLength: 4, lineHeight: 9, lineOffset: 8 })).toContain('askFirst');
    expect(ids({ ...plain, limbLength: 0.3, lineHeight: 20, lineOffset: 15 })).not.toContain('askFirst');
  });
  it('a platform without a height is a problem at its field', () =>
    expect(evaluate(calculator, { ...example, workingFrom: 'platform', platformHeight: 0 })).toMatchObject({ kind: 'problems', problems: [{ input: 'platformHeight' }] }));
});

/** Binary arithmetic, and the search for the offset at which two gaps meet (m). */
const search = 1e-6;

describe('Over the whole input box', () => {
  const inputs = validInputs(calculator);
  it('always answers, in finite figures; survives JSON; comes back from its link', () => {
    fc.assert(fc.property(inputs, gotSets(calculator), (given, got) => {
      const found = evaluate(calculator, given, got);
      expect(found.kind).toBe('answer');
      expect(JSON.stringify(JSON.parse(JSON.stringify(found)))).toBe(JSON.stringify(found));
      const link = readLink(calculator, writeLink(calculator, given, got));
      expect(JSON.stringify(link.kind === 'given' && link.inputs)).toBe(JSON.stringify(given));
    }), { numRuns: 100 });
  });

  it('a longer pole, limb, bar, step or tolerance never gives a larger margin', () => {
    fc.assert(fc.property(inputs, fc.constantFrom('poleLength', 'barTip', 'limbLength', 'limbAngle', 'stumble', 'springUp', 'handHeight', 'movement', 'requiredDistance', 'cutHeight', 'boomReach'), fc.double({ min: 0, max: 1, noNaN: true }), (given, name, more) => {
      const input = calculator.inputs[name as 'poleLength'];
      const grown = { ...given, [name]: (given[name] as number) + more * (input.max - (given[name] as number)) };
      expect(value(grown, 'margin')).toBeLessThanOrEqual(value(given, 'margin') + search);
      const planOn = (got: GotSet) => (answerOf(given, got).outputs['margin'] as Quantity).planOn as number;
      expect(planOn('judged')).toBeLessThanOrEqual(planOn('measured') + search);
      expect(planOn('measured')).toBeLessThanOrEqual(planOn('exact') + search);
    }), { numRuns: 50 });
  });

  it('a higher line or one further out on its own side never gives a smaller margin; mirrored, a line along the pole is the same', () => {
    fc.assert(fc.property(inputs, fc.double({ min: 0, max: 5, noNaN: true }), (given, more) => {
      const height = Math.min(60, (given['lineHeight'] as number) + more);
      expect(value({ ...given, lineHeight: height }, 'margin')).toBeGreaterThanOrEqual(value(given, 'margin') - search);
      const along = { ...given, lineRuns: 'along' };
      expect(value({ ...along, lineOffset: -(given['lineOffset'] as number) }, 'leastGap')).toBeCloseTo(value(along, 'leastGap'), 9);
    }), { numRuns: 100 });
  });

  it('a line aslant never shows more room than at any bearing between, and no less than the nearest of them', () => {
    fc.assert(fc.property(inputs, (given) => {
      const setting = settingOf({ ...given, lineRuns: 'aslant' });
      const { lineOffset: x, lineHeight: z, standOff, reach, poleAngle } = setting;
      const hands = setting.floor + setting.handHeight;
      const rad = Math.PI / 180;
      // Seen at each bearing: the level lengths of the square view, shortened alike.
      const seen = Array.from({ length: 2001 }, (_, i) => i / 2000);
      const held = seen.map((c) => gapUnder({ x, z }, [{ x: -standOff * c, z: hands }, { x: (reach * Math.cos(poleAngle * rad) - standOff) * c, z: hands + reach * Math.sin(poleAngle * rad) }]));
      const fallen = seen.map((c) => gapToReach({ x, z }, { x: -standOff * c, halfWidth: setting.stumble, top: hands }, reach));
      const plainly = { ...setting, platform: null };
      expect(workingGap(plainly)).toBeLessThanOrEqual(Math.min(...held) + search);
      expect(reachGap(plainly)).toBeLessThanOrEqual(Math.min(...fallen) + search);
      // 2,000 bearings of at most 21 m of level length lie 11 mm apart.
      expect(workingGap(plainly)).toBeGreaterThan(Math.min(...held) - 0.012);
      expect(reachGap(plainly)).toBeGreaterThan(Math.min(...fallen) - 0.012);
      for (const lineRuns of ['across', 'along'] as const) expect(leastOf({ ...setting, lineRuns })).toBeGreaterThanOrEqual(leastOf(setting) - search);
    }), { numRuns: 100 });
  });

  it('low and high hold a dense sample of what the guesses allow', () => {
    const uncertain = Object.entries(calculator.inputs).filter(([, input]) => input.kind === 'quantity' && input.tolerance !== null);
    fc.assert(fc.property(inputs, fc.array(fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 10, maxLength: 10 }), { minLength: 20, maxLength: 20 }), (given, samples) => {
      const answer = answerOf(given, 'judged');
      for (const sample of samples) {
        const shaken: { [name: string]: Inputs[string] } = { ...given };
        uncertain.forEach(([name, input], i) => {
          if (input.kind !== 'quantity' || input.tolerance === null) return;
          const t = ('label' in input.tolerance ? input.tolerance.label : input.tolerance.judged) as { share?: number; least?: number };
          const at = given[name] as number;
          const half = Math.max((t.share ?? 0) * Math.abs(at), t.least ?? 0);
          shaken[name] = Math.max(input.floor, Math.min(input.ceiling, at + half * (sample[i] as number)));
        });
        const there = calculator.compute(shaken as never);
        if (there.kind !== 'answer') throw new Error('not an answer');
        for (const [name, figure] of Object.entries(answer.outputs)) {
          const { low, high } = figure as Quantity;
          expect(there.outputs[name as 'margin'] as number).toBeGreaterThanOrEqual(low - search);
          expect(there.outputs[name as 'margin'] as number).toBeLessThanOrEqual(high + search);
        }
      }
    }), { numRuns: 80 });
  });

  it('plans on the lower end', () => {
    fc.assert(fc.property(inputs, (given) => {
      for (const figure of Object.values(answerOf(given, 'judged').outputs)) expect((figure as Quantity).planOn).toBe((figure as Quantity).low);
    }), { numRuns: 100 });
  });

  it('anything over the line within the distance is a stop', () => {
    fc.assert(fc.property(inputs, (given) => {
      const at = { ...given, workingFrom: 'platform', platformHeight: 30, lineHeight: 10, lineOffset: 0, standOff: 1 };
      expect(ids(at)).toEqual(expect.arrayContaining(['tooNear', 'over']));
    }), { numRuns: 100 });
  });
});
