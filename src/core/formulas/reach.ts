/**
 * A pole held out to a cut, over ground that rises towards it. Plane trigonometry; no outside source is needed, and
 * none on pole saws was found. Lengths in m, angles in degrees above the horizontal.
 *
 * The feet are `s` from plumb under the cut, level distance. The ground rises towards the cut at `slope`, so the cut
 * stands `rise + s·tan(slope)` above the grip, where `rise` is the cut's height over the ground under it less the grip's
 * height over the feet.
 */
import { angleUp, cos, sin, tan } from './angles.ts';

/** How far above the grip the cut is, seen from `standOff` (m). */
export const riseFrom = (rise: number, slope: number, standOff: number): number => rise + standOff * tan(slope);

/** The nearest stand-off (m) at which the pole is no steeper than `limit`: rise ÷ (tan limit − tan slope), not under 0. */
export const standOffAtSteepest = (rise: number, slope: number, limit: number): number =>
  Math.max(0, rise / (tan(limit) - tan(slope)));

/**
 * The nearest stand-off (m) at which the pole, held down to a cut below the grip, is no lower than `lowest` (< 0).
 * Infinite where the ground falls as fast as that: then it is lower from everywhere.
 */
export const standOffAtLowest = (rise: number, slope: number, lowest: number): number => {
  if (rise >= 0) return 0;
  const opening = tan(slope) - tan(lowest);
  return opening > 0 ? -rise / opening : Infinity;
};

/**
 * The stand-off (m) where a pole of this length just reaches: the larger root of s² + (rise + s·tan slope)² = length².
 * Null where it reaches from nowhere.
 */
export const standOffAtLength = (rise: number, slope: number, length: number): number | null => {
  const t = tan(slope);
  const a = 1 + t * t;
  const under = length * length * a - rise * rise;
  if (under < 0) return null;
  const s = (Math.sqrt(under) - rise * t) / a;
  return s < 0 ? null : s;
};

/** The pole's angle (degrees) from `standOff`. */
export const poleAngleFrom = (rise: number, slope: number, standOff: number): number =>
  angleUp(riseFrom(rise, slope, standOff), standOff);

/** The height (m) over the ground under it of a cut made at `angle` with a pole of this length, gripped at `grip`. */
export const cutHeightAt = (grip: number, slope: number, length: number, angle: number): number =>
  grip + length * (sin(angle) - cos(angle) * tan(slope));
