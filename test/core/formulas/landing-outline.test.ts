/** The outline of a landing: square beside, at the tip and at the stem side what the drop zone says; between, the same turned. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { landingOutline, landingReach, stripTo, type Strip } from '#core/formulas/landing-outline.ts';

const strip: Strip = { outward: 4, inward: 3, half: 1.5, swing: 20 };
const cos = (d: number) => Math.cos((d * Math.PI) / 180);

describe('all round', () => {
  it('is the same on either side, closed, and reaches square beside as far as is told', () => {
    const around = landingOutline(stripTo(4, 3, 1.8, 20));
    expect(around[0]![0]).toBeCloseTo(around.at(-1)![0], 9);
    expect(around[30]![1]).toBeCloseTo(1.8, 9);
    expect(around[30]![0]).toBeCloseTo(0, 9);
    around.forEach(([x, y], k) => expect([x, -y]).toEqual([expect.closeTo(around[120 - k]![0], 9), expect.closeTo(around[120 - k]![1], 9)]));
  });
});

describe('how far a landing reaches', () => {
  it('at the tip side and the stem side: to its ends, as far round as it swings', () => {
    for (const turn of [0, 10, 20]) expect([landingReach(strip, turn), landingReach(strip, 180 - turn)]).toEqual([4, 3]);
  });
  it('square beside: half its width over the cosine of the swing', () => {
    expect(landingReach(strip, 90)).toBeCloseTo(1.5 / cos(20), 9);
  });
  it('off square by so much it is as if it swung by so much more', () => {
    expect(landingReach(strip, 60)).toBeCloseTo(1.5 / cos(20 + 30), 9);
    expect(landingReach(strip, 120)).toBeCloseTo(1.5 / cos(20 + 30), 9);
  });
  it('swung a quarter round each way it reaches its ends over each half', () => {
    expect([0, 45, 90, 135, 180].map((angle) => landingReach({ ...strip, swing: 90 }, angle))).toEqual([4, 4, 4, 3, 3]);
  });
  it('holds every turned strip: a point of it lies inside, whatever way the limb swings', () => {
    const share = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(fc.property(share, share, share, (swung, along, across) => {
      const turn = swung * strip.swing;
      const [x, y] = [along * (along < 0 ? strip.inward : strip.outward), across * strip.half];
      // The strip's corners lie beyond the circle of its end: limbs are narrow there.
      fc.pre(Math.hypot(x, y) <= (along < 0 ? strip.inward : strip.outward));
      const angle = Math.abs((Math.atan2(y, x) * 180) / Math.PI + turn);
      expect(Math.hypot(x, y)).toBeLessThanOrEqual(landingReach(strip, Math.min(angle, 360 - angle)) + 1e-9);
    }), { numRuns: 500 });
  });
});
