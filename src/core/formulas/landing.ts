/**
 * Everywhere a limb may land and what it sweeps on the way, over every moment at which the hinge may let go and every
 * share of the energy that it may eat, and over a box of what is not known exactly. Upper edges (of the time a lower
 * one) that no fall of the model passes: see fall-cells.ts and touching.ts, where lengths are those of the limb. Here
 * the length has ends of its own, and is taken in short stretches. Lengths in m, times in s, angles in radians; the
 * frame is that of falling-limb.ts.
 */
import { centreOf, groundingAngle, hingeSpin, type Limb, type Place, type Shape } from './falling-limb.ts';
import type { Ends } from './fall-cells.ts';
import { gravity } from './gravity.ts';
import { type Edge, type Figure, touching } from './touching.ts';

export type { Ends, Figure };
/** What is given: ends that are equal where it is known. `span`: how far the limb may turn before it lets go, at the most; `low`, `high`: heights between which passing is asked for. */
export type Box = { cutHeight: Ends; length: Ends; start: Ends; slope: Ends; shape: Shape; span: number; low: number; high: number };

/** An edge, from plumb under the cut, not under 0 (`time`: from the first movement; `hit`: of the fastest end at the ground), and a fall at it: where it was let go, and turned on to what angle. */
export type Worst = { value: number; cutHeight: number; length: number; start: number; slope: number; release: number; angle: number };
export type Landing = { readonly [F in Figure]: Worst };

/** The longest limb whose tip is above the ground before it moves, m. */
export const longestClear = ({ cutHeight, start, slope }: Place): number => {
  const droop = Math.cos(start) * Math.tan(slope) - Math.sin(start);
  return droop > 0 ? cutHeight / droop : Infinity;
};
/** The tip of the limb is above the ground before it moves. */
export const startsClear = (length: number, place: Place): boolean => length < longestClear(place);

/** How far down it may turn: the span, no further than hanging, and no further than where its tip grounds. */
export const lastAngle = (limb: Limb, place: Place, span: number): { angle: number; grounds: boolean } => {
  const wanted = Math.max(place.start - span, -Math.PI / 2);
  const ground = groundingAngle(limb, place);
  return ground !== null && ground > wanted ? { angle: ground, grounds: true } : { angle: wanted, grounds: false };
};

/** Stretches of lengths, shares of the whole from the longest down: what is far from the longest has room to be told roughly. */
const stretches = [0, 0.07, 0.16, 0.28, 0.45, 0.7, 1] as const;

const figures = ['outward', 'inward', 'passingOut', 'passingIn', 'time', 'hit'] as const satisfies readonly Figure[];

/** The tip in the ground and the hinge still holding: the butt kicks, and may end up a length to either side of the tip. */
const kicks = (box: Box, shortest: number, longest: number): { outward: Edge; inward: Edge } | null => {
  const angles: number[] = [];
  const limb: Limb = { length: 1, shape: box.shape };
  for (const cutHeight of [box.cutHeight[0] / longest, box.cutHeight[1] / shortest]) {
    for (const slope of box.slope) {
      const angle = groundingAngle(limb, { cutHeight, start: Math.PI / 2, slope });
      if (angle !== null) angles.push(angle);
    }
  }
  const last = Math.max(box.start[0] - box.span, -Math.PI / 2);
  // Angles in between belong to heights and slopes in between; where some place of the box has none, to hanging too.
  const from = Math.max(last, angles.length < 4 && box.cutHeight[0] !== box.cutHeight[1] ? last : Math.min(...angles));
  const to = Math.min(box.start[1], Math.max(...angles));
  if (angles.length === 0 || to < from) return null;
  const level = from <= 0 && to >= 0 ? 1 : Math.max(Math.cos(from), Math.cos(to));
  const steepest = Math.cos(from) < Math.cos(to) ? from : to;
  return {
    outward: { value: level + 1, release: to, angle: to },
    inward: { value: 1 - Math.cos(steepest), release: steepest, angle: steepest },
  };
};

/** An edge as a fall of the box: from the cut, the start and on the slope that lead to it. */
const worstOf = (box: Box, figure: Figure, { value, release, angle }: Edge, length: number, unit: number, kicked: boolean): Worst => {
  const slope = box.slope[kicked || figure === 'inward' || figure === 'passingIn' || figure === 'time' ? 1 : 0];
  const within = ([low, high]: Ends, to: number): number => Math.max(low, Math.min(high, to));
  return {
    value: unit * value, release, angle, length, slope,
    // A tip that grounds does so from one height alone.
    cutHeight: within(box.cutHeight, kicked ? length * (Math.cos(release) * Math.tan(slope) - Math.sin(release)) : figure === 'time' ? 0 : Infinity),
    start: within(box.start, figure === 'time' ? -Infinity : release + box.span * (kicked ? 0.99 : 1)),
  };
};

/** @returns for each figure its edge over the box and the releases; null where no limb of the box starts clear of the ground */
export const landing = (box: Box): Landing | null => {
  const worst: { [F in Figure]?: Worst } = {};
  const [shortest, longest] = box.length;
  for (let k = 1; k < stretches.length; k++) {
    if (k > 1 && longest === shortest) break;
    const from = longest * (shortest / longest) ** stretches[k]!;
    const to = longest * (shortest / longest) ** stretches[k - 1]!;
    const height: Ends = [box.cutHeight[0] / to, box.cutHeight[1] / from];
    const { start, slope, span, shape } = box;
    const unitOf = (figure: Figure): number => (figure === 'time' ? Math.sqrt(from / gravity) : figure === 'hit' ? Math.sqrt(to * gravity) : to);
    const known: { [F in Figure]?: number } = {};
    for (const figure of figures) if (worst[figure]) known[figure] = worst[figure].value / unitOf(figure);
    const edges = touching({ height, start, slope, span, shape }, [box.low / to, box.high / from], null, known);
    if (edges === null) continue;
    const kick = kicks(box, from, to);
    for (const figure of figures) {
      const own = edges[figure];
      const kicked = kick !== null && (figure === 'outward' || figure === 'inward') && kick[figure].value > own.value;
      const edge = kicked ? kick[figure] : own;
      if (edge.value !== known[figure]) worst[figure] = worstOf(box, figure, edge, to, unitOf(figure), kicked);
    }
  }
  return worst.outward ? (worst as Landing) : null;
};

/** A step of less than this share of the length is none. */
const fine = 0.004;
const most = 14;
const leaps = 1;
const far = 1.3;
const near = 1.06;
/**
 * The longest piece that, like every shorter one, lands within `room` (m) on one side; at least its own length counts.
 * From a length that does, the next: no piece between the two reaches further than its length times the edge found for
 * the shortest of them, under which the cut is highest. Stops short of the longest by less than `fine`, or early.
 * @param least the shortest length to be told of, m
 * @returns null where not even that lands within
 */
export const longestWithin = (box: Box, figure: 'outward' | 'inward', room: number, least: number): { length: number; at: Worst } | null => {
  const { start, slope, span, shape, cutHeight } = box;
  // Longer, the tip would stand on the ground before it moves.
  const clear = Math.min(...start.flatMap((from) => slope.map((rise) => longestClear({ cutHeight: cutHeight[0], start: from, slope: rise }))));
  const limit = Math.min(room, clear * (1 - 1e-9));
  let length = least;
  let at: Worst | null = null;
  // How far ahead it looks: to the end at first, then as far as is worth while.
  let ahead = Infinity;
  for (let k = 0; k < most && length < limit; k++) {
    const next = Math.min(limit, length * ahead);
    const edges = touching({ height: [cutHeight[0] / next, cutHeight[1] / length], start, slope, span, shape }, null, figure)!;
    const kick = kicks(box, length, next);
    const kicked = kick !== null && kick[figure].value > edges[figure].value;
    const edge = kicked ? kick[figure] : edges[figure];
    const allowed = Math.min(next, room / Math.max(1, edge.value));
    if (allowed >= length) at = worstOf(box, figure, edge, length, 1, kicked);
    // Over a long stretch little may be told; over a short one it ends where it gains nothing more.
    const gained = allowed / length - 1;
    if (ahead === near && gained < fine) break;
    ahead = k < leaps || gained > 0.05 ? far : near;
    length = Math.max(length, allowed);
  }
  // It is the ground that ends it: lowest, drooping most, the ground at its steepest.
  if (at && limit < room && length === limit) at = { ...at, cutHeight: cutHeight[0], start: start[0], slope: slope[1] };
  return at && { length, at };
};

/** The share of its energy that the hinge leaves a limb which, let go at `release`, touches turned on to `angle`. */
export const keptBy = (limb: Limb, { cutHeight, start, slope }: Place, release: number, angle: number): number => {
  const full = hingeSpin(limb, start, release, 1);
  const c = centreOf(limb);
  const turned = release - angle;
  const x = c * (Math.cos(release) + turned * Math.sin(release));
  const y = cutHeight + c * (Math.sin(release) - turned * Math.cos(release));
  // The end that is lower over the slope.
  const arm = Math.sin(angle - slope) >= 0 ? -c : limb.length - c;
  const free = y + arm * Math.sin(angle) - (x + arm * Math.cos(angle)) * Math.tan(slope);
  return full === 0 || free <= 0 ? 0 : Math.min(1, (turned ** 2 * gravity) / (2 * free * full ** 2));
};
