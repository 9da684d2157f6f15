/**
 * Looking along the line, true to scale: the wire in the space that stays empty, worker and pole as held, all the pole can
 * reach after a stumble, the limb and all it can reach. The geometry is core's own (`line-gaps.ts`, `limb-reach.ts`).
 */
import { type lineClearance, settingOf } from '#core/calculators/line-clearance.ts';
import { feetBetween, handStrip, platformOutline, type Setting } from '#core/formulas/line-gaps.ts';
import { limbHalfWidth, limbTop } from '#core/formulas/limb-reach.ts';
import type { InputsOf } from '#core/kit/calculator.ts';
import type { Outcome } from '#core/kit/outcome.ts';
import { planOn, said } from '../kit/figures.ts';
import { inset, onStep, unplace } from '../kit/frame.ts';
import { along } from '../kit/labels.ts';
import { around, circle, polygon, polyline, segment } from '../kit/path.ts';
import { finish, sketch, type Sketch, type View } from '../kit/picture.ts';
import type { Box, Handle, Placed, Point } from '../kit/placed.ts';
import { say, word, type Figures } from '../kit/say.ts';
import { less } from '../kit/vector.ts';
import { ground } from '../marks/ground.ts';
import { limb } from '../marks/limb.ts';
import { lineEnd } from '../marks/line.ts';
import { person } from '../marks/person.ts';
import { platform, rails } from '../marks/platform.ts';
import { pole } from '../marks/pole.ts';
import { stem } from '../marks/stem.ts';

export type Face = 'side';
export type Inputs = InputsOf<(typeof lineClearance)['inputs']>;
export type Move = { lineOffset: number } | { lineHeight: number };

const rad = Math.PI / 180;
const stemBeyond = 0.5;

/** All that pole and body can reach: a dome over the strip of the hands, down to the ground. */
const reachOutline = (set: Setting): [number, number][] => {
  const { x, halfWidth, top } = handStrip(set);
  const arc = (from: number, centre: number): [number, number][] =>
    Array.from({ length: 13 }, (_, i) => {
      const a = (from - i * 7.5) * rad;
      return [centre + set.reach * Math.cos(a), top + set.reach * Math.sin(a)];
    });
  const [left, right] = [arc(180, x - halfWidth), arc(90, x + halfWidth)];
  return [[left[0]![0], 0], ...left, ...right, [right.at(-1)![0], 0]];
};

/** All that the limb can reach, from its top down to the ground, half of it. */
const limbOutline = (set: Setting): [number, number][] => {
  const top = limbTop(set.limbLength, set.limbAngle);
  const n = 18;
  const right = Array.from({ length: n + 1 }, (_, i): [number, number] => {
    const h = top - ((top + set.cutHeight) * i) / n;
    return [limbHalfWidth(set.limbLength, set.limbAngle, h), set.cutHeight + h];
  });
  return [...right.map(([x, z]): [number, number] => [-x, z]).reverse(), ...right];
};

const worker = (s: Sketch, set: Setting) => {
  // A line aslant is drawn as if square to the pole; the dashed outline holds all the other ways.
  const [x] = feetBetween(set);
  const hands = set.floor + set.handHeight;
  const rear = s.at(x, hands);
  const up = hands + set.reach * Math.sin(set.poleAngle * rad);
  const end = set.lineRuns === 'along' ? s.at(x, Math.max(hands, up)) : s.at(x + set.reach * Math.cos(set.poleAngle * rad), up);
  const feet = s.at(x, set.floor);
  const outline = platformOutline(set);
  if (outline) s.draw(platform(feet, s.at(x - Math.max(0.4, set.platform?.boomReach ?? 0), 0), s.frame.scale), { mark: 'ghost', d: polyline(outline.map((p) => s.at(p.x, p.z))) });
  const way = Math.hypot(...less(end, rear)) < 1 ? ([0, -1] as Point) : less(end, rear);
  const figure = person(feet, rear, way, s.frame.scale);
  s.draw(figure.behind, pole(rear, end, Math.max(s.px(0.25), 9)), figure.before);
  if (outline) s.draw(rails(feet, s.frame.scale));
  s.keepOff.push(around([feet, s.at(x, set.floor + 1.85)], s.px(0.3)), ...along(rear, end, 6));
};

export const geometry = (inputs: Inputs, outcome: Outcome, view: View<Face>, box: Box): Placed<Move> => {
  const set = settingOf(inputs);
  const needed = inputs.requiredDistance + inputs.movement;
  const [reach, limbReach] = [reachOutline(set), limbOutline(set)];
  const widest = Math.max(...limbReach.map(([x]) => x));
  const all = [...reach, ...limbReach, [set.lineOffset - needed, set.lineHeight], [set.lineOffset + needed, set.lineHeight + needed]] as [number, number][];
  const xs = all.map(([x]) => x);
  const s = sketch(
    { left: Math.min(...xs) - 0.5, right: Math.max(...xs) + 0.5, bottom: -0.3, top: Math.max(...all.map(([, z]) => z)) + 0.3 },
    box, inset(6, { bottom: 22 }), view.held,
  );
  const path = (points: readonly [number, number][]) => points.map(([x, z]) => s.at(x, z));
  const figures: Figures = { needed: said('m', needed, 'up') };
  const text = (name: string, more: Figures = {}) => say(word(view.labels, name), { ...figures, ...more });
  const gap = (name: string): Figures => ({ gap: said('m', planOn(outcome, name) ?? 0, 'down') });

  s.draw({ mark: 'landing', d: polygon(path(limbReach)) }, { mark: 'ghost', d: polyline(path(reach)) });
  const towards = set.lineOffset < 0 ? -1 : 1;
  const cut = s.at(0, inputs.cutHeight);
  const tip = s.at(towards * set.limbLength * Math.cos(set.limbAngle * rad), inputs.cutHeight + set.limbLength * Math.sin(set.limbAngle * rad));
  const stemAt = s.at(-towards * stemBeyond, 0);
  const thick = Math.max(s.px(0.1), 4);
  s.draw(
    stem(stemAt, s.at(0, inputs.cutHeight + 1)[1], Math.max(s.px(0.3), 6)),
    limb({ from: [stemAt[0], cut[1] + s.px(0.1)], to: cut, fromWidth: thick * 1.2, toWidth: thick, start: 'butt', end: 'cut' }),
    ...(inputs.springUp > 0 ? [{ mark: 'ghost' as const, d: segment([stemAt[0], cut[1] + s.px(0.1)], s.at(0, set.cutHeight)) }] : []),
    limb({ from: cut, to: tip, fromWidth: thick, toWidth: thick * 0.4, start: 'cut', end: 'point' }, 'piece'),
  );
  worker(s, set);
  const wire = s.at(set.lineOffset, set.lineHeight);
  s.draw(
    { mark: 'steep', d: circle(wire, s.px(needed)) }, { mark: 'limit', d: circle(wire, s.px(needed)) }, lineEnd(wire),
    ground(s.at(Math.min(...xs) - 0.5, 0), s.at(Math.max(...xs) + 0.5, 0)),
    { mark: 'guide', d: segment(wire, s.at(set.lineOffset, 0)) },
  );
  s.keepOff.push(...along(wire, s.at(set.lineOffset, 0)));
  // The lower part of the ring; what it is called stands in the upper.
  const ring = (turn: number): Point => [wire[0] + s.px(needed) * Math.cos(turn * rad), wire[1] + s.px(needed) * Math.sin(turn * rad)];
  for (let turn = -15; turn < 195; turn += 15) s.keepOff.push(...along(ring(turn), ring(turn + 15)));
  s.keepOff.push(around([wire], 9), around([s.at(Math.min(...xs), 0), s.at(Math.max(...xs), 0)], 4));
  s.asks.push(
    { text: text('needed'), at: [wire[0], wire[1] - s.px(needed) * 0.55], places: ['on', 'above', 'right', 'left'], strong: true, leader: false, wrap: 14 },
    { text: text('line'), at: wire, places: ['right', 'left', 'below-right'], gap: 10, leader: false },
    { text: text('reach', gap('reachGap')), at: s.at(reach[8]![0], reach[8]![1]), places: ['above-left', 'above', 'left', 'below-left'], wrap: 20, gap: 8 },
    { text: text('limb', gap('limbGap')), at: s.at(widest * 0.75, set.cutHeight * 0.55), places: ['on', 'right', 'below-right', 'left'], wrap: 14, gap: 8 },
  );
  const { lineOffset, lineHeight } = inputs;
  const handles: Handle<Move>[] = [
    {
      id: 'lineOffset', label: word(view.labels, 'moveLine'), way: 'across', x: wire[0], y: s.at(0, 0)[1],
      min: -60, max: 60, value: lineOffset, step: 0.1, says: said('m', lineOffset),
      at: (point) => onStep(unplace(s.frame, point)[0], -60, 60, 0.1), move: (value) => ({ lineOffset: value }),
    },
    {
      id: 'lineHeight', label: word(view.labels, 'moveHeight'), way: 'up', x: wire[0], y: wire[1],
      min: 3, max: 60, value: lineHeight, step: 0.1, says: said('m', lineHeight),
      at: (point) => onStep(unplace(s.frame, point)[1], 3, 60, 0.1), move: (value) => ({ lineHeight: value }),
    },
  ];
  return { ...finish(s), handles };
};
