/**
 * From bearings in plan to what lies in one upright plane: nothing that belongs to one plane is carried to another without
 * being turned. Bearings and angles in degrees, lengths in m. Plane trigonometry; no outside source is needed.
 */
import { angleUp, cos, sin, tan } from '../formulas/angles.ts';

/** The angle between two bearings, 0 to 180. */
export const apart = (a: number, b: number): number => {
  const turn = Math.abs(a - b) % 360;
  return turn > 180 ? 360 - turn : turn;
};

/** Half an hour of a clock face: how far the angle between two bearings may be out, either way, as nobody measures it. Judgement, no source. */
export const bearingSlack = 15;
/** The ends of that angle. The whole turn is no matter: bearings are seen against one another, never against a mark. */
export const apartBetween = (a: number, b: number): { readonly least: number; readonly most: number } =>
  ({ least: Math.max(0, apart(a, b) - bearingSlack), most: Math.min(180, apart(a, b) + bearingSlack) });
/** The most by which the cosine of such an angle may be out. */
export const cosineSlack = 2 * sin(bearingSlack / 2);

/** How steeply the ground rises at an angle from the way it falls most, by `slope`. */
export const riseOff = (slope: number, off: number): number => angleUp(-tan(slope) * cos(off), 1);
/** The same along a bearing, where it falls most along `downhill`. */
export const riseAlong = (slope: number, downhill: number, bearing: number): number => riseOff(slope, apart(bearing, downhill));

/** How far off square beside the limb the worker stands: 0 beside, 90 at the tip or stem side. */
export const offSquare = (points: number, worker: number): number => Math.abs(90 - apart(points, worker));

/** The same at the worst. */
export const mostOffSquare = (points: number, worker: number): number => Math.min(90, offSquare(points, worker) + bearingSlack);

/** More than halfway round from square beside it is the tip side or the stem side; `off`: how far off square. */
export const standingOf = (points: number, worker: number, off: number): 'beside' | 'stemSide' | 'tipSide' => {
  if (off <= 45) return 'beside';
  return apart(points, worker) < 90 ? 'tipSide' : 'stemSide';
};

/** A place in plan: so far along so many degrees. */
export type Spot = { readonly x: number; readonly y: number };
/** x to the right, y up the page; 0 degrees is up the page. */
export const spotAt = (from: Spot, bearing: number, distance: number): Spot => ({ x: from.x + distance * sin(bearing), y: from.y + distance * cos(bearing) });
/** How far a spot lies along a bearing from the stem. */
export const along = (spot: Spot, bearing: number): number => spot.x * sin(bearing) + spot.y * cos(bearing);

/** A pole held at an angle, turned into an upright plane at so many degrees from its own: as steep as it looks there. */
export const steepnessIn = (poleAngle: number, off: number): number => angleUp(tan(poleAngle), Math.abs(cos(off)));
