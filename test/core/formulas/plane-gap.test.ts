/** Gaps against an independent geometry library (@flatten-js/core): the space under an outline as a polygon, a point beside it. */
import Flatten from '@flatten-js/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gapToReach, gapUnder, type Point } from '#core/formulas/plane-gap.ts';

const { point, Polygon, circle, segment } = Flatten;
const deep = -1000;
const metres = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((x) => Math.round(x * 1000) / 1000);

/** The gap by the library: 0 inside. */
const byLibrary = (p: Point, outline: readonly Point[]): number => {
  const corners = [...outline, { x: (outline.at(-1) as Point).x, z: deep }, { x: (outline[0] as Point).x, z: deep }];
  const under = new Polygon(corners.map(({ x, z }) => point(x, z)));
  const at = point(p.x, p.z);
  return under.contains(at) ? 0 : (at.distanceTo(under)[0] as number);
};

const outline = fc.tuple(fc.uniqueArray(metres(-20, 20), { minLength: 2, maxLength: 5 }), fc.array(metres(0, 15), { minLength: 5, maxLength: 5 }))
  .map(([xs, zs]) => xs.sort((a, b) => a - b).map((x, i) => ({ x, z: zs[i] as number })) as [Point, ...Point[]])
  .filter((points) => points.every(({ x }, i) => i === 0 || x - (points[i - 1] as Point).x > 0.01));

describe('The gap to what stands under an outline', () => {
  it('is what the library measures', () => {
    fc.assert(fc.property(outline, metres(-40, 40), metres(0.01, 60), (line, x, z) => {
      const wanted = byLibrary({ x, z }, line);
      expect(gapUnder({ x, z }, line)).toBeCloseTo(wanted, 6);
    }), { numRuns: 1000 });
  });
  it('is the same mirrored', () => {
    fc.assert(fc.property(outline, metres(-40, 40), metres(0.01, 60), (line, x, z) => {
      const mirrored = [...line].reverse().map((p) => ({ x: -p.x, z: p.z })) as [Point, ...Point[]];
      expect(gapUnder({ x: -x, z }, mirrored)).toBeCloseTo(gapUnder({ x, z }, line), 9);
    }));
  });
  it('is level to what stands higher', () => expect(gapUnder({ x: 3, z: 5 }, [{ x: -1, z: 9 }, { x: 1, z: 9 }])).toBe(2));
  it('of one upright alone', () => expect(gapUnder({ x: 3, z: 5 }, [{ x: 0, z: 1 }])).toBe(5));
});

describe('The gap to a length that turns about a strip', () => {
  it('is the library’s distance to the strip less the length, never under 0', () => {
    const strip = fc.record({ x: metres(-20, 20), halfWidth: metres(0.01, 3), top: metres(1, 12) });
    fc.assert(fc.property(strip, metres(0.5, 7), metres(-40, 40), metres(0.01, 60), ({ x, halfWidth, top }, length, px, pz) => {
      const toStrip = byLibrary({ x: px, z: pz }, [{ x: x - halfWidth, z: top }, { x: x + halfWidth, z: top }]);
      expect(gapToReach({ x: px, z: pz }, { x, halfWidth, top }, length)).toBeCloseTo(Math.max(0, toStrip - length), 6);
    }), { numRuns: 1000 });
  });
  it('holds every end of a pole in it: none is nearer than the answer says', () => {
    fc.assert(fc.property(metres(0, 2), metres(2, 6), fc.double({ min: 0, max: Math.PI, noNaN: true }), metres(-2, 2), metres(-15, 15), metres(3, 20), (half, length, angle, step, px, pz) => {
      const hand = { x: Math.max(-half, Math.min(half, step)), z: 2 };
      const pole = segment(point(hand.x, hand.z), point(hand.x + length * Math.cos(angle), hand.z + length * Math.sin(angle)));
      const real = point(px, pz).distanceTo(pole)[0] as number;
      expect(gapToReach({ x: px, z: pz }, { x: 0, halfWidth: half, top: 2 }, length)).toBeLessThanOrEqual(real + 1e-9);
    }), { numRuns: 500 });
  });
  it('over one point it is the distance to a circle', () => {
    const round = circle(point(0, 2), 3);
    expect(gapToReach({ x: 4, z: 6 }, { x: 0, halfWidth: 0, top: 2 }, 3)).toBeCloseTo(point(4, 6).distanceTo(round)[0] as number, 9);
  });
});
