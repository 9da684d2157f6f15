/** One fall of the model from its first movement to lying still, moment by moment: what the edges over all falls are held to. */
import { aboutCentre, firstTouch, flightFrom, hingeTime, type Limb, type Place, touchSpeed } from '#core/formulas/falling-limb.ts';
import { gravity } from '#core/formulas/gravity.ts';
import { afterTouch, thrownOn, topples } from '#core/formulas/settling.ts';

export type Fall = { outward: number; inward: number; passingOut: number; passingIn: number; time: number; hit: number };

const sweepSteps = 24;

/** Lengths in m from plumb under the cut, s, m/s; passing between the heights `low` and `high`. */
export const fallOf = (limb: Limb, place: Place, release: number, kept: number, low: number, high: number): Fall => {
  const { length, shape } = limb;
  const f = flightFrom(limb, place, release, kept);
  const t = firstTouch(limb, f, place.slope);
  const c = shape.centre;
  const inertia = aboutCentre({ length: 1, shape });
  const arm = t.end === 'butt' ? c : 1 - c;
  const about = inertia + arm * arm;
  const lie = t.end === 'butt' ? t.angle : t.angle + Math.PI;
  // Turning over the end that touched, towards the stem side, in units of √(g ÷ length).
  const turning = ((-inertia * length * t.spin + arm * (Math.cos(lie) * t.vy - Math.sin(lie) * t.vx)) / about) / Math.sqrt(gravity * length);
  const energy = (about * turning * turning) / 2;
  const raw = lie - Math.PI / 2;
  const lean = raw - 2 * Math.PI * Math.floor((raw + Math.PI) / (2 * Math.PI));
  const to = (side: 1 | -1): number => {
    const goes = side * turning > 0;
    return length * (Math.cos(place.slope) * topples(arm, side * lean, goes ? energy : 0) + (goes ? thrownOn(afterTouch(arm), side * lean, energy, side * place.slope) : 0));
  };
  const slam = turning * turning + (2 * arm * (Math.cos(lean) + Math.sign(lean) * Math.sin(place.slope))) / about;
  const fall: Fall = {
    outward: t.x + to(-1),
    inward: to(1) - t.x,
    passingOut: 0,
    passingIn: 0,
    time: hingeTime(limb, place.start, release, kept) + t.time,
    hit: Math.max(touchSpeed(limb, t), Math.sqrt(Math.max(0, slam) * gravity * length)),
  };
  const sweep = (butt: readonly [number, number], tip: readonly [number, number]): void => {
    for (let k = 0; k <= 20; k++) {
      const [x, y] = [butt[0] + ((tip[0] - butt[0]) * k) / 20, butt[1] + ((tip[1] - butt[1]) * k) / 20];
      if (y < low || y > high) continue;
      fall.passingOut = Math.max(fall.passingOut, x);
      fall.passingIn = Math.max(fall.passingIn, -x);
    }
  };
  for (let k = 0; k <= sweepSteps; k++) {
    const held = place.start + ((release - place.start) * k) / sweepSteps;
    sweep([0, place.cutHeight], [length * Math.cos(held), place.cutHeight + length * Math.sin(held)]);
    const time = (t.time * k) / sweepSteps;
    const angle = f.angle - f.spin * time;
    const [x, y] = [f.x + f.vx * time, f.y + f.vy * time - (gravity * time * time) / 2];
    sweep([x - c * length * Math.cos(angle), y - c * length * Math.sin(angle)], [x + (1 - c) * length * Math.cos(angle), y + (1 - c) * length * Math.sin(angle)]);
  }
  return fall;
};
