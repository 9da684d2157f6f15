/** The worst falls of the outcome, moment by moment, in metres: the frame of `core/formulas/falling-limb.ts`. */
import type { dropZone } from '#core/calculators/drop-zone.ts';
import { radians } from '#core/formulas/angles.ts';
import { centreOf, firstTouch, flightFrom, type Limb, type Place, shapes } from '#core/formulas/falling-limb.ts';
import { gravity } from '#core/formulas/gravity.ts';
import type { InputsOf } from '#core/kit/calculator.ts';
import type { Outcome } from '#core/kit/outcome.ts';
import { quantityOf, stepOf, worked } from '../kit/figures.ts';

export type Inputs = InputsOf<(typeof dropZone)['inputs']>;
/** The limb at one moment: both its ends. */
export type Pose = { butt: readonly [number, number]; tip: readonly [number, number] };
/** `poses`: on the hinge, in the air, at the touch, lying; `letsGo`, `touches`: which of them. */
export type Scene = {
  poses: { readonly inward: readonly Pose[]; readonly outward: readonly Pose[] };
  letsGo: number; touches: number;
  outward: number; inward: number; beside: number; keepOut: number; passingOut: number; passingIn: number;
};

const hinged = 6;
const flying = 6;
export const lastPose = hinged + flying + 1;

const pose = (limb: Limb, x: number, y: number, angle: number): Pose => {
  const c = centreOf(limb);
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return { butt: [x - c * cos, y - c * sin], tip: [x + (limb.length - c) * cos, y + (limb.length - c) * sin] };
};

/** The worst fall of one way, of the limb as entered, as the working tells it: what the guesses add is told by the ground that is marked. */
const posesOf = (way: 'inward' | 'outward', i: Inputs, outcome: Outcome): Pose[] => {
  const touching = stepOf(outcome, way === 'inward' ? 'touchIn' : 'touchOut');
  const lies = worked(outcome, way);
  if (!touching || lies === null) return [];
  const { letGo, kept } = touching.values as { letGo: number; kept: number };
  const release = radians(letGo);
  const limb: Limb = { length: i.limbLength, shape: shapes[i.shape] };
  const place = placeOf(i);
  const poses = Array.from({ length: hinged + 1 }, (_, k): Pose => {
    const angle = place.start + ((release - place.start) * k) / hinged;
    return { butt: [0, place.cutHeight], tip: [limb.length * Math.cos(angle), place.cutHeight + limb.length * Math.sin(angle)] };
  });
  const f = flightFrom(limb, place, release, kept / 100);
  const touch = firstTouch(limb, f, place.slope);
  for (let k = 1; k <= flying; k++) {
    const t = (touch.time * k) / flying;
    poses.push(pose(limb, f.x + f.vx * t, f.y + f.vy * t - (gravity * t * t) / 2, f.angle - f.spin * t));
  }
  // Lying: as far that way as it may topple.
  const sign = way === 'outward' ? 1 : -1;
  const far = sign * lies;
  const near = far - sign * limb.length * Math.cos(place.slope);
  const ground = (x: number): readonly [number, number] => [x, x * Math.tan(place.slope)];
  poses.push({ butt: ground(near), tip: ground(far) });
  return poses;
};

const placeOf = (i: Inputs): Place => ({ cutHeight: i.cutHeight, start: radians(i.limbAngle), slope: radians(i.groundSlope) });
export const sceneOf = (inputs: Inputs, outcome: Outcome): Scene => {
  const figure = (name: string): number => quantityOf(outcome, name)?.planOn ?? worked(outcome, name) ?? inputs.limbLength;
  return {
    poses: { inward: posesOf('inward', inputs, outcome), outward: posesOf('outward', inputs, outcome) },
    letsGo: hinged,
    touches: hinged + flying,
    outward: figure('outward'), inward: figure('inward'), beside: figure('beside'), keepOut: figure('keepOut'),
    passingOut: figure('passingOut'), passingIn: figure('passingIn'),
  };
};
