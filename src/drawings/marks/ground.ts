/** The ground: a line, and short strokes under it. */
import type { Point, Shape } from '../kit/placed.ts';
import { segment } from '../kit/path.ts';
import { add, apart, between, times, unit, less } from '../kit/vector.ts';

export const ground = (from: Point, to: Point): Shape[] => {
  const n = Math.max(2, Math.round(apart(from, to) / 16));
  const back = times(unit(less(to, from)), -5);
  const strokes = Array.from({ length: n }, (_, i) => {
    const top = between(from, to, (i + 0.6) / n);
    return segment(top, add(add(top, back), [0, i % 3 === 1 ? 8 : 5]));
  }).join('');
  return [
    { mark: 'ground', d: segment(from, to) },
    { mark: 'soil', d: strokes },
  ];
};
