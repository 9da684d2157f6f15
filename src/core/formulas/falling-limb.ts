/**
 * A limb that turns about the hinge at its cut, lets go, falls freely, touches with one end and topples over that end.
 * A rigid body in the upright plane of the limb; no air, no bounce, no slide. Hinged: energy of a rod about its end,
 * ω² = (2 g c ÷ k L²)(sin start − sin now), for an even rod 3 g ÷ L times the same (physics course threads on a falling
 * hinged rod, source `falling-rod`). Free: the centre flies as a stone does and the spin stays. Touch: angular momentum
 * about the end that touches is kept. The rest is mechanics.
 *
 * Lengths in m, times in s, angles in radians above the horizontal, spins in rad/s with the tip going down positive.
 * x runs the way the limb points from plumb under the cut, y up from the ground there.
 */
import { gravity } from './gravity.ts';

/** How mass lies along a limb: its centre as a share of the length, and its inertia about the butt as a share of m L². */
export type Shape = { centre: number; aboutButt: number };
/** A whole branch, twigs and all, as an even rod; a bare pole as a cone. */
export const shapes = { whole: { centre: 1 / 2, aboutButt: 1 / 3 }, pole: { centre: 1 / 4, aboutButt: 1 / 10 } } as const satisfies Record<string, Shape>;

export type Limb = { length: number; shape: Shape };
/** Where it hangs: height of the cut, angle of the limb before it moves, slope of the ground the way it points. */
export type Place = { cutHeight: number; start: number; slope: number };

export const centreOf = ({ length, shape }: Limb): number => shape.centre * length;
/** Inertia about the centre, for a mass of one. */
export const aboutCentre = ({ length, shape }: Limb): number => (shape.aboutButt - shape.centre ** 2) * length * length;

/** Spin at `angle`, turned down from `start` at rest; `kept`: the share of the energy that the hinge does not eat. */
export const hingeSpin = (limb: Limb, start: number, angle: number, kept: number): number => {
  const turned = 2 * Math.cos((start + angle) / 2) * Math.sin((start - angle) / 2);
  return Math.sqrt(Math.max(0, (kept * 2 * gravity * limb.shape.centre * turned) / (limb.shape.aboutButt * limb.length)));
};

// Gauss-Legendre, six points on 0 to 1.
const nodes = [0.033765242898424, 0.169395306766868, 0.380690406958402, 0.619309593041598, 0.830604693233132, 0.966234757101576];
const weights = [0.085662246189585, 0.180380786524069, 0.233956967286346, 0.233956967286346, 0.180380786524069, 0.085662246189585];

/** Time to turn from rest at `start` down to `angle`; with angle = start − s² the integrand is smooth. */
export const hingeTime = (limb: Limb, start: number, angle: number, kept: number): number => {
  const end = Math.sqrt(Math.max(0, start - angle));
  if (end === 0) return 0;
  let sum = 0;
  for (let i = 0; i < nodes.length; i++) {
    const s = end * nodes[i]!;
    sum += (weights[i]! * 2 * s) / hingeSpin(limb, start, start - s * s, kept);
  }
  return sum * end;
};

/** The angle at which the tip grounds while the hinge still holds; null where it clears the ground hanging straight down. */
export const groundingAngle = ({ length }: Limb, { cutHeight, start, slope }: Place): number | null => {
  // H + L sin a = L cos a tan slope, so sin(a − slope) = −H cos slope ÷ L.
  const sine = (-cutHeight * Math.cos(slope)) / length;
  if (sine < -1) return null;
  const angle = Math.asin(sine) + slope;
  return angle > start || angle < -Math.PI / 2 ? null : angle;
};

/** The centre of the limb and its speed when it lets go at `angle`. */
export type Flight = { x: number; y: number; vx: number; vy: number; angle: number; spin: number };
export const flightFrom = (limb: Limb, { cutHeight, start }: Place, angle: number, kept: number): Flight => {
  const c = centreOf(limb);
  const spin = hingeSpin(limb, start, angle, kept);
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return { x: c * cos, y: cutHeight + c * sin, vx: c * spin * sin, vy: -c * spin * cos, angle, spin };
};

/** How far (m) the centre, butt and tip are above the ground at time t of a flight, measured straight down. */
const above = (f: Flight, tan: number, t: number): number => f.y + f.vy * t - (gravity * t * t) / 2 - (f.x + f.vx * t) * tan;

/** When the centre of a flight is `clear` above the ground, on its way down; 0 where it starts lower. */
const centreDown = (f: Flight, tan: number, clear: number): number => {
  const h = f.y - f.x * tan - clear;
  if (h <= 0) return 0;
  const v = f.vy - f.vx * tan;
  return (v + Math.sqrt(v * v + 2 * gravity * h)) / gravity;
};

export type Touch = { time: number; end: 'butt' | 'tip'; x: number; angle: number; vx: number; vy: number; spin: number };

/** A tenth of a micrometre, or of a microsecond. */
const near = 1e-7;

/** The first touch of a flight with the ground: which end, where, when; `since`: not before this time. */
export const firstTouch = (limb: Limb, f: Flight, slope: number, since = 0): Touch => {
  const tan = Math.tan(slope);
  const c = centreOf(limb);
  const toTip = limb.length - c;
  const low = (t: number): number => {
    const a = f.angle - f.spin * t;
    const lean = Math.sin(a) - Math.cos(a) * tan;
    return above(f, tan, t) + Math.min(-c * lean, toTip * lean);
  };
  // No end can touch before the centre is within its arm of the ground, and one has touched when the centre is down.
  let a = Math.max(since, centreDown(f, tan, toTip / Math.cos(slope)));
  const last = Math.max(a, centreDown(f, tan, 0));
  let atA = low(a);
  let [b, atB] = [a, atA];
  const steps = Math.max(6, Math.ceil((f.spin * (last - a)) / 0.3));
  const step = (last - a) / steps;
  for (let i = 1; i <= steps && atB > 0; i++) {
    [a, atA] = [b, atB];
    b = i === steps ? last : b + step;
    atB = low(b);
  }
  // Regula falsi (Illinois) between above the ground and in it.
  for (let i = 0, kept = 0; i < 40 && atA > near && b - a > near; i++) {
    const t = (a * atB - b * atA) / (atB - atA);
    const here = low(t);
    if (here > 0) {
      [a, atA] = [t, here];
      if (kept > 0) atB /= 2;
      kept = 1;
    } else {
      [b, atB] = [t, here];
      if (here > -near) break;
      if (kept < 0) atA /= 2;
      kept = -1;
    }
  }
  const time = atA <= near ? a : b;
  const angle = f.angle - f.spin * time;
  const lean = Math.sin(angle) - Math.cos(angle) * tan;
  const end = -c * lean <= toTip * lean ? 'butt' : 'tip';
  const arm = end === 'butt' ? -c : toTip;
  return { time, end, x: f.x + f.vx * time + arm * Math.cos(angle), angle, vx: f.vx, vy: f.vy - gravity * time, spin: f.spin };
};

/** Speed (m/s) of the end that touches. */
export const touchSpeed = (limb: Limb, t: Touch): number => {
  const arm = t.end === 'butt' ? -centreOf(limb) : limb.length - centreOf(limb);
  return Math.hypot(t.vx + arm * t.spin * Math.sin(t.angle), t.vy - arm * t.spin * Math.cos(t.angle));
};

