/**
 * The scene of `stance`, in metres: origin on the ground plumb under the cut, x towards the limb's far side, the worker
 * on the left at x = −standOff. Both views are drawn from it.
 */
import type { InputsOf } from '#core/kit/calculator.ts';
import type { Outcome } from '#core/kit/outcome.ts';
import type { stance } from '#core/calculators/stance.ts';
import { planOn, worked } from '../kit/figures.ts';
import type { Extent } from '../kit/frame.ts';
import type { Point } from '../kit/placed.ts';

export type Inputs = InputsOf<(typeof stance)['inputs']>;
/** Where the person stands, when that is not left to the drawing. */
export type Place = { standOff?: number | null };
export type Where = 'fits' | 'under' | 'near' | 'far';

export type Scene = {
  inputs: Inputs;
  /** Height left out between ground and platform, m, so that a high platform can be seen; shown by a break. */
  leftOut: number;
  /** The ground under the worker at a stand-off. */
  groundAt: (standOff: number) => number;
  /** The rear hand at a stand-off. */
  gripAt: (standOff: number) => Point;
  cut: Point;
  standOff: number;
  /** From the rear hand to the cut, and the pole as long as it can be made for that; they differ where it does not reach. */
  toCut: number;
  poleOut: number;
  /** The pole's angle above the horizontal, degrees, where the person stands. */
  angle: number;
  /** To plan on; null where there is no such place. */
  nearest: number | null;
  furthest: number | null;
  /** As entered. */
  limitDistance: number | null;
  where: Where;
  /** The stem's middle from plumb under the cut, in the plane of the side view. */
  stemAt: number;
  /** Furthest back that the person can be put. */
  furthestDrawn: number;
  /** Furthest to the left that anything is drawn. */
  left: number;
};

/** A platform higher than this is drawn as if it were this high, with a break under it. */
const highestDrawn = 3;

/** Half the width drawn of stem and limb, and how far the stem stands from the cut; only how the drawing looks. */
export const looks = { stem: 0.17, limb: 0.07, cutToStem: 0.45, limbDrawn: 1.15 };
export const nearestDrawn = 0.3;

const whereAt = (standOff: number, landing: number, nearest: number | null, reach: boolean): Where =>
  standOff < landing - 1e-9 ? 'under' : nearest !== null && standOff < nearest - 1e-9 ? 'near' : reach ? 'fits' : 'far';

/** The nearest place to plan on, taken out to the next tenth of a metre, as it is shown, where there is room for that. */
const placeToStand = (nearest: number | null, furthest: number | null): number | null => {
  if (nearest === null) return null;
  const shown = Math.ceil(nearest * 10 - 1e-6) / 10;
  return furthest !== null && shown <= furthest ? shown : nearest;
};

export const sceneOf = (inputs: Inputs, outcome: Outcome, place: Place): Scene => {
  const { cutHeight, gripHeight, platformHeight, groundRise, poleShortest, poleLongest, landingReach, standing } = inputs;
  const slope = Math.tan((groundRise * Math.PI) / 180);
  const groundAt = (s: number) => -s * slope;
  const gripAt = (s: number): Point => [-s, groundAt(s) + platformHeight + gripHeight];
  const nearest = planOn(outcome, 'nearestStandOff');
  const furthest = planOn(outcome, 'furthestStandOff');
  const drawnTo = Math.max(nearest ?? 0, furthest ?? 0, landingReach, poleShortest, 2);
  const left = drawnTo + 0.9;
  const furthestDrawn = Math.floor((drawnTo + 0.3) * 10) / 10;
  const wished = place.standOff ?? placeToStand(nearest, furthest) ?? Math.max(landingReach, poleLongest * 0.7);
  const standOff = Math.min(Math.max(wished, nearestDrawn), furthestDrawn);
  const cut: Point = [0, cutHeight];
  const grip = gripAt(standOff);
  const [along, up] = [cut[0] - grip[0], cut[1] - grip[1]];
  const toCut = Math.hypot(along, up);
  return {
    inputs,
    leftOut: Math.max(0, platformHeight - highestDrawn),
    groundAt,
    gripAt,
    cut,
    standOff,
    toCut,
    poleOut: Math.min(Math.max(toCut, poleShortest), poleLongest),
    angle: (Math.atan2(up, along) * 180) / Math.PI,
    nearest,
    furthest,
    limitDistance: worked(outcome, 'limitDistance'),
    where: whereAt(standOff, landingReach, nearest, furthest === null ? toCut <= poleLongest : standOff <= furthest + 1e-9),
    stemAt: standing === 'beside' ? 0 : standing === 'stemSide' ? -looks.cutToStem : looks.cutToStem,
    furthestDrawn,
    left,
  };
};

/** How far to the right the side view goes. */
export const rightOf = ({ standing }: Inputs): number => ({ beside: 1, stemSide: looks.limbDrawn + 0.35, tipSide: 1.25 })[standing];

/** What the side view must hold, heights as drawn. */
export const sideExtent = (scene: Scene): Extent => {
  const { inputs, left, leftOut, groundAt } = scene;
  const right = rightOf(inputs);
  const heads = [left, 0].map((s) => groundAt(s) + inputs.platformHeight + 1.95);
  return {
    left: -left,
    right,
    bottom: Math.min(0, groundAt(left), groundAt(-right)) - 0.1,
    top: Math.max(inputs.cutHeight + 0.4, ...heads) - leftOut,
  };
};
