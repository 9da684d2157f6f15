/**
 * The plan from above, in metres: the stem at 0, 0; bearing 0, the reader's own mark, up the page. Everything is placed from
 * the plan's bearings as they stand now and from what was worked out last, so that a drag is seen at once.
 */
import { cos, sin } from '#core/formulas/angles.ts';
import { landingReach } from '#core/formulas/landing-outline.ts';
import type { Plan, PlanLimb } from '#core/plan/facts.ts';
import type { LimbWork, PlanWork } from '#core/plan/work.ts';
import type { Extent } from '../kit/frame.ts';
import type { Point } from '../kit/placed.ts';

export type Placed = {
  number: number;
  tip: Point;
  /** Where each piece is cut, the tip's first. */
  cuts: readonly Point[];
  /** Where each piece may land. */
  landings: readonly (readonly Point[])[];
  /** Where one stands for the last piece; null where there is no place. */
  feet: Point | null;
  standOff: number;
  ways: readonly Point[];
  keepOut: number;
};
export type Scene = { limbs: readonly Placed[]; extent: Extent };

const wayLong = 1.4;
export const from = ([x, y]: Point, bearing: number, distance: number): Point => [x + distance * sin(bearing), y + distance * cos(bearing)];
const around = Array.from({ length: 60 }, (_, i) => i * 6);

const placed = (limb: PlanLimb, { pieces }: LimbWork, margin: number, number: number): Placed => {
  const { points, worker, wayOut, wayOut2 } = limb.bearings;
  const flat = cos(limb.facts.limbAngle.value ?? 0);
  const out = (limb.facts.cutToStem.value ?? 0);
  const cuts = pieces.map(({ piece }) => from([0, 0], points, out + piece.from * flat));
  const landings = pieces.flatMap(({ landing }, i) => {
    if (!landing) return [];
    const strip = { outward: landing.outward + margin, inward: landing.inward + margin, half: landing.half, swing: landing.swing };
    return [around.map((turn) => from(cuts[i]!, points + turn, landingReach(strip, turn > 180 ? 360 - turn : turn)))];
  });
  const last = pieces.at(-1)!;
  const feet = last.stand ? from(cuts.at(-1)!, worker, last.stand.standOff) : null;
  return {
    number, cuts, landings, feet,
    tip: from([0, 0], points, out + (limb.facts.limbLength.value ?? 0) * flat),
    standOff: last.stand?.standOff ?? 0,
    ways: feet && last.ways ? [wayOut, wayOut2].map((bearing) => from(feet, bearing, wayLong)) : [],
    keepOut: Math.max(...pieces.map(({ landing }) => landing?.keepOut ?? 0)),
  };
};

/** Room for everything near the tree, and for the line where it is not far beyond. */
const lineWithin = 4;

export const sceneOf = (plan: Plan, work: PlanWork): Scene => {
  const margin = plan.facts.margin.value ?? 0;
  // A limb put in since has no figures yet.
  const limbs = plan.limbs.flatMap((limb, i) => (work.limbs[i] ? [placed(limb, work.limbs[i], margin, i + 1)] : []));
  const points = limbs.flatMap(({ tip, cuts, landings, feet, ways }) => [tip, ...cuts, ...landings.flat(), ...(feet ? [feet] : []), ...ways]);
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const offset = plan.facts.lineOffset.value;
  const furthest = Math.max(...points.map(([x, y]) => Math.hypot(x, y)));
  if (plan.choices.wires === 'yes' && offset !== null && offset <= furthest + lineWithin) {
    const [x, y] = from([0, 0], plan.bearings.line, offset);
    xs.push(x);
    ys.push(y);
  }
  const room = 0.5;
  return { limbs, extent: { left: Math.min(...xs) - room, right: Math.max(...xs) + room, bottom: Math.min(...ys) - room, top: Math.max(...ys) + room } };
};
