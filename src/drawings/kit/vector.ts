/** The little plane geometry that the marks share; points in px. */
import type { Point } from './placed.ts';

export const add = (a: Point, b: Point): Point => [a[0] + b[0], a[1] + b[1]];
export const less = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1]];
export const times = (a: Point, k: number): Point => [a[0] * k, a[1] * k];
export const between = (a: Point, b: Point, t: number): Point => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
export const long = (a: Point): number => Math.hypot(a[0], a[1]);
export const apart = (a: Point, b: Point): number => long(less(a, b));
/** Length one; a vector without length points right. */
export const unit = (a: Point): Point => (long(a) === 0 ? [1, 0] : times(a, 1 / long(a)));
/** A quarter turn to the left of the way it points, as seen on the page. */
export const leftOf = (a: Point): Point => [a[1], -a[0]];
/** The way at an angle above the horizontal, degrees, to the right; y runs down the page. */
export const way = (degrees: number): Point => {
  const angle = (degrees * Math.PI) / 180;
  return [Math.cos(angle), -Math.sin(angle)];
};
