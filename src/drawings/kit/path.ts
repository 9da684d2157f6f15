/** Paths in px, to a tenth: shorter pages, and nothing that an eye could see is lost. */
import { pathRound } from 'd3';
import { add, leftOf, less, times, unit } from './vector.ts';
import type { Point, Rect } from './placed.ts';

export const pen = () => pathRound(1);

export const polyline = (points: readonly Point[], closed = false): string => {
  const path = pen();
  points.forEach(([x, y], i) => (i === 0 ? path.moveTo(x, y) : path.lineTo(x, y)));
  if (closed) path.closePath();
  return path.toString();
};
export const polygon = (points: readonly Point[]): string => polyline(points, true);
export const segment = (a: Point, b: Point): string => polyline([a, b]);

/** A smooth line through all points: each is left in the direction of its neighbours. */
export const smooth = (points: readonly Point[], closed = false): string => {
  const path = pen();
  const n = points.length;
  const at = (i: number): Point => points[closed ? (i + n) % n : Math.min(Math.max(i, 0), n - 1)]!;
  path.moveTo(...at(0));
  for (let i = 0; i < (closed ? n : n - 1); i += 1) {
    const lead = add(at(i), times(less(at(i + 1), at(i - 1)), 1 / 6));
    const trail = add(at(i + 1), times(less(at(i), at(i + 2)), 1 / 6));
    path.bezierCurveTo(...lead, ...trail, ...at(i + 1));
  }
  if (closed) path.closePath();
  return path.toString();
};

export const circle = ([x, y]: Point, radius: number): string => {
  const path = pen();
  path.moveTo(x + radius, y);
  path.arc(x, y, radius, 0, 2 * Math.PI);
  path.closePath();
  return path.toString();
};

/** Axes `a` and `b`, the first turned by `degrees` above the horizontal. */
export const ellipse = (centre: Point, a: number, b: number, degrees = 0): string => {
  const angle = (degrees * Math.PI) / 180;
  const along: Point = [Math.cos(angle), -Math.sin(angle)];
  const points = Array.from({ length: 24 }, (_, i): Point => {
    const turn = (i * Math.PI) / 12;
    return add(add(centre, times(along, a * Math.cos(turn))), times(leftOf(along), b * Math.sin(turn)));
  });
  return smooth(points, true);
};

/** A rod with round ends, `ra` and `rb` thick at its ends. */
export const rod = (a: Point, b: Point, ra: number, rb: number): string => {
  const path = pen();
  const side = leftOf(unit(less(b, a)));
  const turn = Math.atan2(side[1], side[0]);
  path.moveTo(...add(a, times(side, ra)));
  path.lineTo(...add(b, times(side, rb)));
  path.arc(b[0], b[1], rb, turn, turn + Math.PI);
  path.lineTo(...add(a, times(side, -ra)));
  path.arc(a[0], a[1], ra, turn + Math.PI, turn + 2 * Math.PI);
  path.closePath();
  return path.toString();
};

/** A part of a ring about a centre, between two angles above the horizontal (degrees, counter-clockwise). */
export const ringPart = ([x, y]: Point, inner: number, outer: number, from: number, to: number): string => {
  const path = pen();
  const a = (-from * Math.PI) / 180;
  const b = (-to * Math.PI) / 180;
  path.moveTo(x + outer * Math.cos(a), y + outer * Math.sin(a));
  path.arc(x, y, outer, a, b, b < a);
  path.lineTo(x + inner * Math.cos(b), y + inner * Math.sin(b));
  if (inner > 0) path.arc(x, y, inner, b, a, a < b);
  path.closePath();
  return path.toString();
};

/** The open arc of a circle between two angles above the horizontal. */
export const arc = ([x, y]: Point, radius: number, from: number, to: number): string => {
  const path = pen();
  const a = (-from * Math.PI) / 180;
  path.moveTo(x + radius * Math.cos(a), y + radius * Math.sin(a));
  path.arc(x, y, radius, a, (-to * Math.PI) / 180, to > from);
  return path.toString();
};

export const around = (points: readonly Point[], more = 0): Rect => {
  const xs = points.map((p) => p[0]);
  const ys = points.map((p) => p[1]);
  const x = Math.min(...xs) - more;
  const y = Math.min(...ys) - more;
  return { x, y, width: Math.max(...xs) + more - x, height: Math.max(...ys) + more - y };
};
