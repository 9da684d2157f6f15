/** An arrow: which way something moves or pushes. */
import type { Point, Shape } from '../kit/placed.ts';
import { polygon, segment } from '../kit/path.ts';
import { add, leftOf, less, times, unit } from '../kit/vector.ts';

const head = (to: Point, way: Point): string => {
  const back = less(to, times(way, 9));
  return polygon([to, add(back, times(leftOf(way), 4.5)), less(back, times(leftOf(way), 4.5))]);
};

export const arrow = (from: Point, to: Point): Shape[] => {
  const way = unit(less(to, from));
  return [
    { mark: 'arrow', d: segment(from, less(to, times(way, 7))) },
    { mark: 'arrowhead', d: head(to, way) },
  ];
};
