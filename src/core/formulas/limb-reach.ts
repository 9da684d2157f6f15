/**
 * How far from plumb over the cut any part of a limb can come while it hangs, turns and falls, in any direction in plan.
 * Lengths in m, angles in degrees above the horizontal, heights over the cut (below it negative).
 *
 * Turning: an even rod about the cut, from its angle down to hanging (ω² = 3g(sin a − sin θ)/l: energy of a rod turning
 * about its end). Falling: let go at any angle on the way, its middle flies a parabola, and any part is within half a
 * length of the middle, whatever the spin. Energy the hinge eats only brings it nearer. Nothing rises over the highest
 * point the limb had before the cut. Over the cut the flight leaves the circle of the turn by less than `flight` lengths
 * (the largest found over all angles by running the motion through, not a published figure).
 *
 * The half-width never shrinks downward: where the limb has been or could be higher up, it may come lower down too.
 */
import { cos, sin } from './angles.ts';

/** Largest distance, in limb lengths, by which flight leaves the circle of the turn over the cut; found 0.0662. */
const flight = 0.07;

/** Release angles looked at: every second degree, always the same, so that more of a limb never reaches less. */
const releases = Array.from({ length: 91 }, (_, i) => ({ angle: i * 2 - 90, s: sin(i * 2 - 90), c: cos(i * 2 - 90) }));
/** What lies between the angles looked at can add less than this, in limb lengths; found 0.0002. */
const gridAllowance = 0.001;

/** The furthest the middle can be from plumb in the turn, no lower than `height` (never over where it starts), in limb lengths. */
const turning = (angle: number, height: number): number => {
  if (height > 0) return Math.sqrt(1 / 4 - height * height);
  return angle >= 0 ? 1 / 2 : cos(angle) / 2;
};

/** The furthest the middle can be from plumb in the turn or the flight, no lower than `height`, in limb lengths. */
const middleWithin = (angle: number, height: number): number => {
  const sinStart = sin(angle);
  let best = turning(angle, height);
  for (const release of releases) {
    if (release.angle > angle) break;
    const drop = release.s / 2 - height;
    if (drop < 0) continue;
    // In limb lengths and √(l/g): the middle's speed along its path is half of ω.
    const speed = Math.sqrt(3 * (sinStart - release.s)) / 2;
    const down = speed * release.c;
    const time = Math.sqrt(down * down + 2 * drop) - down;
    const out = Math.abs(release.c / 2 + speed * release.s * time);
    if (out > best) best = out;
  }
  return best;
};

/** The limb's highest point over the cut. */
export const limbTop = (length: number, angle: number): number => length * Math.max(0, sin(angle));

/** Half the width (m) that the limb can fill at `height` over the cut; `height` not over `limbTop`. */
export const limbHalfWidth = (length: number, angle: number, height: number): number => {
  const h = height / length;
  const falling = 0.5 + middleWithin(angle, h - 0.5) + gridAllowance;
  if (h <= 0) return length * falling;
  return length * Math.min(falling, Math.sqrt(Math.max(0, 1 - h * h)) + flight);
};

/** Depths under the line (m) at which the widths are taken: a fixed ladder, its steps growing by a fiftieth. */
const ladder: readonly number[] = (() => {
  const depths = [0];
  for (let d = 0; d < 200; d = depths[depths.length - 1] as number) depths.push(d + 0.015 + 0.02 * d);
  return depths;
})();

/**
 * The gap from a point `x` beside plumb and `height` over the cut to all that the limb can reach; 0 inside. Between two
 * rungs of the ladder the width is taken at the lower one and the height at the upper one, so the gap is never more than
 * the real one, and a longer, steeper or higher limb never shows a larger one.
 */
export const gapToLimb = (x: number, height: number, length: number, angle: number): number => {
  const top = limbTop(length, angle);
  const under = Math.max(0, height - top);
  let least = Infinity;
  for (let i = 1; i < ladder.length; i++) {
    const lower = height - (ladder[i] as number);
    if (lower > top) continue;
    const depth = Math.max(ladder[i - 1] as number, under);
    if (depth >= least) break;
    least = Math.min(least, Math.hypot(Math.max(0, Math.abs(x) - limbHalfWidth(length, angle, lower)), depth));
  }
  return least;
};
