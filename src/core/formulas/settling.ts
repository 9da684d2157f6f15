/**
 * From the first touch to lying still. The end that touches is held (no slide, no bounce) and the limb topples over it;
 * angular momentum about that end is kept. Where the ground would have to pull to hold it, the limb hops: it flies on
 * and touches again. Frame and units as in falling-limb.ts.
 */
import { aboutCentre, centreOf, firstTouch, type Flight, type Limb, type Touch } from './falling-limb.ts';
import { gravity } from './gravity.ts';

/** Where it may lie, level distance from plumb under the cut; the fastest any end meets the ground; `topples`: over which places, how far out and in. */
export type Settled = { from: number; to: number; speed: number; topples: { x: number; outward: number; inward: number }[] };

/**
 * Within the first of these of upright the ground decides, not the sum, and it may topple a full length either way; from
 * there to the second the length fades out. Likewise with the share of the energy that it takes to go over the end.
 * Judgements, on the safe side; faded, so that a hair's breadth of an input never makes a leap of the reach.
 */
const upright = [Math.sin(Math.PI / 6), Math.sin(Math.PI / 3)] as const;
const enough = [0.5, 0.3] as const;
const fade = (value: number, [full, none]: readonly [number, number]): number => Math.min(1, Math.max(0, (none - value) / (none - full)));
const mostHops = 3;
/** A hop shorter than this is none, s. */
const hopTime = 0.02;

/** The limb about the end that touched: arm to its centre, direction to its other end, turning (counter-clockwise), inertia. */
type Held = { arm: number; lie: number; turning: number; about: number };

const turn = 2 * Math.PI;

const held = (limb: Limb, t: Touch, slope: number): Held => {
  const c = centreOf(limb);
  const arm = t.end === 'butt' ? c : limb.length - c;
  // Counted from the ground on the outward side, where it lies down at 0 and, inward, at half a turn.
  const raw = (t.end === 'butt' ? t.angle : t.angle + Math.PI) - slope;
  const lie = slope + raw - turn * Math.floor(raw / turn);
  const cos = Math.cos(lie);
  const sin = Math.sin(lie);
  const inertia = aboutCentre(limb);
  const about = inertia + arm * arm;
  const turning = (-inertia * t.spin + arm * (cos * t.vy - sin * t.vx)) / about;
  return { arm, lie, turning, about };
};

/** What presses the end on the ground (for a mass of one) while the limb turns over it; below nothing it lifts. */
const press = ({ arm, about }: Held, lie: number, turning2: number): number =>
  gravity - (gravity * (arm * Math.cos(lie)) ** 2) / about - arm * turning2 * Math.sin(lie);

/** The turning squared at another direction, energy kept; below nothing it does not get there. */
const turningAt = ({ arm, about, lie, turning }: Held, there: number): number =>
  turning * turning + (2 * gravity * arm * (Math.sin(lie) - Math.sin(there))) / about;

/** Where on its way over the end the limb lifts off, if it does: its direction, and the way it turns. */
const liftOff = (h: Held, slope: number): { lie: number; turning: number } | null => {
  const way = Math.sign(h.turning) || 1;
  if (press(h, h.lie, h.turning ** 2) < 0) return { lie: h.lie, turning: h.turning };
  const end = way < 0 ? slope : slope + Math.PI;
  for (let i = 1; i < 8; i++) {
    const lie = h.lie + ((end - h.lie) * i) / 8;
    const turning2 = turningAt(h, lie);
    if (turning2 < 0) return null;
    if (press(h, lie, turning2) < 0) return { lie, turning: way * Math.sqrt(turning2) };
  }
  return null;
};

/**
 * The flight on after a touch at which holding the end would pull the ground up: the ground stops it along itself and
 * lets it go. Null where the ground presses, as it mostly does.
 */
const glance = (limb: Limb, t: Touch, h: Held, slope: number): Flight | null => {
  const [rx, ry] = [-h.arm * Math.cos(h.lie), -h.arm * Math.sin(h.lie)];
  const [tx, ty] = [Math.cos(slope), Math.sin(slope)];
  // What the ground would give the limb along its normal, were the end held.
  const pressed = (t.vx - h.turning * ry) * ty - (t.vy + h.turning * rx) * tx;
  if (pressed >= 0) return null;
  const inertia = aboutCentre(limb);
  const lever = rx * ty - ry * tx;
  const along = (t.vx + t.spin * ry) * tx + (t.vy - t.spin * rx) * ty;
  const stopped = -along / (1 + (lever * lever) / inertia);
  return {
    x: t.x - rx, y: t.x * Math.tan(slope) - ry, vx: t.vx + stopped * tx, vy: t.vy + stopped * ty,
    angle: t.angle, spin: t.spin - (lever * stopped) / inertia,
  };
};

const flightOff = (t: Touch, { arm }: Held, slope: number, lie: number, turning: number): Flight => {
  const cos = Math.cos(lie);
  const sin = Math.sin(lie);
  return {
    x: t.x + arm * cos,
    y: t.x * Math.tan(slope) + arm * sin,
    vx: -arm * turning * sin,
    vy: arm * turning * cos,
    angle: t.end === 'butt' ? lie : lie - Math.PI,
    spin: -turning,
  };
};

export const settle = (limb: Limb, t: Touch, slope: number, hops = 0): Settled => {
  const h = held(limb, t, slope);
  const cos = Math.cos(h.lie);
  const sin = Math.sin(h.lie);
  const leansOut = cos > 0;
  const energy = (leansOut === h.turning > 0) ? (h.about * h.turning * h.turning) / 2 / (gravity * h.arm * Math.max(1e-9, 1 - sin)) : 0;
  const either = Math.max(fade(energy, enough), sin > 0 ? fade(Math.abs(cos), upright) : 0);
  const lying = limb.length * Math.cos(slope);
  const outward = lying * (leansOut ? 1 : either);
  const inward = lying * (leansOut ? either : 1);
  const settled: Settled = {
    from: t.x - inward,
    to: t.x + outward,
    speed: limb.length * Math.sqrt(Math.max(0, turningAt(h, slope + (leansOut ? 0 : Math.PI)))),
    topples: [{ x: t.x, outward, inward }],
  };
  if (hops >= mostHops) return settled;
  let flight = glance(limb, t, h, slope);
  if (flight === null) {
    const off = liftOff(h, slope);
    if (off === null) return settled;
    flight = flightOff(t, h, slope, off.lie, off.turning);
  }
  const next = firstTouch(limb, flight, slope, hopTime);
  if (next.time <= hopTime) return settled;
  const after = settle(limb, next, slope, hops + 1);
  return {
    from: Math.min(settled.from, after.from),
    to: Math.max(settled.to, after.to),
    speed: Math.max(settled.speed, after.speed),
    topples: [...settled.topples, ...after.topples],
  };
};
