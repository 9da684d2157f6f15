/**
 * Volume of a round log or limb, m³, from its length (m) and diameters (mm).
 * Huber, Smalian and Newton, as in D. R. Larsen, Forestry functions: cubic log volume (source `log-volume-functions`).
 * Huber is exact for a cylinder and a paraboloid, Smalian for the same and above the truth for a cone, Newton for all
 * three and a neiloid, where the middle is measured.
 */
import { circleArea } from './section.ts';

const area = (diameter: number): number => circleArea(diameter / 1000);

/** From the diameter at mid length. */
export const huber = (middle: number, length: number): number => area(middle) * length;
/** From both ends. */
export const smalian = (butt: number, tip: number, length: number): number => ((area(butt) + area(tip)) / 2) * length;
/** From both ends and the middle. */
export const newton = (butt: number, middle: number, tip: number, length: number): number =>
  ((area(butt) + 4 * area(middle) + area(tip)) / 6) * length;
