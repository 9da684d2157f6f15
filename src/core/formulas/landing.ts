/**
 * Everywhere a limb may land and what it sweeps on the way, over every moment at which the hinge may let go and every
 * share of the energy that it may eat, and over a box of what is not known exactly: a flat search over a grid, then
 * around the best of each figure. Lengths in m, times in s, angles in radians; see falling-limb.ts for the frame.
 */
import {
  firstTouch, flightFrom, groundingAngle, hingeTime, type Limb, type Place, type Shape, touchSpeed, type Touch,
} from './falling-limb.ts';
import { gravity } from './gravity.ts';
import { type Settled, settle } from './settling.ts';

/** What is given: ends that are equal where it is known. `span`: how far the limb may turn before it lets go, at the most. */
export type Box = { cutHeight: Ends; length: Ends; start: Ends; slope: Ends; shape: Shape; span: number; low: number; high: number };
export type Ends = readonly [number, number];

/** What one fall comes to. Reaches and passings from plumb under the cut, not under 0; `hit`: the fastest end at the ground. */
export type Fall = { outward: number; inward: number; passingOut: number; passingIn: number; time: number; hit: number };
export type Figure = keyof Fall;
/** Where a figure is greatest (`time`: least), and the fall that has it. */
export type Worst = { value: number; cutHeight: number; length: number; start: number; slope: number; release: number; kept: number };

const sweepSteps = 10;

/** The level reach, out and in, of a straight piece between two heights, its lower end first. */
const clip = (x1: number, y1: number, x2: number, y2: number, low: number, high: number, fall: Fall): void => {
  if (y2 < low || y1 > high) return;
  const run = y2 > y1 ? (x2 - x1) / (y2 - y1) : 0;
  const from = y1 < low ? x1 + run * (low - y1) : x1;
  const to = y2 > high ? x1 + run * (high - y1) : x2;
  const out = Math.max(from, to);
  const inward = -Math.min(from, to);
  if (out > fall.passingOut) fall.passingOut = out;
  if (inward > fall.passingIn) fall.passingIn = inward;
};

/** What passes between the heights from letting go to lying still. */
const sweep = (limb: Limb, place: Place, release: number, kept: number, touch: Touch, settled: Settled, low: number, high: number, fall: Fall): void => {
  const f = flightFrom(limb, place, release, kept);
  const c = limb.shape.centre * limb.length;
  const toTip = limb.length - c;
  for (let i = 0; i <= sweepSteps; i++) {
    const t = (touch.time * i) / sweepSteps;
    const a = release - f.spin * t;
    const x = f.x + f.vx * t;
    const y = f.y + f.vy * t - (gravity * t * t) / 2;
    const cos = Math.cos(a);
    const sin = Math.sin(a);
    if (sin > 0) clip(x - c * cos, y - c * sin, x + toTip * cos, y + toTip * sin, low, high, fall);
    else clip(x + toTip * cos, y + toTip * sin, x - c * cos, y - c * sin, low, high, fall);
  }
  // Toppling, the other end goes round: nowhere further out at these heights than a full length from the touch allows.
  for (const { x, outward, inward } of settled.topples) {
    const foot = x * Math.tan(place.slope);
    const above = Math.max(0, low - foot);
    if (above >= limb.length || foot > high) continue;
    const arm = Math.sqrt(limb.length ** 2 - above ** 2);
    if (outward > 0) fall.passingOut = Math.max(fall.passingOut, x + Math.min(arm, outward));
    if (inward > 0) fall.passingIn = Math.max(fall.passingIn, Math.min(arm, inward) - x);
  }
};

/** The fall of a limb let go at `release` with `kept` of its energy. Without `passing` the air it sweeps is left out. */
export const fallOf = (limb: Limb, place: Place, release: number, kept: number, low: number, high: number, passing = true): Fall => {
  const touch = firstTouch(limb, flightFrom(limb, place, release, kept), place.slope);
  const settled = settle(limb, touch, place.slope);
  const fall: Fall = {
    outward: Math.max(0, settled.to),
    inward: Math.max(0, -settled.from),
    passingOut: 0,
    passingIn: 0,
    time: hingeTime(limb, place.start, release, kept) + touch.time,
    hit: Math.max(touchSpeed(limb, touch), settled.speed),
  };
  if (passing) sweep(limb, place, release, kept, touch, settled, low, high, fall);
  return fall;
};

/** The tip of the limb is above the ground before it moves. */
export const startsClear = (length: number, { cutHeight, start, slope }: Place): boolean =>
  cutHeight + length * Math.sin(start) > length * Math.cos(start) * Math.tan(slope);

/** How far down it may turn: the span, no further than hanging, and no further than where its tip grounds. */
export const lastAngle = (limb: Limb, place: Place, span: number): { angle: number; grounds: boolean } => {
  const wanted = Math.max(place.start - span, -Math.PI / 2);
  const ground = groundingAngle(limb, place);
  return ground !== null && ground > wanted ? { angle: ground, grounds: true } : { angle: wanted, grounds: false };
};

const figures = ['outward', 'inward', 'passingOut', 'passingIn', 'time', 'hit'] as const satisfies readonly Figure[];
const turns = [0, 1 / 8, 2 / 8, 3 / 8, 4 / 8, 5 / 8, 6 / 8, 7 / 8, 1];
const spins = [0, 1 / 4, 2 / 4, 3 / 4, 1];
/** The share of the range between two of these, by dimension. */
const grid = [1 / 8, 1 / 4];
/** What a place is searched for more closely, and from what share of the best so far on. */
const reaching = ['outward', 'inward'] as const satisfies readonly Figure[];
const worthwhile = 0.85;
// One figure alone, as in a search within a search, is looked for less finely.
const roundsFor = (wanted: readonly Figure[]): number => (wanted.length === 1 ? 4 : 6);

type Point = [turn: number, spin: number, cutHeight: number, length: number, start: number, slope: number];
type Best = { value: number; point: Point };

/** @returns for each figure its worst over the box and the releases; null where no limb of the box starts clear of the ground */
export const search = (box: Box, wanted: readonly Figure[] = figures): { readonly [F in Figure]: Worst } | null => {
  const ends = [[0, 1], [0, 1], box.cutHeight, box.length, box.start, box.slope] as const;
  const best = new Map<Figure, Best>();
  const here = new Map<Figure, Best>();
  const passing = wanted.includes('passingOut');
  const turnsTried = wanted.length === 1 ? turns.filter((_, i) => i % 2 === 0) : turns;
  const spinsTried = wanted.length === 1 ? spins.filter((_, i) => i % 2 === 0) : spins;
  const at = (point: Point): void => {
    const [turn, spin, cutHeight, length, start, slope] = point;
    const place: Place = { cutHeight, start, slope };
    if (!startsClear(length, place)) return;
    const limb: Limb = { length, shape: box.shape };
    const last = lastAngle(limb, place, box.span);
    const release = start + (last.angle - start) * turn;
    const fall = fallOf(limb, place, release, spin * spin, box.low, box.high, passing);
    if (last.grounds && turn === 1) ground(fall, limb, place, release);
    for (const figure of wanted) {
      const value = figure === 'time' ? -fall.time : fall[figure];
      if (value > (here.get(figure)?.value ?? -Infinity)) here.set(figure, { value, point });
      if (value > (best.get(figure)?.value ?? -Infinity)) best.set(figure, { value, point });
    }
  };
  /** Steps around the best of a figure, halved from round to round, along the first `dimensions` of the box. */
  const climb = (figure: Figure, from: ReadonlyMap<Figure, Best>, dimensions: number, rounds: number): void => {
    let reach = 1;
    for (let round = 0; round < rounds; round++) {
      reach /= 2;
      for (let i = 0; i < dimensions; i++) {
        const [low, high] = ends[i]!;
        if (low === high) continue;
        for (const way of [-1, 1]) {
          const point: Point = [...from.get(figure)!.point];
          point[i] = Math.min(high, Math.max(low, point[i]! + way * reach * (grid[i] ?? 1) * (high - low)));
          at(point);
        }
      }
    }
  };
  /** One place: all releases on the grid, then around the best of what lands furthest, where it may lead; not so closely for one figure alone. */
  const tryPlace = (cutHeight: number, length: number, start: number, slope: number): void => {
    here.clear();
    for (const turn of turnsTried) for (const spin of turn === 0 ? [0] : spinsTried) at([turn, spin, cutHeight, length, start, slope]);
    if (wanted.length === 1) return;
    for (const figure of reaching) {
      if (wanted.includes(figure) && here.has(figure) && here.get(figure)!.value > worthwhile * best.get(figure)!.value) climb(figure, here, 2, 4);
    }
  };
  const corners = (i: number): readonly number[] => (ends[i]![0] === ends[i]![1] ? [ends[i]![0]] : ends[i]!);
  for (const cutHeight of corners(2)) for (const length of corners(3)) for (const start of corners(4)) for (const slope of corners(5)) tryPlace(cutHeight, length, start, slope);
  const [, , h, l, a, g] = ends.map(([low, high]) => (low + high) / 2) as Point;
  if (ends.slice(2).some(([low, high]) => low < high)) tryPlace(h, l, a, g);
  if (best.size === 0) return null;
  for (const figure of wanted) climb(figure, best, ends.length, roundsFor(wanted));
  return Object.fromEntries(wanted.map((figure) => {
    const { value, point: [turn, spin, cutHeight, length, start, slope] } = best.get(figure)!;
    const last = lastAngle({ length, shape: box.shape }, { cutHeight, start, slope }, box.span);
    const worst: Worst = { value: figure === 'time' ? -value : value, cutHeight, length, start, slope, release: start + (last.angle - start) * turn, kept: spin * spin };
    return [figure, worst];
  })) as { readonly [F in Figure]: Worst };
};

/** The tip in the ground and the hinge still holding: the butt kicks, and may end up a length to either side of the tip. */
const ground = (fall: Fall, limb: Limb, place: Place, release: number): void => {
  const tip = limb.length * Math.cos(release);
  const lying = limb.length * Math.cos(place.slope);
  fall.outward = Math.max(fall.outward, tip + lying);
  fall.inward = Math.max(fall.inward, lying - tip);
};
