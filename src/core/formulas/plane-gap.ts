/**
 * Distances in the upright plane square to a line: the line is a point (x level, z up, metres). Plane geometry; checked
 * against an independent geometry library.
 *
 * What stands higher than the line counts as if it were level with it, so every part is taken with all the space under
 * it: the gap to a part over the line is its level distance, never the longer slant.
 */
export type Point = { readonly x: number; readonly z: number };

/** From a point to a segment. */
const toSegment = (p: Point, a: Point, b: Point): number => {
  const dx = b.x - a.x;
  const dz = b.z - a.z;
  const square = dx * dx + dz * dz;
  const t = square === 0 ? 0 : Math.max(0, Math.min(1, ((p.x - a.x) * dx + (p.z - a.z) * dz) / square));
  return Math.hypot(p.x - a.x - t * dx, p.z - a.z - t * dz);
};

/** From a point to the space on and under an outline given from left to right; 0 inside. */
export const gapUnder = (p: Point, outline: readonly [Point, ...Point[]]): number => {
  const first = outline[0];
  const last = outline[outline.length - 1] as Point;
  let least = Infinity;
  for (let i = 1; i < outline.length; i++) {
    const a = outline[i - 1] as Point;
    const b = outline[i] as Point;
    if (p.x >= a.x && p.x <= b.x && b.x > a.x && p.z <= a.z + ((b.z - a.z) * (p.x - a.x)) / (b.x - a.x)) return 0;
    least = Math.min(least, toSegment(p, a, b));
  }
  const beside = (end: Point): number => Math.hypot(p.x - end.x, Math.max(0, p.z - end.z));
  return Math.min(least, beside(first), beside(last));
};

/** From a point to all that a length turning about any point of an upright strip can reach, and the space under it. */
export const gapToReach = (p: Point, strip: { x: number; halfWidth: number; top: number }, length: number): number =>
  Math.max(0, Math.hypot(Math.max(0, Math.abs(p.x - strip.x) - strip.halfWidth), Math.max(0, p.z - strip.top)) - length);
