/**
 * What line-clearance is fed: everything seen along the line, heights over the ground that the feet stand on. Whatever may
 * be out beyond what the calculator itself allows for (the line's distance from the stem against that from the cut, the
 * slope, the bearings) is put where it brings things nearer.
 */
import { lineClearance } from '../calculators/line-clearance.ts';
import { cos, tan } from '../formulas/angles.ts';
import type { Plan, PlanLimb } from './facts.ts';
import { cutOf, type Fed, floorOf, known, moved, type Piece, slack } from './feed.ts';
import { sharedFacts } from './names.ts';
import { along, apart, apartBetween, cosineSlack, type Spot, spotAt, steepnessIn } from './turn.ts';

/** Where the worker stands, and how steeply the pole is held there. */
export type Stand = { readonly standOff: number; readonly poleAngle: number };

const stem: Spot = { x: 0, y: 0 };
/** From the stem to plumb under the cut, level. */
export const outTo = (limb: PlanLimb, piece: Piece): number => known(limb.facts.cutToStem) + piece.from * cos(known(limb.facts.limbAngle));

/** How much higher the ground of one spot is than that of another. */
const climb = (slope: number, downhill: number, from: Spot, to: Spot): number => -tan(slope) * (along(to, downhill) - along(from, downhill));
/** Of each metre level, how much higher or lower the ground may be than it seems, the slope out and the way it falls. */
const slopeSlacks = ({ facts: { groundSlope } }: Plan): { readonly steeper: number; readonly turned: number } => {
  const slope = known(groundSlope);
  return { steeper: tan(slope + slack(sharedFacts.groundSlope, slope, groundSlope.got)) - tan(slope), turned: tan(slope) * cosineSlack };
};
/** What the line's figure may be out beyond what the calculator allows for the figure it is fed. */
const spare = ({ facts }: Plan, name: 'lineOffset' | 'lineHeight', there: number): number =>
  Math.max(0, slack(sharedFacts[name], known(facts[name]), facts[name].got) - slack(lineClearance.inputs[name], there, facts[name].got));

/** How far level from plumb under the cut the line may be, and the angle between it and the way to the worker. */
type Seen = { readonly offset: number; readonly off: number };

/**
 * The line as near as the bearings allow and as far; where it may lie right over the cut, or over the worker, there too:
 * between the ends something may be nearer than at both.
 */
const seenAt = (plan: Plan, limb: PlanLimb, piece: Piece, standOff: number): Seen[] => {
  const { worker, points } = limb.bearings;
  const { line } = plan.bearings;
  const [tip, feet] = [apartBetween(points, line), apartBetween(worker, line)];
  const at = (end: 'least' | 'most', sign: -1 | 1): Seen => {
    const level = known(plan.facts.lineOffset) - outTo(limb, piece) * cos(tip[end]);
    return { offset: level + sign * spare(plan, 'lineOffset', level), off: feet[end] };
  };
  const [near, far] = [at('least', -1), at('most', 1)];
  const off = apart(worker, line);
  const [nearest, furthest] = [near, far].map((seen) => seen.offset - standOff * cos(seen.off)) as [number, number];
  return [
    near, far,
    ...(near.offset < 0 && far.offset > 0 ? [{ offset: 0, off }] : []),
    ...(standOff > 0 && nearest < 0 && furthest > 0 ? [{ offset: standOff * cos(off), off }] : []),
  ];
};

/** The line over the ground under the feet, as low as it may be. `legs`: the way from the stem to the feet, m. */
const lineOver = (plan: Plan, feet: Spot, legs: number): number => {
  const { facts, bearings } = plan;
  const foot = spotAt(stem, bearings.line, known(facts.lineOffset));
  const { steeper, turned } = slopeSlacks(plan);
  const up = known(facts.lineHeight) + climb(known(facts.groundSlope), bearings.downhill, feet, foot);
  return up - steeper * Math.hypot(feet.x - foot.x, feet.y - foot.y) - turned * (known(facts.lineOffset) + legs) - spare(plan, 'lineHeight', up);
};

const common = (plan: Plan, limb: PlanLimb, piece: Piece, required: number): Fed => {
  const { facts, choices } = plan;
  return {
    lineRuns: 'across', requiredDistance: required, movement: known(facts.movement), workingFrom: choices.workingFrom, platformHeight: floorOf(plan),
    boomReach: choices.workingFrom === 'ground' ? 0 : known(facts.boomReach), handHeight: known(facts.handHeight), poleLength: facts.poleLongest,
    barTip: known(facts.barTip), stumble: known(facts.stumble), limbLength: moved(limb.facts.limbLength, piece.length), limbAngle: limb.facts.limbAngle,
    springUp: known(facts.springUp),
  };
};

/** One for each way that the line may lie. */
export const feedClearance = (plan: Plan, limb: PlanLimb, piece: Piece, { standOff, poleAngle }: Stand, required: number): Fed[] => {
  const { facts, bearings } = plan;
  const { spot, height } = cutOf(limb, piece);
  const feet = spotAt(spot, limb.bearings.worker, standOff);
  const lineHeight = lineOver(plan, feet, outTo(limb, piece) + standOff);
  // Over the ground at the limb's own cut, then over the feet.
  const own = known(limb.facts.cutToStem);
  const { steeper, turned } = slopeSlacks(plan);
  const cutHeight = height + climb(known(facts.groundSlope), bearings.downhill, feet, spotAt(stem, limb.bearings.points, own))
    + steeper * standOff + turned * (standOff + outTo(limb, piece) - own);
  return seenAt(plan, limb, piece, standOff).map(({ offset, off }) => {
    // The worker on the line's own side of the cut, or on the other.
    const towards = standOff * cos(off);
    return {
      ...common(plan, limb, piece, required),
      lineHeight: moved(facts.lineHeight, lineHeight),
      lineOffset: moved(facts.lineOffset, towards > 0 ? 0 - offset : offset),
      poleAngle: steepnessIn(poleAngle, off),
      standOff: Math.abs(towards),
      cutHeight: moved(limb.facts.cutHeight, cutHeight),
    };
  });
};

/**
 * The same for one who goes `long` m along a bearing from where they stand, the pole in their hands: at the end of it, where
 * that brings them nearer to the line; null where it does not. What is asked is the reach of body and pole alone.
 */
export const feedWay = (plan: Plan, limb: PlanLimb, piece: Piece, standOff: number, bearing: number, long: number, required: number): Fed | null => {
  const { facts, bearings: { line } } = plan;
  const { worker, points } = limb.bearings;
  const legs = [[points, outTo(limb, piece)], [worker, standOff], [bearing, long]] as const;
  const beyond = legs.slice(0, 2).reduce((sum, [way, length]) => sum + length * cos(apart(way, line)), 0) > known(facts.lineOffset);
  const end = beyond ? 'most' : 'least';
  const side = beyond ? -1 : 1;
  if (side * cos(apartBetween(bearing, line)[end]) <= 0) return null;
  const level = Math.max(0, side * (known(facts.lineOffset) - legs.reduce((sum, [way, length]) => sum + length * cos(apartBetween(way, line)[end]), 0)));
  const { spot, height } = cutOf(limb, piece);
  const feet = spotAt(spotAt(spot, worker, standOff), bearing, long);
  return {
    ...common(plan, limb, piece, required),
    lineHeight: moved(facts.lineHeight, lineOver(plan, feet, legs.reduce((sum, [, length]) => sum + length, 0))),
    lineOffset: moved(facts.lineOffset, Math.max(0, level - spare(plan, 'lineOffset', level))),
    poleAngle: 0, standOff: 0, cutHeight: moved(limb.facts.cutHeight, height),
  };
};
