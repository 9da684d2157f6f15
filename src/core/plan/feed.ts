/** What each calculator is fed from a plan: the reader's facts by their names, carried figures exact, everything turned into its own plane. */
import { approachDistance } from '../calculators/approach-distance.ts';
import { barLength } from '../calculators/bar-length.ts';
import { cutOrder } from '../calculators/cut-order.ts';
import { dropZone } from '../calculators/drop-zone.ts';
import { limbWeight } from '../calculators/limb-weight.ts';
import { lineClearance } from '../calculators/line-clearance.ts';
import { poleLoad } from '../calculators/pole-load.ts';
import { stance } from '../calculators/stance.ts';
import { cos, sin, tan } from '../formulas/angles.ts';
import type { AnyCalculator, Got, QuantityInput, Tolerance } from '../kit/calculator.ts';
import { evaluate, type Inputs, type Outcome, type Quantity } from '../kit/outcome.ts';
import type { Fact, Plan, PlanLimb } from './facts.ts';
import { limbFacts } from './names.ts';
import { apartBetween, mostOffSquare, riseAlong, riseOff, type Spot, spotAt, standingOf } from './turn.ts';

export const parts = { stance, dropZone, barLength, limbWeight, cutOrder, approachDistance, lineClearance, poleLoad } as const;
export type Part = keyof typeof parts;
/** One calculator with what it was fed, so that its own page can be opened with the same, and what it said. */
export type Run = { readonly part: Part; readonly inputs: Inputs; readonly got: { readonly [name: string]: Got }; readonly outcome: Outcome };
/** What was worked out before, by what was fed. */
export type Memo = Map<string, Outcome>;
const mostKept = 400;

export type Fed = { readonly [name: string]: Fact | number | string | null };
const isFact = (value: Fed[string]): value is Fact => typeof value === 'object' && value !== null;

/** Runs a calculator. A fact goes as it was got; a bare figure is carried or chosen, and exact. */
export const run = (part: Part, fed: Fed, memo: Memo): Run => {
  const inputs: Inputs = Object.fromEntries(Object.entries(fed).map(([name, value]) => [name, isFact(value) ? value.value : value]));
  const got = Object.fromEntries(Object.entries(fed).map(([name, value]): [string, Got] => [name, isFact(value) ? value.got : 'exact']));
  const key = JSON.stringify([part, inputs, got]);
  const before = memo.get(key);
  if (memo.size > mostKept) memo.clear();
  const outcome = before ?? evaluate(parts[part] as AnyCalculator, inputs, got);
  memo.set(key, outcome);
  return { part, inputs, got, outcome };
};

/** What a calculator says to plan on; null where it has no answer, or no such place in it. */
export const planOn = (outcome: Outcome, name: string): number | null => {
  const figure = outcome.kind === 'answer' ? outcome.outputs[name] : null;
  return figure && 'planOn' in figure ? (figure as Quantity).planOn : null;
};

/** A piece of a limb: its cut is so far out from the limb's own cut, and it is so long. */
export type Piece = { readonly from: number; readonly length: number };

export const known = (fact: Fact): number => fact.value as number;
/** A fact with another value, got in the same way. */
export const moved = (fact: Fact, value: number): Fact => ({ value, got: fact.got });

/** How far out a value may be, got so: what the calculators allow for it. Only for what is judged or measured. */
export const slack = ({ tolerance }: QuantityInput, value: number, got: Fact['got']): number => {
  const { share = 0, least = 0 } = (tolerance as { readonly [how in Fact['got']]: Tolerance })[got];
  return Math.max(share * Math.abs(value), least);
};

/** Where things are, seen from the stem: the cut of a piece, and its height over the ground plumb under it. */
export const cutOf = (limb: PlanLimb, { from }: Piece): { spot: Spot; height: number } => {
  const { cutHeight, limbAngle, cutToStem } = limb.facts;
  const out = from * cos(known(limbAngle));
  return { spot: spotAt({ x: 0, y: 0 }, limb.bearings.points, known(cutToStem) + out), height: known(cutHeight) + from * sin(known(limbAngle)) };
};
/** The same height over the ground under that piece's own cut. */
const heightThere = (plan: Plan, limb: PlanLimb, piece: Piece): number => {
  const out = piece.from * cos(known(limb.facts.limbAngle));
  return cutOf(limb, piece).height - out * tan(riseAlong(known(plan.facts.groundSlope), plan.bearings.downhill, limb.bearings.points));
};
export const floorOf = ({ choices, facts }: Plan): Fact | number => (choices.workingFrom === 'ground' ? 0 : facts.platformHeight);

/** How far it lands any way, m, the margin beside it in `half` alone; `swing`: how far off its own direction, with what a bearing may be out, degrees. */
export type Landing = { readonly outward: number; readonly inward: number; readonly half: number; readonly swing: number; readonly towards: number; readonly keepOut: number };

/** Which side of the limb the worker may stand on at the worst. */
const standsAt = ({ bearings: { points, worker } }: PlanLimb) => standingOf(points, worker, mostOffSquare(points, worker));
/** Off square beside the limb the strip it falls in lies nearer by so many degrees: as if it swung by so much more. */
const swingSeen = ({ facts }: Plan, limb: PlanLimb): number => {
  const swing = known(facts.swing);
  return standsAt(limb) === 'beside' ? Math.min(90, swing + mostOffSquare(limb.bearings.points, limb.bearings.worker)) : swing;
};

/** Where a cut stands over the rear hand the ground is taken to rise to it as much as the bearings allow; else to fall. */
export const feedStance = (plan: Plan, limb: PlanLimb, piece: Piece, landingReach: number, landing: Landing | null): Fed => {
  const { facts, bearings } = plan;
  const [height, floor] = [heightThere(plan, limb, piece), floorOf(plan)];
  const over = height > known(facts.gripHeight) + (typeof floor === 'number' ? floor : known(floor));
  const off = apartBetween(limb.bearings.worker + 180, bearings.downhill)[over ? 'most' : 'least'];
  const margin = known(facts.margin);
  return {
    cutHeight: moved(limb.facts.cutHeight, height),
    gripHeight: facts.gripHeight,
    poleShortest: facts.poleShortest,
    poleLongest: facts.poleLongest,
    groundRise: moved(facts.groundSlope, riseOff(known(facts.groundSlope), off)),
    platformHeight: floor,
    standing: standsAt(limb),
    landingReach,
    landingOut: landing && landing.outward + margin,
    landingBack: landing && landing.inward + margin,
    landingSwing: landing && swingSeen(plan, limb),
  };
};

export const feedDropZone = (plan: Plan, limb: PlanLimb, piece: Piece, standOff: number): Fed => {
  const { facts, bearings } = plan;
  const { limbLength, spread, cutToStem } = limb.facts;
  const floor = floorOf(plan);
  const low = typeof floor === 'number' ? floor : known(floor);
  return {
    cutHeight: moved(limb.facts.cutHeight, heightThere(plan, limb, piece)),
    limbLength: moved(limbLength, piece.length),
    limbAngle: limb.facts.limbAngle,
    shape: limb.choices.shape,
    spread: moved(spread, (known(spread) * piece.length) / known(limbLength)),
    cutToStem: known(cutToStem) + piece.from,
    release: limb.choices.release,
    groundSlope: moved(facts.groundSlope, riseAlong(known(facts.groundSlope), bearings.downhill, limb.bearings.points)),
    swing: swingSeen(plan, limb),
    margin: known(facts.margin),
    basketLow: low,
    basketHigh: low + dropZone.inputs.basketHigh.example,
    standing: standsAt(limb),
    standOff,
  };
};

export const feedBar = ({ facts }: Plan, limb: PlanLimb): Fed => ({
  limbDiameter: limb.facts.limbDiameter, barLength: facts.barLength, offSquare: facts.offSquare, margin: known(facts.barMargin),
});

export const feedWeight = ({ choices }: Plan, limb: PlanLimb): Fed => ({
  species: choices.species, condition: limb.choices.condition, buttDiameter: limb.facts.limbDiameter, midDiameter: null, tipDiameter: null,
  length: limb.facts.limbLength, cutHeight: limb.facts.cutHeight,
});

/**
 * Thickness where a piece is cut, mm. Further out the limb is thinner: a bare pole as a cone, a whole branch so that its
 * wood is half a cylinder's, as it was weighed (limb-weight).
 */
const thickness = ({ choices, facts: { limbDiameter, limbLength } }: PlanLimb, { from }: Piece): number =>
  known(limbDiameter) * (1 - from / known(limbLength)) ** (choices.shape === 'pole' ? 1 : 1 / 2);

/** `weight`: the most that the piece weighs, kg; what stands between stem and cut is taken as heavy a metre. */
export const feedOrder = ({ facts }: Plan, limb: PlanLimb, piece: Piece, weight: number): Fed => {
  const { limbLength, limbDiameter, limbAngle, cutToStem } = limb.facts;
  const cutAt = known(cutToStem) + piece.from;
  const length = cutAt + piece.length;
  return {
    support: limb.choices.support, fault: limb.choices.fault, shape: limb.choices.shape,
    length: moved(limbLength, length), cutAt: moved(cutToStem, cutAt), weight: (weight * length) / piece.length,
    extraLoad: 0, extraAt: 0, limbAngle, diameter: moved(limbDiameter, thickness(limb, piece)),
    strength: facts.strength, undercut: known(facts.undercut),
  };
};

/** The pole held as flat as it may be at that place, the heaviest for the hands; no strap is reckoned with. Null where it points down, or nothing is weighed. */
export const feedLoad = ({ facts: { mass, balance, gripSpacing } }: Plan, flattest: number): Fed | null =>
  mass.value === null || flattest < 0 ? null
    : { mass, balance, gripSpacing, poleAngle: flattest, strapShare: 0, strapAt: poleLoad.inputs.strapAt.example, effort: null };

export const feedDistance = ({ choices, facts }: Plan): Fed => ({
  ruleSet: choices.ruleSet, workingFrom: choices.workingFrom, lineKind: choices.lineKind, toldBy: choices.toldBy,
  voltage: facts.voltage.value, ownDistance: facts.ownDistance.value,
});

/** The longest that a piece of the limb may be, its length got so. */
export const longestOf = (value: number, { got }: Fact): number => value + slack(limbFacts.limbLength, value, got);
