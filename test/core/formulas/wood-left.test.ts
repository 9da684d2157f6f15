import { describe, expect, it } from 'vitest';
import { releaseDepth, stressLeft, woodLeft } from '#core/formulas/wood-left.ts';

describe('section of the wood left, against handbook properties of the circle and the half circle', () => {
  it('nothing cut: π d²/4, π d⁴/64, and M d/2 I = 32 M / π d³', () => {
    const whole = woodLeft(100, 0, 0);
    expect(whole.area).toBeCloseTo((Math.PI * 100 ** 2) / 4, 6);
    expect(whole.inertia / ((Math.PI * 100 ** 4) / 64)).toBeCloseTo(1, 9);
    expect(whole.centroid).toBeCloseTo(0, 9);
    // Dahle and Grabosky 2012 give M·Y ÷ (0.25 π r⁴).
    expect(stressLeft(1000, whole) / ((32 * 1000 * 1000) / (Math.PI * 100 ** 3))).toBeCloseTo(1, 9);
  });
  it('a half circle: centroid 0.4244 r from the flat, second moment 0.1098 r⁴', () => {
    for (const half of [woodLeft(100, 50, 0), woodLeft(100, 0, 50)]) {
      expect(half.area).toBeCloseTo((Math.PI * 50 ** 2) / 2, 6);
      expect(Math.abs(half.centroid) / 50).toBeCloseTo(0.4244, 4);
      expect(half.inertia / 50 ** 4).toBeCloseTo(0.1098, 4);
      expect(half.edge / 50).toBeCloseTo(1 - 0.4244, 4);
    }
  });
});

describe('depth of the release cut', () => {
  it('no moment: it may be cut to the end', () => {
    for (const first of [0, 10, 25, 40]) expect(releaseDepth(0, 100, first, 40)).toBe(100 - first);
    // Next to none: all but the last hair, as the section is then lost in rounding.
    for (const first of [0, 10, 25, 40]) expect(releaseDepth(1e-12, 100, first, 40)).toBeCloseTo(100 - first, 3);
  });
  it('the wood left is at its strength there, and under it before', () => {
    const depth = releaseDepth(300, 100, 25, 40);
    expect(stressLeft(300, woodLeft(100, 25, depth)) / 40).toBeCloseTo(1, 3);
    expect(stressLeft(300, woodLeft(100, 25, depth - 1))).toBeLessThan(40);
  });
  // A round bar planed flat by a sliver is stiffer for its depth, a known oddity of the circle: under 2 % here.
  it('stress grows with the depth of the cut, but for the first sliver', () => {
    for (const first of [0, 20, 40]) {
      let before = 0;
      for (let depth = 0; depth < 100 - first - 0.5; depth += 0.5) {
        const now = stressLeft(300, woodLeft(100, first, depth));
        expect(now).toBeGreaterThanOrEqual(before * (depth < 8 ? 0.98 : 1));
        before = now;
      }
    }
  });
  it('less moment or stronger wood: deeper; too much: at once; none: all the way', () => {
    expect(releaseDepth(200, 100, 25, 40)).toBeGreaterThan(releaseDepth(300, 100, 25, 40));
    expect(releaseDepth(300, 100, 25, 60)).toBeGreaterThan(releaseDepth(300, 100, 25, 40));
    expect(releaseDepth(1e6, 100, 25, 40)).toBe(0);
  });
});
