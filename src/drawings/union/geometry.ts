/**
 * Where a branch joins its stem, from beside, and where the last cut goes: at the collar, by the mirror where no collar
 * shows, and flush with the stem to compare. Not to scale: one union, its branch half as thick as its stem.
 */
import { inset } from '../kit/frame.ts';
import { along } from '../kit/labels.ts';
import { arc, pen, segment, smooth } from '../kit/path.ts';
import { finish, sketch, type Picture, type Sketch } from '../kit/picture.ts';
import type { Point } from '../kit/placed.ts';
import { same, word } from '../kit/say.ts';
import { add, between, less, times, unit } from '../kit/vector.ts';
import { codominant } from './codominant.ts';
import { ridge } from '../marks/ridge.ts';

export type Face = 'collar' | 'no-collar' | 'flush' | 'codominant';
type OneBranch = Exclude<Face, 'codominant'>;

/** In stem widths, from the top of the ridge, y up. The branch rises at this angle; the ridge falls away from upright by its own. */
const rise = 38;
const ridgeAngle = 30;
const thick = 0.56;
const polar = (degrees: number, length: number): Point => [
  Math.cos((degrees * Math.PI) / 180) * length,
  Math.sin((degrees * Math.PI) / 180) * length,
];
const below: Point = polar(rise - 90, thick);
/** A point on the under edge of the branch, `t` out from square under the top of the ridge. */
const under = (t: number): Point => add(below, polar(rise, t));
/** Where the mirror of the ridge meets the under edge: both lines start at the top of the ridge or square under it. */
const mirrorLength = thick / Math.sin(((90 - ridgeAngle + rise) * Math.PI) / 180);
const mirrorEnd = polar(ridgeAngle - 90, mirrorLength);
const ridgeEnd = polar(-90 - ridgeAngle, 0.62);
const reach = 1.42;

const stemEdges = {
  collar: { right: [[0.03, -1.5], [0.02, -1.2], [0.08, -0.92], [0.24, -0.63], [0.39, -0.43]] as Point[], out: 0.16 },
  plain: { right: [[0.0, -1.5], [-0.01, -1.15], [0.02, -0.86], [0.14, -0.64]] as Point[], out: -0.02 },
};

type Wood = { cutTop: Point; cutEnd: Point };

/** The stem with its branch as one outline, and the branch beyond the cut hatched. */
const wood = (s: Sketch, face: OneBranch): Wood => {
  const edge = face === 'no-collar' ? stemEdges.plain : stemEdges.collar;
  const p = (points: readonly Point[]) => points.map(([x, y]) => s.at(x, y));
  const top: Point[] = [[0.0, 0.95], [-0.01, 0.5], [-0.005, 0.2], [0.04, 0.055], [0.16, 0.12]];
  const far = polar(rise, reach);
  const farUnder = add(far, polar(rise - 90, thick * 0.9));
  const path = pen();
  const left: Point[] = [[-1.02, 0.95], [-1.0, 0.3], [-1.02, -0.5], [-1.06, -1.5]];
  const outline = [...top, far];
  const back = [farUnder, under(edge.out + 0.24), ...edge.right.toReversed()];
  const wave = (from: Point, to: Point) => {
    const out = times(unit([to[1] - from[1], from[0] - to[0]]), 8);
    path.bezierCurveTo(...add(between(from, to, 0.3), out), ...less(between(from, to, 0.65), out), ...to);
  };
  const follow = (points: readonly Point[]) => {
    const at = (i: number) => points[Math.min(Math.max(i, 0), points.length - 1)]!;
    for (let i = 0; i < points.length - 1; i += 1) {
      path.bezierCurveTo(...add(at(i), times(less(at(i + 1), at(i - 1)), 1 / 6)), ...add(at(i + 1), times(less(at(i), at(i + 2)), 1 / 6)), ...at(i + 1));
    }
  };
  const [o, b, l] = [p(outline), p(back), p(left)];
  path.moveTo(...o[0]!);
  follow(o);
  wave(o.at(-1)!, b[0]!);
  follow(b);
  wave(b.at(-1)!, l.at(-1)!);
  follow(l.toReversed());
  wave(l[0]!, o[0]!);
  s.draw({ mark: 'stem', d: path.toString() });

  const ends: { readonly [F in OneBranch]: Wood } = {
    collar: { cutTop: [0.055, 0.06], cutEnd: under(edge.out - 0.03) },
    'no-collar': { cutTop: [0, 0], cutEnd: mirrorEnd },
    flush: { cutTop: [0, 0.22], cutEnd: [0.03, -1.22] },
  };
  const { cutTop, cutEnd } = ends[face];
  const goes = pen();
  const beyond = face === 'flush' ? [...top.slice(2), far] : [cutTop, [0.17, 0.13] as Point, far];
  const backTo = face === 'flush' ? [...back, cutEnd] : [farUnder, under(edge.out + 0.24), cutEnd];
  const q = [p(beyond), p(backTo)];
  goes.moveTo(...q[0]![0]!);
  for (const point of q[0]!.slice(1)) goes.lineTo(...point);
  const [from, to] = [q[0]!.at(-1)!, q[1]![0]!];
  const out = times(unit([to[1] - from[1], from[0] - to[0]]), 8);
  goes.bezierCurveTo(...add(between(from, to, 0.3), out), ...less(between(from, to, 0.65), out), ...to);
  for (const point of q[1]!.slice(1)) goes.lineTo(...point);
  goes.closePath();
  s.draw({ mark: 'piece', d: goes.toString() });
  return { cutTop, cutEnd };
};

/** Wrinkles of the swelling under the branch. */
const swelling = (s: Sketch) => {
  for (const [i, from] of ([[0.05, -0.18], [-0.04, -0.34], [-0.12, -0.5]] as Point[]).entries()) {
    const mid: Point = [0.2 - i * 0.06, -0.46 - i * 0.17];
    const end: Point = [0.2 - i * 0.09, -0.66 - i * 0.13];
    s.draw({ mark: 'collar', d: smooth([from, mid, end].map(([x, y]) => s.at(x, y))) });
  }
};

/** A line with a little more at both ends, so that it is seen as a cut. */
const through = (s: Sketch, a: Point, b: Point, more = 11) => {
  const [p, q] = [s.at(...a), s.at(...b)];
  const way = times(unit(less(q, p)), more);
  return [less(p, way), add(q, way)] as const;
};

export const geometry: Picture<Face> = (view, box) => {
  const s = sketch({ left: -1.1, right: 1.15, bottom: -1.5, top: 0.95 }, box, inset(8, { left: box.width * 0.06, right: box.width * 0.06 }));
  if (view.face === 'codominant') {
    codominant(s, view.labels);
    return { ...finish(s), handles: [] };
  }
  const say = (name: string) => same(word(view.labels, name));
  const { cutTop, cutEnd } = wood(s, view.face);
  s.draw(ridge(s.at(0.02, 0.03), s.at(...ridgeEnd)));
  if (view.face !== 'no-collar') swelling(s);
  const [from, to] = through(s, cutTop, cutEnd);
  const keep = (a: Point, b: Point) => s.keepOff.push(...along(a, b));

  s.asks.push({ text: say('ridge'), at: s.at(...between([0, 0], ridgeEnd, 0.75)), places: ['left', 'above-left'], gap: 12, wrap: 12 });
  if (view.face === 'no-collar') {
    const foot = s.at(0, -1.15);
    const head = s.at(0, 0.75);
    const top = s.at(0, 0);
    const radius = s.px(0.42);
    s.draw(
      { mark: 'guide', d: segment(head, foot) },
      { mark: 'dim', d: arc(top, radius, 270 - ridgeAngle, 270) + arc(top, radius + 4, 270, 270 + ridgeAngle) },
      { mark: 'othercut', d: segment(...through(s, [0, 0], below, 14)) },
    );
    s.asks.push(
      { text: say('stem-line'), at: s.at(0, 0.62), places: ['right'], gap: 8, wrap: 14 },
      { text: say('mirror'), at: to, places: ['below-right', 'below'], strong: true, wrap: 18 },
      { text: say('square'), at: through(s, [0, 0], below, 14)[1], places: ['right', 'below-right'], wrap: 16 },
      { text: say('same-angle'), at: s.at(...polar(-90 - ridgeAngle / 2, 0.43)), places: ['below-left', 'left'], wrap: 11, gap: 16 },
    );
  } else if (view.face === 'collar') {
    s.asks.push(
      { text: say('cut'), at: to, places: ['below-right', 'right'], strong: true, wrap: 16 },
      { text: say('collar'), at: s.at(0.12, -0.76), places: ['below-left', 'left'], gap: 26, wrap: 14 },
    );
  } else {
    s.draw({ mark: 'othercut', d: segment(...through(s, [0.055, 0.06], under(0.13), 12)) });
    s.asks.push(
      { text: say('flush'), at: to, places: ['right', 'below-right'], strong: true, wrap: 18 },
      { text: say('instead'), at: through(s, [0.055, 0.06], under(0.13), 12)[1], places: ['right', 'below-right'], wrap: 18 },
      { text: say('stem-wood'), at: s.at(0.12, -0.8), places: ['right', 'below-right'], gap: 16, wrap: 26 },
    );
  }
  s.draw({ mark: 'cut', d: segment(from, to) });
  s.asks.push({ text: say('goes'), at: s.at(...add(polar(rise, 0.95), polar(rise - 90, thick / 2))), places: ['on'], leader: false });
  s.asks.push({ text: say('stem'), at: s.at(-0.55, -1.05), places: ['on'], leader: false });
  keep(from, to);
  keep(s.at(0, 0), s.at(...ridgeEnd));
  return { ...finish(s), handles: [] };
};
