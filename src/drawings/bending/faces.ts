/**
 * Which face is squeezed, by the way a limb is held: the sign of the bending moment under its own even weight. Beam
 * tables in statics textbooks; a limb that tapers shifts where the sign changes, not which faces there are.
 */
export type Held = 'free' | 'resting' | 'hung' | 'held';
/** A stretch of the limb, 0 to 1 from the end nearest the stem, and its squeezed face. */
export type Stretch = { from: number; to: number; squeezed: 'upper' | 'under' };
export type Hold = { stretches: readonly Stretch[]; supports: readonly [number, number]; cutAt: number };

const ends = [0.06, 0.94] as const;
/** A limb held fast at both ends: the moment is nought at (3 − √3)/6 of the span from each. */
const turn = ends[0] + (ends[1] - ends[0]) * ((3 - Math.sqrt(3)) / 6);

export const holds: { readonly [H in Held]: Hold } = {
  free: { supports: [0, 1], cutAt: 0.32, stretches: [{ from: 0.04, to: 0.9, squeezed: 'under' }] },
  /** Fast at the stem, its tip borne as by a rigid prop: the moment is nought at a quarter of the span. */
  resting: {
    supports: [0, 1],
    cutAt: 0.55,
    stretches: [
      { from: 0.04, to: 0.25, squeezed: 'under' },
      { from: 0.25, to: 0.94, squeezed: 'upper' },
    ],
  },
  hung: { supports: [0.08, 0.92], cutAt: 0.5, stretches: [{ from: 0.12, to: 0.88, squeezed: 'upper' }] },
  held: {
    supports: ends,
    cutAt: 0.5,
    stretches: [
      { from: 0.1, to: turn, squeezed: 'under' },
      { from: turn, to: 1 - turn, squeezed: 'upper' },
      { from: 1 - turn, to: 0.9, squeezed: 'under' },
    ],
  },
};
