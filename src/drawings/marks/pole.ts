/** The pole and its bar, from the rear hand to the middle of the bar; true to length, the head drawn large enough to see. */
import type { Point, Shape } from '../kit/placed.ts';
import { circle, pen, polygon, segment } from '../kit/path.ts';
import { add, leftOf, less, times, unit } from '../kit/vector.ts';

/** A bar from its foot to its nose, `length` px long. */
export const bar = (foot: Point, way: Point, length: number, width: number): Shape[] => {
  const side = leftOf(unit(way));
  const ahead = unit(way);
  const half = width / 2;
  const path = pen();
  path.moveTo(...add(foot, times(side, half)));
  const nose = add(foot, times(ahead, length - half));
  path.lineTo(...add(nose, times(side, half)));
  const turn = Math.atan2(side[1], side[0]);
  path.arc(nose[0], nose[1], half, turn, turn + Math.PI);
  path.lineTo(...add(foot, times(side, -half)));
  path.closePath();
  return [
    { mark: 'bar', d: path.toString() },
    { mark: 'tool', d: segment(add(foot, times(ahead, length * 0.16)), add(nose, times(ahead, -half * 0.4))) },
  ];
};

/** `middle`: where the middle of the bar is; `barLength` in px. */
export const pole = (rear: Point, middle: Point, barLength: number): Shape[] => {
  const ahead = unit(less(middle, rear));
  const side = leftOf(ahead);
  const foot = less(middle, times(ahead, barLength / 2));
  const thick = Math.max(barLength * 0.24, 4);
  const head = less(foot, times(ahead, thick * 1.6));
  const box = [1, -1].flatMap((s) => [add(head, times(side, s * thick * 0.7)), add(foot, times(side, s * thick * 0.7))]);
  const tube = segment(less(rear, times(ahead, thick * 2)), head);
  return [
    { mark: 'edge', d: tube },
    { mark: 'pole', d: tube },
    ...bar(foot, ahead, barLength, thick),
    { mark: 'tool', d: polygon([box[0]!, box[1]!, box[3]!, box[2]!]) },
    { mark: 'tool', d: circle(rear, Math.max(thick * 0.5, 2.5)) },
  ];
};
