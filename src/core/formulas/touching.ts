/**
 * How far out and back a limb may come to lie, what it passes on the way, how soon and how hard it comes down: over every
 * release of the hinge and every share of the energy that it may eat. Edges, not samples: in each cell each figure is
 * taken from the ends that make it worst, and between the nodes of a cell a smooth term passes the larger of them by
 * less than its curvature × step² ÷ 8, which is added. Units as in fall-cells.ts.
 */
import { aboutCentre, hingeTime } from './falling-limb.ts';
import { type Cell, type Column, eachCell, type Ends, type Given, type Node, step } from './fall-cells.ts';
import { gravity } from './gravity.ts';
import { passes } from './passing.ts';
import { afterTouch, thrownOn, topples } from './settling.ts';

export type Figure = 'outward' | 'inward' | 'passingOut' | 'passingIn' | 'time' | 'hit';
/** An edge, and a fall at it: let go at `release`, turned on to `angle`. */
export type Edge = { value: number; release: number; angle: number };
export type Edges = { readonly [F in Figure]: Edge };

/** No term is curved by more than this. */
const curved = 4;
const between = (curved * step * step) / 8;
/** A figure that two lines bound may have a corner there, of one length for each radian. */
const corner = step / 4;
const turn = 2 * Math.PI;
/** One of the angles at, at ± a turn … lies from one to another. */
const within = (at: number, from: number, to: number): boolean => Math.floor((to - at) / turn) > Math.floor((from - at) / turn);

/**
 * @param band heights between which passing is asked for, or null
 * @param only one side alone: the other figures are then left as they are
 * @param known figures that are looked for past these values only, and come back as these where there is none
 */
export const touching = (given: Given, band: Ends | null, only: 'outward' | 'inward' | null = null, known: { readonly [F in Figure]?: number } = {}): Edges | null => {
  const { shape, slope, start } = given;
  const c = shape.centre;
  const inertia = aboutCentre({ length: 1, shape });
  const lying = slope[0] <= 0 && slope[1] >= 0 ? 1 : Math.max(Math.cos(slope[0]), Math.cos(slope[1]));
  const [t1, t2] = [Math.tan(slope[0]), Math.tan(slope[1])];
  const [sine1, sine2] = [Math.sin(slope[0]), Math.sin(slope[1])];
  const from = (value: number): Edge => ({ value, release: start[1], angle: start[1] });
  const edges = {
    outward: from(only === 'inward' ? Infinity : known.outward ?? 0), inward: from(only === 'outward' ? Infinity : known.inward ?? 0),
    passingOut: from(known.passingOut ?? 0), passingIn: from(known.passingIn ?? 0), time: from(known.time ?? Infinity), hit: from(known.hit ?? 0),
  };
  const note = (edge: Edge, value: number, release: number, angle: number): void => {
    if (value <= edge.value) return;
    edge.value = value;
    edge.release = release;
    edge.angle = angle;
  };
  const heldAt = c * Math.sin(start[0]);
  /** No limb is turned down to an angle sooner than one that the hinge holds and takes nothing from, from the lowest start. */
  const times = new Map<number, number>();
  const turnedBy = (angle: number): number => {
    const to = Math.max(angle, -Math.PI / 2);
    if (to >= start[0]) return 0;
    const before = times.get(to);
    if (before !== undefined) return before;
    const time = hingeTime({ length: gravity, shape }, start[0], to, 1);
    times.set(to, time);
    return time;
  };

  const ends = [c, 1 - c].map((arm) => {
    const after = afterTouch(arm);
    // The most that a limb may go on from there.
    const [back, forth] = [slope[1], -slope[0]].map((down) => lying + Math.max(thrownOn(after, 0, Infinity, down), thrownOn(after, Math.max(0, down), Infinity, down)) + between);
    // Flat on the other end, a limb that turned over this one turns on over that one, slower or faster.
    const whips = Math.max(1, (arm * (1 - arm) - inertia) / (inertia + (1 - arm) ** 2)) ** 2;
    return { after, arm, whips, about: inertia + arm * arm, mostBack: back!, mostForth: forth! };
  });

  /** Toppling over an end between these places, how far level from there it may pass at the heights: never more than a full length. */
  const levelAt = (left: number, right: number, heights: Ends): number => {
    const [from, to] = [left - between, right + between];
    const up = Math.max(0, heights[0] - Math.max(from * t1, from * t2, to * t1, to * t2));
    return up < 1 && Math.min(from * t1, from * t2, to * t1, to * t2) <= heights[1] ? Math.sqrt(1 - up * up) : 0;
  };

  const touch = ({ column, above, below, turnedLeast, turnedMost }: Cell, isButt: boolean): void => {
    const { after, arm, whips, about, mostBack, mostForth } = isButt ? ends[0]! : ends[1]!;
    const own = isButt ? -arm : arm;
    const left = Math.min(above.left + own * above.cos, below.left + own * below.cos);
    const right = Math.max(above.right + own * above.cos, below.right + own * below.cos);
    if (only && mostBack - left <= edges.inward.value && mostForth + right <= edges.outward.value) return;
    const long = Math.sqrt(2 * Math.max(between, between + (isButt ? Math.max(above.buttMost, below.buttMost) : Math.max(above.tipMost, below.tipMost))));
    const slow = turnedLeast / long;
    const least = (isButt ? Math.min(above.buttLeast, below.buttLeast) : Math.min(above.tipLeast, below.tipLeast)) - between;
    const short = Math.max(Math.sqrt(2 * Math.max(0, least)), turnedLeast / column.spin);
    const fast = short > 0 ? Math.min(column.spin, turnedMost / short) : column.spin;
    const cos1 = Math.cos(turnedLeast);
    const cos2 = Math.cos(turnedMost);
    const cosMost = turnedLeast <= 0 || within(0, turnedLeast, turnedMost) ? 1 : Math.max(cos1, cos2);
    const cosLeast = within(Math.PI, turnedLeast, turnedMost) ? -1 : Math.min(cos1, cos2);
    const leverLeast = inertia - c * own * (isButt ? cosLeast : cosMost);
    const leverMost = inertia - c * own * (isButt ? cosMost : cosLeast);
    // How fast the limb turns over its end towards the stem side, then the other way.
    const pullMost = Math.max(own * above.cos, own * below.cos) + between;
    const pullLeast = Math.min(own * above.cos, own * below.cos) - between;
    // Pull × time and lever × turned ÷ time: whatever their signs, most at one of the ends of the time.
    const shortSlow = short > 0 ? turnedLeast / short : column.spin;
    const longFast = Math.min(column.spin, turnedMost / long);
    const back = Math.max(
      pullMost * short - leverLeast * (leverLeast >= 0 ? shortSlow : fast),
      pullMost * long - leverLeast * (leverLeast >= 0 ? slow : longFast),
    ) / about;
    const forth = Math.max(
      leverMost * (leverMost >= 0 ? fast : shortSlow) - pullLeast * short,
      leverMost * (leverMost >= 0 ? longFast : slow) - pullLeast * long,
    ) / about;
    const energyBack = back > 0 ? (about * back * back) / 2 : 0;
    const energyForth = forth > 0 ? (about * forth * forth) / 2 : 0;
    const turning2 = Math.max(back, forth, 0) ** 2;
    const mix = c * c + own * own + 2 * c * own * (isButt ? cosLeast : cosMost);
    const mayPass = band !== null && (mostBack + corner - left > edges.passingIn.value || mostForth + corner + right > edges.passingOut.value);
    const level = mayPass ? levelAt(left, right, band) : 0;
    for (let k = 0; k < 2; k++) {
      const node = k === 0 ? above : below;
      const left = node.left + own * node.cos;
      const right = node.right + own * node.cos;
      const across = c * column.cosMost + own * node.cos;
      const end2 = fast * fast * mix + long * long + 2 * (across >= 0 ? across * fast * long : across * slow * short);
      const down = isButt ? node.sin : -node.sin;
      const goesBack = mostBack - left > edges.inward.value || (level > 0 && mostBack + corner - left > edges.passingIn.value);
      const goesForth = mostForth + right > edges.outward.value || (level > 0 && mostForth + corner + right > edges.passingOut.value);
      const hits = !only && Math.max(end2, whips * (turning2 + (2 * arm * (down + Math.max(sine2, -sine1))) / about)) + between > edges.hit.value ** 2;
      if (!goesBack && !goesForth && !hits) continue;
      const release = Math.max(column.from, node.angle);
      // The lean towards the stem side.
      const raw = node.angle + (isButt ? -Math.PI / 2 : Math.PI / 2);
      const lean = raw - turn * Math.floor((raw + Math.PI) / turn);
      if (goesBack) {
        const on = (back > 0 ? thrownOn(after, lean, energyBack, slope[1]) : 0) + between - left;
        const lies = lying * topples(arm, lean, energyBack);
        note(edges.inward, lies + on, release, node.angle);
        if (level > 0 && lies > 0) note(edges.passingIn, Math.min(level, lies) + on + corner, release, node.angle);
      }
      if (goesForth) {
        const on = (forth > 0 ? thrownOn(after, -lean, energyForth, -slope[0]) : 0) + between + right;
        const lies = lying * topples(arm, -lean, energyForth);
        note(edges.outward, lies + on, column.to, node.angle);
        if (level > 0 && lies > 0) note(edges.passingOut, Math.min(level, lies) + on + corner, column.to, node.angle);
      }
      if (!hits) continue;
      // Slammed down flat to a side it may lean to, where it glides on over the other end; the end itself as it touches.
      const sine = Math.max(lean > -step ? sine2 : -1, lean < step ? -sine1 : -1);
      const slam = whips * (turning2 + (2 * arm * (down + sine)) / about);
      note(edges.hit, Math.sqrt(Math.max(0, slam, end2) + between), release, node.angle);
    }
    if (only) return;
    // The centre falls no faster than a stone from where it was held (the hinge only ever bears it); then it has to turn, and to fall.
    const fallen = Math.max(0, least + heldAt - Math.max(above.drop, below.drop) - between);
    const soonest = Math.max(Math.sqrt(2 * fallen), short);
    if (soonest >= edges.time.value) return;
    const time = Math.max(soonest, turnedBy(above.angle), turnedBy(column.to) + short);
    if (time < edges.time.value) edges.time = { value: time, release: column.to, angle: below.angle };
  };

  const sweep = ({ column, above, below, turnedLeast }: Cell, heights: Ends): void => {
    const tall = Math.max(above.tall, below.tall) - (turnedLeast / column.spin) ** 2 / 2 + between;
    const low = Math.min(above.low, below.low) - between;
    for (let k = 0; k < 2; k++) {
      const node: Node = k === 0 ? above : below;
      if (node.right + 1 + corner + between > edges.passingOut.value) note(edges.passingOut, passes(1, node.right, low, tall, node.cos, node.sin, c, heights) + corner + between, column.to, node.angle);
      if (1 - node.left + corner + between > edges.passingIn.value) note(edges.passingIn, passes(-1, -node.left, low, tall, node.cos, node.sin, c, heights) + corner + between, Math.max(column.from, node.angle), node.angle);
    }
  };

  // What is thrown back furthest is let go last: from there on, most of the others are soon seen to reach less.
  const [mostBack, mostForth] = [Math.max(ends[0]!.mostBack, ends[1]!.mostBack), Math.max(ends[0]!.mostForth, ends[1]!.mostForth)];
  const arm = Math.max(c, 1 - c);
  const worth = ({ out, back }: Column): boolean => !only || arm + back + mostBack > edges.inward.value || arm + out + mostForth > edges.outward.value;
  const any = eachCell(given, only === 'inward', worth, (cell) => {
    // Which end is the lower, of all slopes there may be.
    const from = cell.below.angle - slope[1];
    const wide = cell.above.angle - slope[0] - from;
    const side = from - turn * Math.floor(from / turn);
    if (side <= Math.PI || side + wide >= turn) touch(cell, true);
    if (side + wide >= Math.PI) touch(cell, false);
    if (band) sweep(cell, band);
  });
  return any ? edges : null;
};
