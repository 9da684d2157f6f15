/**
 * Cutting a limb back to a lateral, from beside, true to scale: the parent level, the lateral rising from it, the cut from
 * the crotch across the parent (as `cutArea` takes it). Lengths in mm, origin in the crotch. Several: `several.ts`.
 */
import type { reduction } from '#core/calculators/reduction.ts';
import { halfwayCut, ridgeBetween } from '#core/formulas/lateral-cut.ts';
import type { InputsOf } from '#core/kit/calculator.ts';
import type { Outcome } from '#core/kit/outcome.ts';
import { planOn, said } from '../kit/figures.ts';
import { inset, onStep, unplace } from '../kit/frame.ts';
import { along } from '../kit/labels.ts';
import { pen, polyline, segment } from '../kit/path.ts';
import { finish, sketch, type View } from '../kit/picture.ts';
import type { Box, Handle, Placed, Point } from '../kit/placed.ts';
import { say, word, type Figures } from '../kit/say.ts';
import { add, between, less, times, unit } from '../kit/vector.ts';
import { several } from './several.ts';
import { dimension } from '../marks/dimension.ts';
import { ridge } from '../marks/ridge.ts';

export type Face = 'side';
export type Inputs = InputsOf<(typeof reduction)['inputs']>;
export type Move = { lateralDiameter: number };

/** Lengths drawn, in parent diameters: of the lateral, and of the parent beyond the crotch. */
const lateralDrawn = 1.35;
const parentDrawn = 1.5;

export const geometry = (inputs: Inputs, outcome: Outcome, view: View<Face>, box: Box): Placed<Move> => {
  if (inputs.furtherLimbs !== null) return several(inputs, outcome, view, box);
  const { parentDiameter: parent, lateralDiameter: lateral, lateralAngle } = inputs;
  const ridgeAngle = (inputs.ridgeAngle ?? ridgeBetween(lateralAngle)) * (Math.PI / 180);
  const slant = halfwayCut(inputs.ridgeAngle ?? ridgeBetween(lateralAngle)) * (Math.PI / 180);
  const angle = (lateralAngle * Math.PI) / 180;
  const up: Point = [Math.cos(angle), Math.sin(angle)];
  const side: Point = [-up[1], up[0]];
  const smallest = planOn(outcome, 'smallestLateral');
  const widest = Math.max(lateral, Math.min(smallest ?? 0, parent * 0.8));
  const cutFoot: Point = [-parent / Math.tan(slant), -parent];
  const joint = -widest / Math.sin(angle);
  const left = Math.min(cutFoot[0], joint) - parent * 1.35;
  const tip = times(up, parent * lateralDrawn);
  const s = sketch(
    { left, right: Math.max(parent * parentDrawn, tip[0]), bottom: -parent, top: tip[1] + widest * up[0] + parent * 0.05 },
    box, inset(10, { top: 20, bottom: 22 }), view.held,
  );
  const at = ([x, y]: Point) => s.at(x, y);
  const figures: Figures = {
    parentDiameter: said('mm', parent),
    lateralDiameter: said('mm', lateral),
    ...(smallest === null ? {} : { smallestLateral: said('mm', smallest, 'up') }),
  };
  const text = (name: string) => say(word(view.labels, name), figures);

  // Parent and lateral as one outline; the ends run on.
  const path = pen();
  const wave = (from: Point, to: Point) => {
    const [a, b] = [at(from), at(to)];
    const out = times(unit([b[1] - a[1], a[0] - b[0]]), 7);
    path.bezierCurveTo(...add(between(a, b, 0.3), out), ...less(between(a, b, 0.65), out), ...b);
  };
  const end = parent * parentDrawn;
  const far = add(tip, times(side, lateral));
  path.moveTo(...at([left, -parent]));
  path.lineTo(...at([end, -parent]));
  wave([end, -parent], [end, 0]);
  path.lineTo(...at([0, 0]));
  path.lineTo(...at(tip));
  wave(tip, far);
  path.lineTo(...at([-lateral / Math.sin(angle), 0]));
  path.lineTo(...at([left, 0]));
  wave([left, 0], [left, -parent]);
  path.closePath();
  s.draw({ mark: 'limb', d: path.toString() });

  // What goes, and the ridge in the crotch.
  const goes = pen();
  const [a, b] = [at([end, 0]), at([end, -parent])];
  const out = times(unit([b[1] - a[1], a[0] - b[0]]), 7);
  goes.moveTo(...at([0, 0]));
  goes.lineTo(...a);
  goes.bezierCurveTo(...add(between(b, a, 0.65), times(out, 1)), ...less(between(b, a, 0.3), out), ...b);
  goes.lineTo(...at(cutFoot));
  goes.closePath();
  s.draw({ mark: 'piece', d: goes.toString() });
  if (lateralAngle >= 25) {
    const to = times([Math.cos(ridgeAngle), Math.sin(ridgeAngle)], -0.42 * parent);
    s.draw(ridge(at([0, 0]), at(to)));
  }
  const ghost = smallest !== null && smallest <= parent * 1.5 ? smallest : null;
  const ghostFar = add(tip, times(side, ghost ?? 0));
  if (ghost !== null) s.draw({ mark: 'need', d: polyline([at([-ghost / Math.sin(angle), 0]), at(ghostFar)]) });

  const [crotch, foot] = [at([0, 0]), at(cutFoot)];
  const more = times(unit(less(foot, crotch)), 11);
  s.draw({ mark: 'cut', d: segment(less(crotch, more), add(foot, more)) });

  const thick = dimension(at([left + parent * 0.35, -parent]), at([left + parent * 0.35, 0]), 0);
  const middle = times(up, parent * lateralDrawn * 0.72);
  const thin = dimension(at(middle), at(add(middle, times(side, lateral))), 0);
  s.draw(thick.shapes, thin.shapes);
  const grip = at(add(times(up, parent * lateralDrawn * 0.42), times(side, lateral)));
  s.keepOff.push(...along(less(crotch, more), add(foot, more), 5), ...along(at(tip), at([0, 0])), ...along(at(far), at([-lateral / Math.sin(angle), 0])), { x: grip[0] - 12, y: grip[1] - 12, width: 24, height: 24 });
  s.asks.push(
    { text: text('parent'), at: thick.middle, places: ['right', 'left'], gap: 6, leader: false, wrap: 16 },
    { text: text('lateral'), at: at(middle), places: ['right', 'below-right'], gap: 9, wrap: 20 },
    { text: text('goes'), at: at([parent * parentDrawn * 0.5, -parent * 0.55]), places: ['on'], leader: false },
    { text: text('cut'), at: add(foot, more), places: ['below', 'left', 'right'], gap: 4, strong: true, leader: false },
  );
  if (ghost !== null) s.asks.push({ text: text('smallest'), at: at(between(ghostFar, [-ghost / Math.sin(angle), 0], 0.12)), places: ['left', 'above-left', 'above'], gap: 7, wrap: 14, strong: lateral < ghost });

  const most = Math.min(300, Math.floor(parent));
  const handles: Handle<Move>[] = [
    {
      id: 'lateralDiameter', label: word(view.labels, 'moveLateral'), way: lateralAngle < 45 ? 'up' : 'across', x: grip[0], y: grip[1],
      min: 5, max: most, step: 1, value: lateral, says: said('mm', lateral),
      at: (point) => {
        const [x, y] = unplace(s.frame, point);
        return onStep(x * side[0] + y * side[1], 5, most, 1);
      },
      move: (value) => ({ lateralDiameter: value }),
    },
  ];
  return { ...finish(s), handles };
};
