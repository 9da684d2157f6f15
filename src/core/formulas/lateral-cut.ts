/**
 * The angle of a reduction cut, between the cut and the line of the limb that is cut back (90: square across it). Degrees.
 *
 * The rule that leads: halfway between the branch bark ridge and a line square to the limb (a page on branch cuts, the
 * wording of the American pruning standard of 1995 as recalled). Ridge 0 to 90.
 */

/** Where nobody could see it, the ridge is taken to halve the angle of the lateral (from memory: both grew alike). */
export const ridgeBetween = (lateralAngle: number): number => lateralAngle / 2;

export const halfwayCut = (ridgeAngle: number): number => (90 + ridgeAngle) / 2;
