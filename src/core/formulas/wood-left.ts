/**
 * What is left of a round limb between a first cut on one face and a release cut on the other, and the bending stress in
 * it. The section is the circle between two parallel chords; area, centroid and second moment by integration. Bending
 * stress M·c/I: Dahle and Grabosky 2012 (source `lime-branch-bending`). Both cuts are taken to lie in one plane: stepped
 * ones leave a little more. Lengths in mm, moment in N·m, stress in MPa.
 */
export type Section = { area: number; centroid: number; inertia: number; edge: number };

/**
 * @param diameter of the limb
 * @param first depth of the first cut, from the top of the section
 * @param release depth of the release cut, from the bottom; first + release under the diameter
 * @returns centroid above the limb's middle; edge: the larger distance from the centroid to a face
 */
export const woodLeft = (diameter: number, first: number, release: number): Section => {
  const r = diameter / 2;
  const [low, high] = [release - r, r - first];
  const at = (y: number) => {
    const half = Math.sqrt(Math.max(0, r * r - y * y));
    const angle = Math.asin(Math.min(1, Math.max(-1, y / r)));
    return { area: y * half + r * r * angle, first: (-2 / 3) * half ** 3, second: (y * (2 * y * y - r * r) * half + r ** 4 * angle) / 4 };
  };
  const [a, b] = [at(low), at(high)];
  const area = b.area - a.area;
  const centroid = (b.first - a.first) / area;
  const inertia = b.second - a.second - area * centroid * centroid;
  return { area, centroid, inertia, edge: Math.max(centroid - low, high - centroid) };
};

/** The bending stress (MPa) in the wood left. */
export const stressLeft = (momentSize: number, { edge, inertia }: Section): number => (momentSize * 1000 * edge) / inertia;

/**
 * The depth (mm) of the release cut at which the wood left is stressed to `strength`: 0 where it is before the cut
 * begins, the whole thickness left where there is no moment. By regula falsi (Illinois) on the section modulus.
 */
export const releaseDepth = (momentSize: number, diameter: number, first: number, strength: number): number => {
  const needed = (momentSize * 1000) / strength;
  if (needed === 0) return diameter - first;
  const spare = (depth: number): number => {
    const { inertia, edge } = woodLeft(diameter, first, depth);
    return inertia / edge - needed;
  };
  // Thinner than this share of the limb the section is lost in rounding; by then it has gone.
  const least = diameter * 1e-6;
  let [a, b] = [0, diameter - first - least];
  let [left, right] = [spare(a), spare(b)];
  if (left <= 0) return 0;
  if (right >= 0) return diameter - first;
  for (let i = 0; i < 60 && b - a > least; i++) {
    const depth = (a * right - b * left) / (right - left);
    const here = spare(depth);
    if (here > 0) {
      a = depth;
      left = here;
      right /= 2;
    } else {
      b = depth;
      right = here;
      left /= 2;
    }
  }
  return a;
};
