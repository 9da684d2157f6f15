/**
 * Where a branch joins its stem, in the plane of the two. Angles in degrees, all from the stem's own line: the branch's
 * from its upward end, ridge and cut from its downward end, the ridge into the stem and the cut on the branch's side.
 * All start at the top of the branch bark ridge. Plane trigonometry.
 */
import { cos, degrees, radians, sin } from './angles.ts';

/**
 * The cut that mirrors the ridge about the stem's line stands at the ridge's own angle on the other side.
 * Rule: University of Florida, EDIS HS889, caption of figure 2 (`uf-mirror-angle`).
 */
export const mirrorAngle = (ridgeAngle: number): number => ridgeAngle;

/** The cut square to the branch (under 0 where a hanging branch would take it into the stem). Rule: `uf-no-collar`. */
export const squareAngle = (branchAngle: number): number => 90 - branchAngle;

/**
 * The cut across a twin stem that ends level with the foot of the ridge. The foot lies `h` = ridgeLength · cos(ridgeAngle)
 * down the stem's line; the outer edge of the twin, `diameter` thick, is met there (d − h sin β) ÷ cos β out from it.
 * Lengths in one unit; `branchAngle` under 90. Rule: recalled, no source seen.
 */
export const levelAngle = (diameter: number, branchAngle: number, ridgeAngle: number, ridgeLength: number): number => {
  const down = footBelow(ridgeAngle, ridgeLength);
  return degrees(Math.atan2((diameter - down * sin(branchAngle)) / cos(branchAngle), down));
};

/** How far down the stem's line the foot of the ridge lies. */
export const footBelow = (ridgeAngle: number, ridgeLength: number): number => ridgeLength * cos(ridgeAngle);

/** The branch's angle at which `levelAngle` turns (least), in degrees: where d sin β = h. NaN where it never does. */
export const levelTurnsAt = (diameter: number, ridgeAngle: number, ridgeLength: number): number =>
  degrees(Math.asin(footBelow(ridgeAngle, ridgeLength) / diameter));

/** The angle between a cut and the axis of the branch it crosses, over 90 where the cut leans out over the branch. */
export const cutToBranch = (cutAngle: number, branchAngle: number): number => 180 - cutAngle - branchAngle;

/** How a cut stands to the horizontal, degrees: falling outwards; over 90 it leans back under itself. `lean` of the stem towards the branch. */
export const fromHorizontal = (cutAngle: number, lean: number): number => 90 - cutAngle + lean;

/**
 * A pole of `length` at `poleAngle` lies in a plane that falls along the limb at `planeAngle` (over 0, under 180) when its
 * lower end stands this far along the limb from beside the cut: length · sin(pole) ÷ tan(plane). Null where the pole is
 * steeper than the plane: then it lies in it from nowhere. Positive towards the limb's tip; the unit of `length`.
 */
export const alongInPlane = (length: number, poleAngle: number, planeAngle: number): number | null =>
  sin(poleAngle) > sin(planeAngle) ? null : (length * sin(poleAngle)) / Math.tan(radians(planeAngle));
