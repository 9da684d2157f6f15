/** A length: its line, a slanting stroke at each end, and thin lines back to what is measured. */
import type { Point, Shape } from '../kit/placed.ts';
import { segment } from '../kit/path.ts';
import { add, between, leftOf, less, times, unit } from '../kit/vector.ts';

/** `off`: px from the measured points to the dimension line, to the left of the way from `a` to `b` (right if negative). */
export const dimension = (a: Point, b: Point, off: number): { shapes: Shape[]; middle: Point } => {
  const along = unit(less(b, a));
  const side = leftOf(along);
  const [p, q] = [add(a, times(side, off)), add(b, times(side, off))];
  const slant = times(unit(add(along, side)), 5);
  const sign = Math.sign(off);
  const thread = (from: Point, to: Point) => segment(add(from, times(side, sign * 3)), add(to, times(side, sign * 4)));
  const threads = off === 0 ? '' : thread(a, p) + thread(b, q);
  const ends = [p, q].map((end) => segment(less(end, slant), add(end, slant))).join('');
  return { shapes: [{ mark: 'dim', d: segment(p, q) + ends + threads }], middle: between(p, q, 0.5) };
};
