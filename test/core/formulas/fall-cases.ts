/** Seeded falls, and how our sums stand against a rigid-body engine: for the tests (200) and the bench (2,000). */
import { firstTouch, flightFrom, hingeTime, type Limb, type Place, shapes } from '#core/formulas/falling-limb.ts';
import { landing, lastAngle, startsClear } from '#core/formulas/landing.ts';
import { fallOf } from './one-fall.ts';
import { seeded } from '../calculators/box.ts';
import { simulate } from './rigid-body.ts';

export type Compared = {
  label: string;
  /** Place of the first touch, share of the length; time on the hinge and in the air, s and share. */
  place: number; hinge: number; flight: number; flightTime: number; sameEnd: boolean;
  /** How far beyond the envelope the engine's limb lies at rest, m; under 0 within. */
  beyond: number;
  /** The same beyond what is told of this one fall, in lengths. */
  beyondOwn: number;
  /** It touches at a graze, slower than a metre a second into the ground: the engine's discs, a millimetre thick, meet it sooner. */
  grazes: boolean;
};

export const compareFalls = (count: number, seed: number): Compared[] => {
  const next = seeded(seed);
  const between = (low: number, high: number): number => low + (high - low) * next();
  const degree = Math.PI / 180;
  const all: Compared[] = [];
  while (all.length < count) {
    const shape = next() < 0.5 ? shapes.whole : shapes.pole;
    const limb: Limb = { length: between(0.5, 4.5), shape };
    const place: Place = { cutHeight: between(1.5, 8.5), start: between(-30, 75) * degree, slope: between(-20, 20) * degree };
    const span = [30 * degree, 60 * degree, Math.PI][Math.floor(next() * 3)]!;
    const [turn, kept] = [next() * 0.98, next()];
    // A graze on the hinge, or a start on the ground, is decided by the engine's discs and slop.
    if (!startsClear(limb.length + 0.05, place) || Math.abs(place.cutHeight * Math.cos(place.slope) - limb.length) < 0.03) continue;
    const last = lastAngle(limb, place, span);
    const release = place.start + (last.angle - place.start) * turn;
    const seen = simulate({ length: limb.length, centre: shape.centre, aboutButt: shape.aboutButt, ...place, release, kept });
    const touch = firstTouch(limb, flightFrom(limb, place, release, kept), place.slope);
    const arm = (touch.end === 'butt' ? -shape.centre : 1 - shape.centre) * limb.length;
    const [endX, endY] = [touch.vx + arm * touch.spin * Math.sin(touch.angle), touch.vy - arm * touch.spin * Math.cos(touch.angle)];
    const own = fallOf(limb, place, release, kept, 0, 0);
    const one = (value: number): [number, number] => [value, value];
    const found = landing({ cutHeight: one(place.cutHeight), length: one(limb.length), start: one(place.start), slope: one(place.slope), shape, span, low: 0, high: 0 })!;
    const [outward, inward] = [Math.max(limb.length, found.outward.value), Math.max(limb.length, found.inward.value)];
    all.push({
      label: JSON.stringify({ length: limb.length, ...place, release, kept }),
      place: Math.abs(seen.x - touch.x) / limb.length,
      hinge: Math.abs(seen.hingeTime - hingeTime(limb, place.start, release, 1)),
      flight: Math.abs(seen.flight - touch.time),
      flightTime: touch.time,
      grazes: endX * Math.sin(place.slope) - endY * Math.cos(place.slope) < 1,
      sameEnd: seen.end === touch.end,
      beyondOwn: Math.max(Math.max(...seen.rest) - own.outward, -Math.min(...seen.rest) - own.inward) / limb.length,
      beyond: Math.max(Math.max(...seen.rest) - outward, -Math.min(...seen.rest) - inward),
    });
  }
  return all;
};
