import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { alongPoleForce, frontHandForce, handsWeight, type Held, leverMoment, rearHandForce } from '#core/formulas/held-pole.ts';

const g = 9.80665;
const any = fc.record({
  mass: fc.double({ min: 3, max: 12, noNaN: true }), balance: fc.double({ min: 0.2, max: 3, noNaN: true }),
  gripSpacing: fc.double({ min: 0.4, max: 1.5, noNaN: true }), poleAngle: fc.double({ min: 0, max: 75, noNaN: true }),
  strapShare: fc.double({ min: 0, max: 100, noNaN: true }), strapAt: fc.double({ min: 0, max: 2, noNaN: true }),
});

describe('A held pole', () => {
  it('balances: forces add up to nothing, and so do moments about the front hand and about the point of balance', () => {
    fc.assert(fc.property(any, (h: Held) => {
      const a = (h.poleAngle * Math.PI) / 180;
      const [across, along] = [Math.cos(a), Math.sin(a)];
      const front = frontHandForce(h);
      const rear = rearHandForce(h);
      const strap = (h.mass * g * h.strapShare) / 100;
      expect(front + rear + strap * across).toBeCloseTo(h.mass * g * across, 6);
      expect(alongPoleForce(h) + strap * along).toBeCloseTo(h.mass * g * along, 6);
      expect(rear * -h.gripSpacing + strap * across * (h.strapAt - h.gripSpacing)).toBeCloseTo(h.mass * g * across * (h.balance - h.gripSpacing), 6);
      expect(rear * -h.balance + front * (h.gripSpacing - h.balance) + strap * across * (h.strapAt - h.balance)).toBeCloseTo(0, 6);
      expect(leverMoment(h)).toBeCloseTo(front * h.gripSpacing, 6);
    }));
  });

  it('carries the same upright sum at any angle: the angle moves load between the hands, it does not take it away', () => {
    fc.assert(fc.property(any, (h: Held) => {
      const a = (h.poleAngle * Math.PI) / 180;
      const up = (frontHandForce(h) + rearHandForce(h)) * Math.cos(a) + alongPoleForce(h) * Math.sin(a);
      expect(up).toBeCloseTo(handsWeight(h), 6);
    }));
  });

  it('takes nothing off the lever when the strap hooks on at the rear hand', () => {
    const h: Held = { mass: 7, balance: 1.2, gripSpacing: 0.8, poleAngle: 45, strapShare: 60, strapAt: 0 };
    expect(leverMoment(h)).toBeCloseTo(leverMoment({ ...h, strapShare: 0 }), 9);
  });
});
