/**
 * What a limb can reach against the motion itself, run through in small steps: an even rod that turns about the cut from
 * rest (energy: ω² = 3g(sin a − sin θ)/l), is let go, and flies freely with the spin it had (Newton). Nothing of it may
 * come outside what the formulas say, for any release, any loss of energy, any direction in plan.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gapToLimb, limbHalfWidth, limbTop } from '#core/formulas/limb-reach.ts';

const g = 9.80665;
const rad = Math.PI / 180;
type Place = { out: number; up: number };

/** The two ends and the middle of a rod at `time` after release. */
const flight = (length: number, start: number, release: number, kept: number, time: number): Place[] => {
  const omega = kept * Math.sqrt(Math.max(0, (3 * g * (Math.sin(start * rad) - Math.sin(release * rad))) / length));
  const [c, s] = [Math.cos(release * rad), Math.sin(release * rad)];
  const middle = {
    out: (length / 2) * (c + omega * s * time),
    up: (length / 2) * (s - omega * c * time) - (g * time * time) / 2,
  };
  const turn = release * rad - omega * time;
  return [-0.5, 0, 0.5].map((part) => ({ out: middle.out + part * length * Math.cos(turn), up: middle.up + part * length * Math.sin(turn) }));
};

const angle = fc.integer({ min: -85, max: 88 });
const share = fc.double({ min: 0, max: 1, noNaN: true });
const length = fc.double({ min: 0.3, max: 8, noNaN: true });

describe('The reach of a limb', () => {
  it('holds every part of the turn and the flight', () => {
    fc.assert(fc.property(length, angle, share, share, fc.double({ min: 0, max: 2.5, noNaN: true }), (l, start, way, kept, time) => {
      const release = start - way * (start + 90);
      for (const { out, up } of flight(l, start, release, kept, time)) {
        expect(up).toBeLessThanOrEqual(limbTop(l, start) + 1e-9);
        expect(Math.abs(out)).toBeLessThanOrEqual(limbHalfWidth(l, start, Math.min(up, limbTop(l, start))) + 1e-9);
      }
    }), { numRuns: 6000 });
  });

  it('is no more than a length, and a hand’s breadth, at the height of the cut for a level limb', () => {
    expect(limbHalfWidth(2, 0, 0)).toBeGreaterThanOrEqual(2);
    expect(limbHalfWidth(2, 0, 0)).toBeLessThan(2.01);
  });

  it('shrinks nowhere downward, and grows with length and angle', () => {
    fc.assert(fc.property(length, angle, fc.double({ min: -12, max: 8, noNaN: true }), share, (l, a, up, down) => {
      const at = Math.min(up, limbTop(l, a));
      const here = limbHalfWidth(l, a, at);
      expect(limbHalfWidth(l, a, at - down * 5)).toBeGreaterThanOrEqual(here - 1e-9);
      expect(limbHalfWidth(l * 1.2, a, at)).toBeGreaterThanOrEqual(here - 1e-9);
      expect(limbHalfWidth(l, Math.min(90, a + 7), at)).toBeGreaterThanOrEqual(here - 1e-9);
    }), { numRuns: 2000 });
  });
});

describe('The gap to it', () => {
  it('turning the limb in plan, and letting it fall, never brings it nearer than the answer says', () => {
    fc.assert(fc.property(
      length, angle, share, share, fc.double({ min: 0, max: 2, noNaN: true }), fc.double({ min: 0, max: 360, noNaN: true }),
      fc.double({ min: -20, max: 20, noNaN: true }), fc.double({ min: -6, max: 15, noNaN: true }),
      (l, start, way, kept, time, bearing, x, up) => {
        const gap = gapToLimb(x, up, l, start);
        for (const part of flight(l, start, start - way * (start + 90), kept, time)) {
          const across = part.out * Math.cos(bearing * rad);
          // A part over the line is as near as it is level.
          expect(gap).toBeLessThanOrEqual(Math.hypot(x - across, Math.max(0, up - part.up)) + 1e-9);
        }
      }), { numRuns: 6000 });
  });
  it('right over a level limb it is the height between', () => expect(gapToLimb(0, 4, 2, 0)).toBeCloseTo(4, 9));
  it('is little short of the nearest of a fine sample of widths', () => {
    fc.assert(fc.property(fc.double({ min: -20, max: 20, noNaN: true }), fc.double({ min: -6, max: 15, noNaN: true }), length, angle, (x, up, l, a) => {
      const top = limbTop(l, a);
      let fine = Infinity;
      for (let h = Math.min(up, top); h > Math.min(up, top) - 25; h -= 0.02) fine = Math.min(fine, Math.hypot(Math.max(0, Math.abs(x) - limbHalfWidth(l, a, h)), up - h));
      const gap = gapToLimb(x, up, l, a);
      expect(gap).toBeLessThanOrEqual(fine + 1e-9);
      expect(gap).toBeGreaterThanOrEqual(fine * 0.95 - 0.05);
    }), { numRuns: 300 });
  });
  it('is the same on both sides', () => expect(gapToLimb(-5, 1, 2, 30)).toBe(gapToLimb(5, 1, 2, 30)));
  it('is nothing inside', () => expect(gapToLimb(1, -1, 2, 20)).toBe(0));
});
