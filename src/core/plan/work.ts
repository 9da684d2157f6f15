/**
 * The answer for each limb: where to stand, whether it comes off in one piece, which side first, what it weighs, how near
 * the line. Every figure is what a calculator says to plan on; what one carries to the next goes exact.
 */
import type { Quantity } from '../kit/outcome.ts';
import { feedClearance, type Stand } from './clearance.ts';
import type { Plan, PlanLimb } from './facts.ts';
import {
  cutOf, feedBar, feedDistance, feedDropZone, feedLoad, feedOrder, feedStance, feedWeight, type Landing, longestOf, type Memo, type Piece, planOn, run, type Run,
} from './feed.ts';
import { cos } from '../formulas/angles.ts';
import { cutOrder } from '../calculators/cut-order.ts';
import { bearingSlack, type Spot } from './turn.ts';
import { type Way, wayFrom, type WayName, wayNames } from './ways.ts';

export type PieceWork = {
  readonly piece: Piece;
  /** Plumb under the cut, from the stem, and the cut's height over the ground at the limb's own cut. */
  readonly spot: Spot;
  readonly height: number;
  /** Whether there is a place to stand clear of its landing. */
  readonly fits: boolean;
  /** Whether the pole gets there at all. */
  readonly reaches: boolean;
  /** Where to stand, and how much pole from hand to cut; null where it fits nowhere. */
  readonly stand: (Stand & { readonly pole: number; readonly furthest: number }) | null;
  readonly landing: Landing | null;
  /** The most it weighs, kg. */
  readonly weight: number | null;
  readonly stance: Run;
  readonly dropZone: Run;
  /** Null where the wood is too thin to ask. */
  readonly order: Run | null;
  /** What the hands carry there; null where nothing is weighed, or one stands nowhere. */
  readonly load: Run | null;
  /** Out from there, each as far as the piece may reach; null where one stands nowhere, or on a platform. */
  readonly ways: { readonly [W in WayName]: Way } | null;
  /** Both ends of what the line's place may be out; empty with no wires, or no distance for them. */
  readonly clearance: readonly Run[];
  /** The least room left over the distance asked for, m. */
  readonly margin: number | null;
  /** Where there is no place to stand, the same for the limb: only what is said of the limb itself counts. */
  readonly limbAlone: readonly Run[];
  /** The least gap from the limb to the line, m, to plan on; null where there is a place to stand. */
  readonly limbGap: number | null;
};
export type LimbWork = {
  readonly limb: PlanLimb;
  /** From the tip inwards, as they are cut; one whole one, where none fit. */
  readonly pieces: readonly PieceWork[];
  readonly fits: boolean;
  readonly bar: Run;
  readonly weight: Run;
};
export type PlanWork = { readonly distance: Run | null; readonly required: number | null; readonly limbs: readonly LimbWork[] };

/** More pieces than this are a climber's work. */
export const mostPieces = 6;

const landingOf = (plan: Plan, { inputs, outcome }: Run): Landing | null => {
  if (outcome.kind !== 'answer') return null;
  const figures = outcome.outputs as { readonly [name in 'outward' | 'inward' | 'beside' | 'keepOut']: Quantity & { planOn: number; planAt: { spread: number } } };
  const [outward, inward, beside, margin] = [figures.outward.planOn, figures.inward.planOn, figures.beside.planOn, plan.facts.margin.value as number];
  const towards = { beside, tipSide: outward + margin, stemSide: inward + margin }[inputs['standing'] as 'beside' | 'tipSide' | 'stemSide'];
  return { outward, inward, half: figures.beside.planAt.spread / 2 + margin, swing: Math.min(90, (plan.facts.swing.value as number) + bearingSlack), towards, keepOut: figures.keepOut.planOn };
};

/**
 * The nearest place to plan on, back to where the pole pushed in is no longer too long, and taken out to the next tenth of a
 * metre, as it is shown: each where there is room for it.
 */
const standAt = (nearest: number, furthest: number, shortest: number): number => {
  const from = shortest <= furthest ? Math.max(nearest, shortest) : nearest;
  const shown = Math.ceil(from * 10 - 1e-6) / 10;
  return shown <= furthest ? shown : from;
};

/** With no place to stand the limb is asked for from plumb under its cut: its gap is the same wherever one stands. */
const plumb: Stand = { standOff: 0, poleAngle: 0 };
/** The least that both ends say to plan on; null where one says nothing. */
const leastOf = (runs: readonly Run[], name: string): number | null => {
  const figures = runs.map(({ outcome }) => planOn(outcome, name));
  return figures.length === 0 || figures.includes(null) ? null : Math.min(...(figures as number[]));
};

type Set = { plan: Plan; limb: PlanLimb; memo: Memo; required: number | null; weight: number | null; perMetre: number | null };

/** The most a piece weighs: never thicker than the limb at its cut, nor more than its share with all beyond it, as no limb is heavier further out. */
const heaviestOf = (limb: PlanLimb, piece: Piece, weight: number, perMetre: number): number => {
  const length = limb.facts.limbLength.value as number;
  return Math.min(perMetre * longestOf(piece.length, limb.facts.limbLength), (weight * (length - piece.from)) / length);
};

const workPiece = ({ plan, limb, memo, required, weight, perMetre }: Set, piece: Piece): PieceWork => {
  const first = run('dropZone', feedDropZone(plan, limb, piece, 0), memo);
  const landing = landingOf(plan, first);
  const stance = run('stance', feedStance(plan, limb, piece, landing?.towards ?? 0, landing), memo);
  const [nearest, furthest, shortest] = ['nearestStandOff', 'furthestStandOff', 'shortestReach'].map((name) => planOn(stance.outcome, name)) as (number | null)[];
  const reaches = stance.outcome.kind === 'answer' && !stance.outcome.findings.some(({ id }) => id === 'poleTooShort');
  const fits = landing !== null && reaches && nearest != null && furthest != null && nearest <= furthest;
  const standOff = fits ? standAt(nearest, furthest, shortest as number) : (furthest ?? 0);
  const dropZone = run('dropZone', feedDropZone(plan, limb, piece, standOff), memo);
  // Standing there is standing at the edge of a landing that reaches so far.
  const there = fits ? run('stance', feedStance(plan, limb, piece, standOff, null), memo).outcome : null;
  const angle = there && planOn(there, 'angleAtNearest');
  const load = there?.kind === 'answer' ? feedLoad(plan, (there.outputs['angleAtNearest'] as Quantity).low) : null;
  const stand = angle === null ? null : { standOff, poleAngle: angle, pole: standOff / cos(angle), furthest: furthest as number };
  const heaviest = weight === null || perMetre === null ? null : heaviestOf(limb, piece, weight, perMetre);
  const fed = heaviest === null ? null : feedOrder(plan, limb, piece, heaviest);
  const diameter = fed === null ? 0 : (fed['diameter'] as { value: number }).value;
  const everyWay = required === null ? [] : feedClearance(plan, limb, piece, stand ?? plumb, required).map((seen) => run('lineClearance', seen, memo));
  const [clearance, limbAlone] = stand ? [everyWay, []] : [[], everyWay];
  const { spot, height } = cutOf(limb, piece);
  const way = (name: WayName): Way => wayFrom(plan, limb, { piece, standOff, landing: landing as Landing }, limb.bearings[name], required, memo);
  return {
    piece, spot, height, fits, reaches, stand, landing, weight: heaviest, stance, dropZone,
    order: fed === null || diameter < cutOrder.inputs.diameter.min ? null : run('cutOrder', fed, memo),
    load: load && run('poleLoad', load, memo),
    ways: stand && plan.choices.workingFrom === 'ground' ? { wayOut: way(wayNames[0]), wayOut2: way(wayNames[1]) } : null,
    clearance, margin: leastOf(clearance, 'margin'), limbAlone, limbGap: leastOf(limbAlone, 'limbGap'),
  };
};

/** So many equal pieces, the tip first. */
const cutInto = (length: number, count: number): Piece[] =>
  Array.from({ length: count }, (_, i) => ({ from: (length * (count - 1 - i)) / count, length: length / count }));

/**
 * How many pieces to try first, where the whole does not fit: none is longer than the longest that the drop zone lets one
 * stand clear of, from as far back as the pole lets one stand. More than `mostPieces`: none will do, or the pole does not
 * get to the limb's own cut, which is that of the last piece too.
 */
const fewestPieces = ({ dropZone, reaches }: PieceWork, length: number): number => {
  if (dropZone.outcome.kind !== 'answer' || !reaches) return mostPieces + 1;
  const longest = dropZone.outcome.outputs['longestPiece'] as Quantity | null;
  // As entered any piece would do; the guesses alone keep it from it.
  return longest === null ? 2 : Math.max(2, Math.ceil(length / longest.value));
};

const workLimb = (plan: Plan, limb: PlanLimb, required: number | null, memo: Memo): LimbWork => {
  const bar = run('barLength', feedBar(plan, limb), memo);
  const weight = run('limbWeight', feedWeight(plan, limb), memo);
  const set: Set = { plan, limb, memo, required, weight: planOn(weight.outcome, 'weight'), perMetre: planOn(weight.outcome, 'perMetre') };
  const length = limb.facts.limbLength.value as number;
  const whole = workPiece(set, { from: 0, length });
  let pieces = [whole];
  for (let count = fewestPieces(whole, length); count <= mostPieces && !pieces.every(({ fits }) => fits); count++) pieces = cutInto(length, count).map((piece) => workPiece(set, piece));
  const fits = pieces.every((piece) => piece.fits);
  return { limb, pieces: fits ? pieces : [whole], fits, bar, weight };
};

/** A plan that has no problems, worked out. `memo` keeps what was worked out before. */
export const workPlan = (plan: Plan, memo: Memo = new Map()): PlanWork => {
  const distance = plan.choices.wires === 'no' ? null : run('approachDistance', feedDistance(plan), memo);
  const required = distance && planOn(distance.outcome, 'distance');
  return { distance, required, limbs: plan.limbs.map((limb) => workLimb(plan, limb, required, memo)) };
};
