import { describe, expect, it } from 'vitest';
import { recent, riseOfEdge, steady } from '#islands/height/tilt.ts';

/**
 * The long edge of a device turned by alpha, beta, gamma as the W3C Device Orientation specification (section on the
 * rotation matrix) has it: the matrix multiplied out by hand from its three turns; the edge is its second column.
 */
const edge = (alpha: number, beta: number): number[] => {
  const [a, b] = [alpha, beta].map((d) => (d * Math.PI) / 180) as [number, number];
  return [-Math.cos(b) * Math.sin(a), Math.cos(a) * Math.cos(b), Math.sin(b)];
};

describe('tilt', () => {
  it('is the rise of the long edge, whichever way the phone is turned', () => {
    for (let alpha = 0; alpha < 360; alpha += 40) {
      for (let beta = -175; beta <= 175; beta += 10) {
        const [x, y, z] = edge(alpha, beta) as [number, number, number];
        expect(riseOfEdge(beta)).toBeCloseTo((Math.atan2(z, Math.hypot(x, y)) * 180) / Math.PI, 9);
      }
    }
  });

  const readings = (angles: number[], every = 50) => angles.map((angle, i) => ({ at: i * every, angle }));

  it('takes the mean of a steady second', () => {
    const found = steady(readings(Array.from({ length: 21 }, (_, i) => (i % 2 ? 17.4 : 17))));
    expect(found?.angle).toBeCloseTo(17.19, 2);
    expect(found?.spread).toBeCloseTo(0.21, 2);
  });

  it('waits for a whole second, enough readings and a steady hand', () => {
    expect(steady([])).toBeNull();
    expect(steady(readings(Array.from({ length: 10 }, () => 17)))).toBeNull();
    expect(steady(readings([17, 17, 17, 17], 300))).toBeNull();
    expect(steady(readings(Array.from({ length: 21 }, (_, i) => (i % 2 ? 15 : 19))))).toBeNull();
  });

  it('forgets what is older than a second', () => {
    expect(recent(readings([1, 2, 3], 800), 1600).map((r) => r.angle)).toEqual([2, 3]);
  });
});
