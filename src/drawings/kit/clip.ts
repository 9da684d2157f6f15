/** What of a polygon lies in a rectangle (Sutherland and Hodgman, side by side), so that nothing is drawn outside the sheet. */
import type { Box, Point } from './placed.ts';

type Side = { inside: (p: Point) => boolean; meet: (a: Point, b: Point) => Point };

const sides = ({ width, height }: Box): Side[] => {
  const upright = (x: number) => (a: Point, b: Point): Point => [x, a[1] + ((b[1] - a[1]) * (x - a[0])) / (b[0] - a[0])];
  const level = (y: number) => (a: Point, b: Point): Point => [a[0] + ((b[0] - a[0]) * (y - a[1])) / (b[1] - a[1]), y];
  return [
    { inside: ([x]) => x >= 0, meet: upright(0) },
    { inside: ([x]) => x <= width, meet: upright(width) },
    { inside: ([, y]) => y >= 0, meet: level(0) },
    { inside: ([, y]) => y <= height, meet: level(height) },
  ];
};

/** Empty where nothing of it lies in the box. */
export const clipped = (polygon: readonly Point[], box: Box): Point[] =>
  sides(box).reduce<Point[]>((points, { inside, meet }) => points.flatMap((to, i) => {
    const from = points.at(i - 1) as Point;
    if (inside(to)) return inside(from) ? [to] : [meet(from, to), to];
    return inside(from) ? [meet(from, to)] : [];
  }), [...polygon]);

/** Where a ray from a point of the box, px and unit length, comes within `rim` px of its edge. */
export const edgePoint = ([x, y]: Point, [dx, dy]: Point, box: Box, rim: number): Point => {
  const room = (at: number, way: number, size: number): number => (way > 0 ? (size - rim - at) / way : way < 0 ? (rim - at) / way : Infinity);
  const far = Math.max(0, Math.min(room(x, dx, box.width), room(y, dy, box.height)));
  return [x + dx * far, y + dy * far];
};
