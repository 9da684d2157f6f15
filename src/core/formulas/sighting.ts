/**
 * Heights by sighting: the tangent method (user manual of a clinometer, Iowa State University: sources
 * `clinometer-manual`, `isu-clinometer`). Lengths in m; angles in degrees above the horizontal.
 */
import { angleUp, cos, tan } from './angles.ts';

/** The level part (m) of a distance taped along a slope. */
export const levelPart = (taped: number, slope: number): number => taped * cos(slope);

/** How far above the eye (m) a point is, seen at `angle` over a level distance. */
export const aboveEye = (level: number, angle: number): number => level * tan(angle);

/** Degrees from a percent scale: it reads 100 times the tangent. */
export const fromPercent = (percent: number): number => angleUp(percent, 100);

/**
 * How far the top of a straight pole (m) stands above its lower end, the two ends `standOff` apart on the level.
 * Null where the pole does not span that distance.
 */
export const poleRise = (length: number, standOff: number): number | null =>
  length > standOff ? Math.sqrt(length * length - standOff * standOff) : null;
