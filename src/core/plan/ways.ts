/**
 * The ways out, from where the worker stands to beyond all that the piece may reach: whether one leads back into where it
 * may land, and how near it brings body and pole to the line.
 */
import { cos, sin } from '../formulas/angles.ts';
import { landingOutline, type Strip } from '../formulas/landing-outline.ts';
import { feedWay } from './clearance.ts';
import type { Plan, PlanLimb } from './facts.ts';
import { known, type Landing, type Memo, type Piece, planOn, run, type Run } from './feed.ts';
import { apart, type Spot } from './turn.ts';

export const wayNames = ['wayOut', 'wayOut2'] as const;
export type WayName = (typeof wayNames)[number];
/** `under`: it leads back into the landing. `nearer`: to its end, where that is nearer to the line. `lineRoom`: what is left there over the distance asked for, m; null where it is no nearer. */
export type Way = { readonly under: boolean; readonly nearer: Run | null; readonly lineRoom: number | null };
/** Where a piece is cut from, and where it may land. */
export type Stood = { readonly piece: Piece; readonly standOff: number; readonly landing: Landing };

const stripOf = (plan: Plan, { outward, inward, half, swing }: Landing): Strip => {
  const margin = known(plan.facts.margin);
  return { outward: outward + margin, inward: inward + margin, half, swing };
};

/** How far along a bearing one is as far from plumb under the cut as the landing reaches anywhere; 0 where one stands there. */
const longOf = ({ outward, inward, half }: Strip, standOff: number, off: number): number => {
  const furthest = Math.max(outward, inward, half);
  return standOff >= furthest ? 0 : Math.sqrt(furthest ** 2 - (standOff * sin(off)) ** 2) - standOff * cos(off);
};

/** Which side of the way from one spot to another a third lies on: positive on the left. */
const side = (a: Spot, b: Spot, c: Spot): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
const crosses = (a: Spot, b: Spot, c: Spot, d: Spot): boolean => side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;

/** Whether a way of so many metres crosses the outline of the landing; seen from plumb under the cut, x the way the limb points. */
const leadsUnder = (strip: Strip, { bearings: { points, worker } }: PlanLimb, standOff: number, bearing: number, long: number): boolean => {
  const spot = (from: Spot, towards: number, far: number): Spot => ({ x: from.x + far * cos(towards - points), y: from.y + far * sin(towards - points) });
  const feet = spot({ x: 0, y: 0 }, worker, standOff);
  const end = spot(feet, bearing, long);
  const outline = landingOutline(strip).map(([x, y]): Spot => ({ x, y }));
  return outline.some((corner, i) => i > 0 && crosses(feet, end, outline[i - 1] as Spot, corner));
};

/** One way out of one place to stand. `required`: null where there is no line, or no distance for it. */
export const wayFrom = (plan: Plan, limb: PlanLimb, { piece, standOff, landing }: Stood, bearing: number, required: number | null, memo: Memo): Way => {
  const strip = stripOf(plan, landing);
  const off = apart(bearing, limb.bearings.worker);
  const long = longOf(strip, standOff, off);
  const fed = required === null ? null : feedWay(plan, limb, piece, standOff, bearing, long, required);
  const nearer = fed && run('lineClearance', fed, memo);
  const gap = nearer && planOn(nearer.outcome, 'reachGap');
  return {
    under: off > 90 || leadsUnder(strip, limb, standOff, bearing, long),
    nearer,
    lineRoom: required === null || gap === null ? null : gap - required - known(plan.facts.movement),
  };
};

/** Neither under it nor too near the line. */
export const isClear = ({ under, lineRoom }: Way): boolean => !under && (lineRoom === null || lineRoom >= 0);

/** So far apart at the least, as they would be one way else. */
const leastApart = 45;
/** Whether the two ways out are as good as one: what closes one closes the other. */
export const waysAlike = ({ bearings: { wayOut, wayOut2 } }: PlanLimb): boolean => apart(wayOut, wayOut2) < leastApart;
const halfHours = Array.from({ length: 24 }, (_, k) => 15 * k);

/** The bearing by the half hour nearest to the one there is that keeps clear from every place to stand; null where none does. */
export const clearWay = (plan: Plan, limb: PlanLimb, places: readonly Stood[], name: WayName, required: number | null, memo: Memo): number | null => {
  const { worker, [name]: now } = limb.bearings;
  const other = limb.bearings[name === 'wayOut' ? 'wayOut2' : 'wayOut'];
  const from = worker % 15;
  return halfHours
    .map((turn) => (from + turn) % 360)
    .filter((bearing) => apart(bearing, worker) <= 90 && apart(bearing, other) >= leastApart)
    .sort((a, b) => apart(a, now) - apart(b, now) || a - b)
    .find((bearing) => places.every((place) => isClear(wayFrom(plan, limb, place, bearing, required, memo)))) ?? null;
};
