/** What the walk over falls leaves out because it reaches no further: never a figure that another way of asking tells. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { eachCell, type Given } from '#core/formulas/fall-cells.ts';
import { shapes } from '#core/formulas/falling-limb.ts';
import { touching } from '#core/formulas/touching.ts';
import { seeded } from '../calculators/box.ts';

const degree = Math.PI / 180;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const givens = fc.record({
  height: fc.tuple(between(0.3, 12), between(0, 8)), start: fc.tuple(between(-60, 79), between(0, 20)), slope: fc.tuple(between(-30, 20), between(0, 10)),
  span: fc.constantFrom(30 * degree, 60 * degree, Math.PI), shape: fc.constantFrom(shapes.whole, shapes.pole),
}).map(({ height, start, slope, ...rest }): Given => ({
  ...rest, height: [height[0], height[0] + height[1]],
  start: [start[0] * degree, Math.min(89, start[0] + start[1]) * degree], slope: [slope[0] * degree, (slope[0] + slope[1]) * degree],
}));
const settings = { numRuns: 400 };

describe('left out', () => {
  it('asked for one side alone, it is told the same', () => {
    let told = 0;
    fc.assert(fc.property(givens, fc.constantFrom('inward' as const, 'outward' as const), (given, side) => {
      const all = touching(given, null);
      const alone = touching(given, null, side);
      if (all === null) expect(alone).toBeNull();
      else expect(alone?.[side].value).toBe(all[side].value);
      told += Number(all !== null);
    }), settings);
    expect(told).toBeGreaterThan(200);
  });
  it('no column has a centre further than it says, over all the falls there are', () => {
    let falls = 0;
    fc.assert(fc.property(givens, fc.integer({ min: 1, max: 2_000_000_000 }), (given, seed) => {
      const next = seeded(seed);
      const draw = (from: number, to: number): number => from + (to - from) * next();
      const { centre: c, aboutButt } = given.shape;
      eachCell(given, false, ({ out, back, from, to }) => {
        // One fall of the column: lengths of the limb, gravity one.
        const [a, slope, height] = [draw(from, to), draw(...given.slope), draw(...given.height)];
        const start = draw(Math.max(a, given.start[0]), Math.max(a, Math.min(given.start[1], a + given.span)));
        const spin = Math.sqrt(((2 * c) / aboutButt) * Math.max(0, Math.sin(start) - Math.sin(a)) * draw(0, 1));
        falls++;
        let beyond = 0;
        for (let t = 0; ; t += 0.05) {
          const x = c * (Math.cos(a) + spin * t * Math.sin(a));
          const y = height + c * (Math.sin(a) - spin * t * Math.cos(a)) - (t * t) / 2;
          if (y < x * Math.tan(slope)) break;
          beyond = Math.max(beyond, x - out, -x - back);
        }
        expect(beyond, JSON.stringify({ a, slope, height, start, spin })).toBeLessThan(1e-9);
        return false;
      }, () => undefined);
    }), settings);
    expect(falls).toBeGreaterThan(2000);
  });
  it('past what is known already it is told the same, and what is known where there is no more', () => {
    fc.assert(fc.property(givens, between(0.5, 1.5), (given, share) => {
      const all = touching(given, [0, 1]);
      if (all === null) return;
      const known = { outward: all.outward.value * share, inward: all.inward.value * share, passingOut: all.passingOut.value * share, passingIn: all.passingIn.value * share, time: all.time.value / share, hit: all.hit.value * share };
      const again = touching(given, [0, 1], null, known)!;
      for (const figure of ['outward', 'inward', 'passingOut', 'passingIn', 'hit'] as const) expect(again[figure].value, figure).toBe(Math.max(all[figure].value, known[figure]));
      expect(again.time.value).toBe(Math.min(all.time.value, known.time));
    }), settings);
  });
});
