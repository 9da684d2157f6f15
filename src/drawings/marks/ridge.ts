/** The branch bark ridge: bark pushed up along a wavering line, with the wrinkles at both its sides. */
import type { Point, Shape } from '../kit/placed.ts';
import { segment, smooth } from '../kit/path.ts';
import { add, apart, between, leftOf, less, times, unit } from '../kit/vector.ts';

export const ridge = (from: Point, to: Point): Shape[] => {
  const n = Math.max(4, Math.round(apart(from, to) / 7));
  const along = unit(less(to, from));
  const side = leftOf(along);
  const points = Array.from({ length: n + 1 }, (_, i): Point => add(between(from, to, i / n), times(side, i % n === 0 ? 0 : 1.6 * Math.sin(i * 2.2))));
  const wrinkles = points.slice(1, -1).map((point, i) => {
    const way = times(side, i % 2 === 0 ? 1 : -1);
    const start = add(point, times(way, 2.5));
    return segment(start, add(start, add(times(way, 3.5), times(along, -3 - (i % 3)))));
  });
  if (n < 7) return [{ mark: 'ridge', d: smooth(points) }];
  return [
    { mark: 'ridge', d: smooth(points) },
    { mark: 'bark', d: wrinkles.join('') },
  ];
};
