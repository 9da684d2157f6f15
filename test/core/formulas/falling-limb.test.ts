import { describe, expect, it } from 'vitest';
import { firstTouch, flightFrom, groundingAngle, hingeSpin, hingeTime, type Limb, shapes, touchSpeed } from '#core/formulas/falling-limb.ts';
import { gravity } from '#core/formulas/gravity.ts';
import { fallOf } from './one-fall.ts';

const degree = Math.PI / 180;
const rod = (length: number): Limb => ({ length, shape: shapes.whole });

describe('hinged rod, against physics course threads (source falling-rod)', () => {
  it('1 m, level to hanging: 5.4 rad/s as printed', () => expect(hingeSpin(rod(1), 0, -Math.PI / 2, 1)).toBeCloseTo(5.42, 2));
  it('25 m, upright to the ground: the tip at √(3 g L), 27.12 m/s', () =>
    expect(Math.abs(hingeSpin(rod(25), Math.PI / 2, 0, 1) * 25 - 27.12)).toBeLessThan(0.02));
  // A published homework answer gives 3.5 rad/s here: it adds a term of translation to an inertia taken about the pivot.
  it('1.2 m, level to hanging: 4.95 rad/s, not the published 3.5', () => {
    const spin = hingeSpin(rod(1.2), 0, -Math.PI / 2, 1);
    expect(Math.abs(spin - 4.95)).toBeLessThan(0.005);
    expect(Math.abs(spin - 3.5)).toBeGreaterThan(1);
  });
  it('the tip is 1.225 times as fast as a stone from the same height', () =>
    expect((hingeSpin(rod(2), 0, -Math.PI / 2, 1) * 2) / Math.sqrt(2 * gravity * 2)).toBeCloseTo(1.225, 3));
  it('a cone: ω² = 5 g ÷ L, from the moment of inertia of a cone about its base, m L² ÷ 10', () =>
    expect(hingeSpin({ length: 3, shape: shapes.pole }, 0, -Math.PI / 2, 1) ** 2).toBeCloseTo((5 * gravity) / 3, 9));
});

describe('time on the hinge', () => {
  // Half a quarter period of a great swing: T/4 = √(2L/3g)·K(sin 45°), K = 1.854074677 (Abramowitz and Stegun, table 17.1).
  it('level to hanging, against the complete elliptic integral', () =>
    expect(hingeTime(rod(2), 0, -Math.PI / 2, 1)).toBeCloseTo(Math.sqrt((2 * 2) / (3 * gravity)) * 1.854074677, 6));
  it('none for no turn, endless where the hinge eats it all', () => {
    expect(hingeTime(rod(2), 0.3, 0.3, 1)).toBe(0);
    expect(hingeTime(rod(2), 0.3, 0, 0)).toBe(Infinity);
  });
});

describe('grounding on the hinge', () => {
  it('level ground: where the tip is as low as the cut is high', () =>
    expect(groundingAngle(rod(4), { cutHeight: 2, start: 0, slope: 0 })).toBeCloseTo(-30 * degree, 9));
  it('none where it clears the ground', () => {
    expect(groundingAngle(rod(2), { cutHeight: 3, start: 0, slope: 0 })).toBeNull();
  });
  it('ground that rises meets it sooner', () => {
    const rising = groundingAngle(rod(4), { cutHeight: 2, start: 0.3, slope: 10 * degree }) as number;
    expect(rising).toBeGreaterThan(-30 * degree);
    expect(2 + 4 * Math.sin(rising)).toBeCloseTo(4 * Math.cos(rising) * Math.tan(10 * degree), 9);
  });
});

describe('limits', () => {
  it('let go at rest: it falls as a stone and does not turn', () => {
    const touch = firstTouch(rod(2), flightFrom(rod(2), { cutHeight: 5, start: 0.2, slope: 0 }, 0.2, 0), 0);
    expect(touch.time).toBeCloseTo(Math.sqrt(10 / gravity), 6);
    expect(touch).toMatchObject({ end: 'butt', angle: 0.2 });
    expect(touch.x).toBeCloseTo(0, 6);
  });
  it('a limb of no length is a stone under its cut', () => {
    const touch = firstTouch(rod(1e-6), flightFrom(rod(1e-6), { cutHeight: 5, start: 0.5, slope: 0 }, 0, 1), 0);
    expect(Math.abs(touch.x)).toBeLessThan(0.01);
  });
  it('hanging still and dropped: a length either way, and what a limb that goes over glides on', () => {
    const limb = rod(2);
    const place = { cutHeight: 4, start: -Math.PI / 2, slope: 0 };
    expect(firstTouch(limb, flightFrom(limb, place, -Math.PI / 2, 0), 0).time).toBeCloseTo(Math.sqrt(4 / gravity), 6);
    const { inward, outward } = fallOf(limb, place, -Math.PI / 2, 0, 0, 1);
    for (const reach of [inward, outward]) {
      expect(reach).toBeGreaterThan(1.999);
      expect(reach).toBeLessThan(2.2);
    }
  });
  it('a rod that falls flat lies where it fell', () => {
    const { inward, outward } = fallOf(rod(2), { cutHeight: 4, start: 0, slope: 0 }, 0, 0, 0, 1);
    expect(inward).toBeLessThan(0.1);
    expect(outward).toBeCloseTo(2, 1);
  });
});

describe('energy', () => {
  it.each(['whole', 'pole'] as const)('%s: what it had on the hinge and fell since is what it has at the touch', (name) => {
    for (let k = 1; k < 60; k++) {
      const shape = shapes[name];
      const limb: Limb = { length: 0.5 + (k % 7) * 0.6, shape };
      const start = ((k * 13) % 80) * degree - 0.3;
      const release = start - ((k * 7) % 60) * degree;
      const flight = flightFrom(limb, { cutHeight: 4 + (k % 5), start, slope: 0 }, Math.max(release, -1.5), 1);
      const touch = firstTouch(limb, flight, ((k % 9) - 4) * 4 * degree);
      const centre = shape.centre * limb.length;
      const inertia = (shape.aboutButt - shape.centre ** 2) * limb.length ** 2;
      const yThere = flight.y + flight.vy * touch.time - (gravity * touch.time ** 2) / 2;
      const before = (flight.vx ** 2 + flight.vy ** 2 + inertia * flight.spin ** 2) / 2 + gravity * flight.y;
      const after = (touch.vx ** 2 + touch.vy ** 2 + inertia * touch.spin ** 2) / 2 + gravity * yThere;
      expect(after).toBeCloseTo(before, 6);
      // On the hinge: kinetic energy is the height the centre lost.
      expect((flight.vx ** 2 + flight.vy ** 2 + inertia * flight.spin ** 2) / 2)
        .toBeCloseTo(gravity * centre * (Math.sin(start) - Math.sin(flight.angle)), 9);
      expect(touchSpeed(limb, touch)).toBeGreaterThan(0);
    }
  });
});
