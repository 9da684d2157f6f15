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
