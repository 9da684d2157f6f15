/** The basket of an elevating platform, from beside, and the arm that holds it. Its size is only how it looks. */
import type { Point, Shape } from '../kit/placed.ts';
import { polygon, polyline, segment } from '../kit/path.ts';

/** `floor`: the middle of the basket's floor; `foot`: where the arm comes from. Sizes in px from `scale`, px a metre. */
export const platform = (floor: Point, foot: Point, scale: number): Shape[] => {
  const at = (x: number, y: number): Point => [floor[0] + x * scale, floor[1] - y * scale];
  const elbow: Point = [floor[0] - 1.1 * scale, floor[1] + (foot[1] - floor[1]) * 0.45];
  return [
    { mark: 'arrow', d: polyline([at(-0.2, -0.12), elbow, foot]) },
    { mark: 'platform', d: polygon([at(-0.55, 0), at(0.5, 0), at(0.5, -0.12), at(-0.55, -0.12)]) },
  ];
};
/** The rails, drawn over whoever stands in it. */
export const rails = (floor: Point, scale: number): Shape[] => {
  const at = (x: number, y: number): Point => [floor[0] + x * scale, floor[1] - y * scale];
  return [
    {
      mark: 'arrow',
      d: [-0.55, 0.5].map((x) => segment(at(x, 0), at(x, 1))).join('') + segment(at(-0.55, 1), at(0.5, 1)) + segment(at(-0.55, 0.5), at(0.5, 0.5)),
    },
  ];
};
