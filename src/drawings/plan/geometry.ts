/** The plan from above, to scale. See `scene.ts` for what stands where. */
import { cos, sin } from '#core/formulas/angles.ts';
import type { Plan } from '#core/plan/facts.ts';
import type { PlanWork } from '#core/plan/work.ts';
import { clipped, edgePoint } from '../kit/clip.ts';
import { said } from '../kit/figures.ts';
import { inset, unplace } from '../kit/frame.ts';
import { along } from '../kit/labels.ts';
import { around, circle, polygon, segment } from '../kit/path.ts';
import { finish, sketch, type Sketch, type View } from '../kit/picture.ts';
import type { Box, Handle, Placed, Point } from '../kit/placed.ts';
import { type Figures, same, say, word } from '../kit/say.ts';
import { arrow } from '../marks/arrow.ts';
import { limb, section } from '../marks/limb.ts';
import { personAbove } from '../marks/person.ts';
import { from, sceneOf, type Placed as One } from './scene.ts';

/** Bearings of the plan, or of the limb that is chosen. */
export type Move = { line: number } | { downhill: number } | { points: number } | { worker: number };
/** `chosen`: the limb in hand, from 0; null draws all alike, as on paper. */
export type Seen = { plan: Plan; work: PlanWork; chosen: number | null };

const round = (bearing: number): number => ((bearing % 360) + 360) % 360;
const wayOf = (bearing: number): Point => [sin(bearing), -cos(bearing)];
const step = 5;

const tree = (s: Sketch, limbs: readonly One[], chosen: number | null) => {
  const stem = s.at(0, 0);
  limbs.forEach((one, i) => {
    const tip = s.at(...one.tip);
    s.draw(limb({ from: stem, to: tip, fromWidth: 7, toWidth: 3, start: 'butt', bare: true }, chosen === null || i === chosen ? 'piece' : 'limb'));
    s.keepOff.push(...along(stem, tip, 8));
    for (const cut of one.cuts) {
      const [at, side] = [s.at(...cut), wayOf(round((Math.atan2(one.tip[0], one.tip[1]) * 180) / Math.PI + 90))];
      s.draw({ mark: 'cut', d: segment([at[0] - side[0] * 8, at[1] - side[1] * 8], [at[0] + side[0] * 8, at[1] + side[1] * 8]) });
    }
    const [inner, outer] = [s.at(...one.cuts.at(-1)!), tip];
    s.badges.push({ x: inner[0] + (outer[0] - inner[0]) * 0.62, y: inner[1] + (outer[1] - inner[1]) * 0.62, text: String(one.number) });
  });
  const radius = Math.max(s.px(0.18), 6);
  s.draw({ mark: 'stem', d: circle(stem, radius) }, { mark: 'bark', d: section(stem, radius) });
  s.keepOff.push(around([stem], radius));
};

const worker = (s: Sketch, one: One, withPole: boolean) => {
  if (!one.feet) return;
  const [feet, cut] = [s.at(...one.feet), s.at(...one.cuts.at(-1)!)];
  const way: Point = [cut[0] - feet[0], cut[1] - feet[1]];
  if (withPole) {
    s.draw({ mark: 'edge', d: segment(feet, cut) }, { mark: 'pole', d: segment(feet, cut) });
    s.keepOff.push(...along(feet, cut, 5));
  }
  s.draw(personAbove(feet, feet, way, Math.max(s.frame.scale, 22)));
  s.keepOff.push(around([feet], Math.max(s.px(0.35), 10)));
  for (const end of one.ways) {
    const to = s.at(...end);
    s.draw(arrow(feet, to));
    s.keepOff.push(...along(feet, to, 6));
  }
};

/** The line in the band that stays empty; where it is out of the picture, which way it lies. */
const wire = (s: Sketch, { plan, work }: Seen, text: (name: string, figures?: Figures) => ReturnType<typeof say>) => {
  const offset = plan.facts.lineOffset.value;
  if (plan.choices.wires === 'no' || offset === null) return;
  const towards = plan.bearings.line;
  const strip = (near: number, far: number): Point[] => {
    const corner = (off: number, beside: number): Point => s.at(...from(from([0, 0], towards, off), towards + 90, beside));
    return clipped([corner(near, -80), corner(far, -80), corner(far, 80), corner(near, 80)], s.box);
  };
  const needed = work.required === null ? null : work.required + (plan.facts.movement.value ?? 0);
  const band = needed === null ? [] : strip(offset - needed, offset + needed);
  if (band.length > 2) s.draw({ mark: 'steep', d: polygon(band) }, { mark: 'limit', d: polygon(band) });
  const line = strip(offset - 1e-3, offset + 1e-3);
  const figures: Figures = needed === null ? {} : { needed: said('m', needed, 'up') };
  if (line.length > 2) {
    s.draw({ mark: 'line', d: polygon(line) });
    const middle = s.at(...from([0, 0], towards, offset));
    s.asks.push({ text: text('line'), at: middle, places: ['below', 'above', 'right', 'left'], gap: 6, leader: false, strong: true });
    if (needed !== null) s.asks.push({ text: text('needed', figures), at: s.at(...from([0, 0], towards, offset - needed * 0.6)), places: ['on', 'below', 'right', 'left'], leader: false });
  } else {
    const end = edgePoint(s.at(0, 0), wayOf(towards), s.box, 6);
    const back: Point = [end[0] - wayOf(towards)[0] * 26, end[1] - wayOf(towards)[1] * 26];
    s.draw(arrow(back, end));
    s.asks.push({ text: text('lineAway', { lineOffset: said('m', offset) }), at: back, places: ['left', 'right', 'below', 'above'], gap: 14, leader: false, strong: true });
  }
};

export const geometry = (seen: Seen, view: View<'plan'>, box: Box): Placed<Move> => {
  const { plan, chosen } = seen;
  const { limbs, extent } = sceneOf(plan, seen.work);
  const s = sketch(extent, box, inset(14, { bottom: 26 }), view.held);
  const text = (name: string, figures: Figures = {}) => say(word(view.labels, name), figures);
  // One path for all that is hatched: hatchings over one another would be a blot.
  const outlines = (mark: 'landing' | 'ghost', some: readonly One[]): void => {
    const d = some.flatMap(({ landings }) => landings.map((outline) => polygon(outline.map((p) => s.at(...p))))).join('');
    if (d !== '') s.draw({ mark, d });
  };
  outlines('landing', limbs.filter((_, i) => chosen === null || i === chosen));
  outlines('ghost', limbs.filter((_, i) => chosen !== null && i !== chosen));
  wire(s, seen, text);
  tree(s, limbs, chosen);
  limbs.forEach((one, i) => {
    if (chosen === null || i === chosen) worker(s, one, true);
  });
  const stem = s.at(0, 0);
  if ((plan.facts.groundSlope.value ?? 0) > 0) {
    const end = edgePoint(stem, wayOf(plan.bearings.downhill), box, 30);
    const back: Point = [end[0] - wayOf(plan.bearings.downhill)[0] * 30, end[1] - wayOf(plan.bearings.downhill)[1] * 30];
    s.draw(arrow(back, end));
    s.asks.push({ text: text('downhill'), at: back, gap: 8, leader: false });
  }
  const one = chosen === null ? null : limbs[chosen];
  if (one?.feet) s.asks.unshift({ text: text('stand', { standOff: said('m', one.standOff, 'up') }), at: s.at(...one.feet), gap: 22, strong: true, wrap: 12, leader: false });
  if (chosen === null) for (const each of limbs) if (each.feet) s.asks.push({ text: same(String(each.number)), at: s.at(...each.feet), gap: 14, strong: true, leader: false });
  const keepOut = Math.max(0, ...limbs.map((each) => each.keepOut));
  // In the corner that the slope does not fall to.
  const right = sin(plan.bearings.downhill) < 0;
  if (keepOut > 0) s.asks.push({ text: text('keepOut', { keepOut: said('m', keepOut, 'up') }), at: [right ? box.width - 2 : 2, box.height - 2], places: [right ? 'above-left' : 'above-right'], gap: 0, leader: false, wrap: 13 });
  s.asks.push({ text: text('mark'), at: [box.width / 2, 0], places: ['below'], gap: 0, leader: false });

  const turner = (id: string, label: string, centre: Point, at: Point, value: number, move: (bearing: number) => Move): Handle<Move> => ({
    id, label: word(view.labels, label), way: 'round', x: at[0], y: at[1], min: -step, max: 360, step, value, says: said('deg', value),
    at: (point) => {
      const [a, b] = [unplace(s.frame, point), unplace(s.frame, centre)];
      return round(Math.round((Math.atan2(a[0] - b[0], a[1] - b[1]) * 180) / Math.PI / step) * step);
    },
    move: (bearing) => move(round(bearing)),
  });
  const { line, downhill } = plan.bearings;
  const handles = [
    ...(plan.choices.wires === 'yes' ? [turner('line', 'moveLine', stem, edgePoint(stem, wayOf(line), box, 24), line, (to) => ({ line: to }))] : []),
    ...((plan.facts.groundSlope.value ?? 0) > 0 ? [turner('downhill', 'moveDownhill', stem, edgePoint(stem, wayOf(downhill), box, 24), downhill, (to) => ({ downhill: to }))] : []),
    ...(one && chosen !== null ? [turner('points', 'movePoints', stem, s.at(...one.tip), plan.limbs[chosen]!.bearings.points, (to) => ({ points: to }))] : []),
    ...(one?.feet && chosen !== null ? [turner('worker', 'moveWorker', s.at(...one.cuts.at(-1)!), s.at(...one.feet), plan.limbs[chosen]!.bearings.worker, (to) => ({ worker: to }))] : []),
  ];
  s.keepOff.push(...handles.map(({ x, y }) => around([[x, y]], 13)));
  return { ...finish(s), handles };
};
