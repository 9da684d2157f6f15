/** A wire between two points, hanging `sag` px at the middle, with the fittings it hangs from. */
import type { Point, Shape } from '../kit/placed.ts';
import { circle, pen } from '../kit/path.ts';

export const line = (from: Point, to: Point, sag: number): Shape[] => {
  const path = pen();
  path.moveTo(...from);
  path.quadraticCurveTo((from[0] + to[0]) / 2, (from[1] + to[1]) / 2 + 2 * sag, ...to);
  return [
    { mark: 'line', d: path.toString() },
    { mark: 'fitting', d: [from, to].map((end) => circle(end, 3.5)).join('') },
  ];
};

/** A wire seen end on: a spot in a ring, its place and nothing of its thickness. */
export const lineEnd = (at: Point): Shape[] => [
  { mark: 'fitting', d: circle(at, 6) },
  { mark: 'arrowhead', d: circle(at, 2.5) },
];
