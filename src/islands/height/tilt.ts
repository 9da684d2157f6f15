/**
 * The angle of a phone's long edge above level, from the readings of its orientation sensor. In the frame of the W3C
 * Device Orientation specification (rotations alpha about z, beta about x, gamma about y, in that order) the long edge
 * rises by asin(sin beta), whatever alpha and gamma are.
 */
export type Reading = { at: number; angle: number };
/** Degrees; `spread`: how far the readings of that second lay from their mean, at most. */
export type Steady = { angle: number; spread: number };

const second = 1000;
const fewest = 8;
/** Wider than this is no steady hand, degrees. */
const steadyWithin = 1.5;

export const riseOfEdge = (beta: number): number => (Math.asin(Math.sin((beta * Math.PI) / 180)) * 180) / Math.PI;

/** Readings of the last second, oldest first. `at` in ms. */
export const recent = (readings: readonly Reading[], now: number): Reading[] => readings.filter(({ at }) => now - at <= second);

/** The mean of a whole steady second; null while there is none yet. */
export const steady = (readings: readonly Reading[]): Steady | null => {
  const [first, last] = [readings[0], readings.at(-1)];
  if (!first || !last || readings.length < fewest || last.at - first.at < second * 0.8) return null;
  const angle = readings.reduce((sum, r) => sum + r.angle, 0) / readings.length;
  const spread = Math.max(...readings.map((r) => Math.abs(r.angle - angle)));
  return spread <= steadyWithin ? { angle, spread } : null;
};
