/**
 * How much of a live crown goes with some branches. Leaf mass follows the summed cross-section of the branches that bear
 * it, so the share is Σd² ÷ D², D the stem just under the lowest live branch. One unit for all diameters.
 * Source: Grabosky, Gilman and Harchick 2007 (`leaf-mass-2007`): live oak, leaf mass linear in basal area.
 */
export const sumOfSquares = (diameters: readonly number[]): number => diameters.reduce((sum, d) => sum + d * d, 0);

/** The share (0 to 1 and over) of the stem's section. */
export const crownShare = (diameters: readonly number[], stem: number): number => sumOfSquares(diameters) / (stem * stem);

/** The single cut with the section of them all. */
export const singleCut = (diameters: readonly number[]): number => Math.sqrt(sumOfSquares(diameters));

/** The largest single cut that takes no more than `share` (0 to 1) of the stem's section. */
export const largestCut = (share: number, stem: number): number => stem * Math.sqrt(share);
