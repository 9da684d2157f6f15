/**
 * Several laterals to choose from, from beside: the limb level, its tip to the right, each lateral at its place from the
 * tip inwards. Thicknesses are true to each other; where along the limb the laterals stand, and their angle, are not.
 * Lengths in mm, origin in the outermost crotch.
 */
import { halfwayCut, ridgeBetween } from '#core/formulas/lateral-cut.ts';
import type { Outcome } from '#core/kit/outcome.ts';
import { quantityOf, said } from '../kit/figures.ts';
import { inset } from '../kit/frame.ts';
import { along } from '../kit/labels.ts';
import { pen, polyline, segment } from '../kit/path.ts';
import { finish, sketch, type View } from '../kit/picture.ts';
import type { Box, Placed, Point } from '../kit/placed.ts';
import { same, say, word } from '../kit/say.ts';
import { add, between, less, times, unit } from '../kit/vector.ts';
import { ridge } from '../marks/ridge.ts';
import type { Face, Inputs, Move } from './geometry.ts';

const places = ['first', 'second', 'third', 'fourth'] as const;
const ratios = ['ratio', 'ratioSecond', 'ratioThird', 'ratioFourth'] as const;
/** Degrees at which each is drawn; in thicknesses of the limb, how far apart they stand, how much of each is drawn, and how far inwards the limb keeps its thickness. */
const looks = { angle: 60, apart: 1.75, lateral: 1.25, tip: 1.35, stem: 1.2, even: 0.95 };
const rad = Math.PI / 180;
const up: Point = [Math.cos(looks.angle * rad), Math.sin(looks.angle * rad)];
const side: Point = [-up[1], up[0]];

export const several = (inputs: Inputs, outcome: Outcome, view: View<Face>, box: Box): Placed<Move> => {
  const limbs = [inputs.parentDiameter, ...(inputs.furtherLimbs ?? [])];
  const laterals = [inputs.lateralDiameter, ...(inputs.furtherLaterals ?? [])];
  const widest = Math.max(...limbs);
  const chosen = outcome.kind === 'answer' ? places.indexOf((outcome.outputs['cutBackTo'] as { value: (typeof places)[number] }).value) : -1;
  const crotch = (i: number): number => -i * widest * looks.apart;
  const last = limbs.length - 1;
  const end = widest * looks.tip;
  const left = crotch(last) - widest * looks.stem - (laterals[last] as number);
  const top = widest * looks.lateral * up[1] + Math.max(...laterals) * up[0];
  const s = sketch({ left, right: Math.max(end, widest * looks.lateral * up[0]), bottom: -widest, top }, box, inset(10, { top: 34, bottom: 22 }), view.held);
  const at = ([x, y]: Point) => s.at(x, y);
  const wave = (path: ReturnType<typeof pen>, from: Point, to: Point) => {
    const [a, b] = [at(from), at(to)];
    const out = times(unit([b[1] - a[1], a[0] - b[0]]), 5);
    path.bezierCurveTo(...add(between(a, b, 0.3), out), ...less(between(a, b, 0.65), out), ...b);
  };
  const topAt = (i: number, y: number): Point => add([crotch(i), 0], times(up, y));

  /** Along the upper edge outwards, over the laterals from this one out, round the end and back along the lower edge. */
  const edge = (path: ReturnType<typeof pen>, from: number) => {
    for (let i = from; i >= 0; i--) {
      const [tip, over] = [topAt(i, widest * looks.lateral), times(side, laterals[i] as number)];
      path.lineTo(...at([crotch(i) - (laterals[i] as number) / up[1], 0]));
      path.lineTo(...at(add(tip, over)));
      wave(path, add(tip, over), tip);
      path.lineTo(...at([crotch(i), 0]));
    }
    path.lineTo(...at([end, 0]));
    wave(path, [end, 0], [end, -(limbs[0] as number)]);
    for (let i = 0; i <= from; i++) for (const x of [crotch(i), crotch(i) - widest * looks.even]) path.lineTo(...at([x, -(limbs[i] as number)]));
  };
  const whole = pen();
  whole.moveTo(...at([left, 0]));
  edge(whole, last);
  whole.lineTo(...at([left, -(limbs[last] as number)]));
  wave(whole, [left, -(limbs[last] as number)], [left, 0]);
  whole.closePath();
  s.draw({ mark: 'limb', d: whole.toString() });

  // How thick each would have to be for the limb at its place.
  const share = outcome.kind === 'answer' ? (outcome.working.find(({ id }) => id === 'smallestLateral')?.values['share'] as number) : null;
  laterals.forEach((_, i) => {
    const need = share === null ? 0 : share * (limbs[i] as number);
    if (need > 0) s.draw({ mark: 'need', d: polyline([at([crotch(i) - need / up[1], 0]), at(add(topAt(i, widest * looks.lateral), times(side, need)))]) });
    const [from, seen] = [at([crotch(i), 0]), times(up, -0.3 * (limbs[i] as number))];
    s.draw(ridge(from, at([crotch(i) + seen[0] * 1.5, seen[1] / 1.5])));
  });

  if (chosen >= 0) {
    const thick = limbs[chosen] as number;
    const slant = halfwayCut(inputs.ridgeAngle ?? ridgeBetween(inputs.lateralAngle)) * rad;
    const foot: Point = [crotch(chosen) - thick / Math.tan(slant), -thick];
    const goes = pen();
    goes.moveTo(...at([crotch(chosen), 0]));
    edge(goes, chosen - 1);
    goes.lineTo(...at([crotch(chosen), -thick]));
    goes.lineTo(...at(foot));
    goes.closePath();
    s.draw({ mark: 'piece', d: goes.toString() });
    const [a, b] = [at([crotch(chosen), 0]), at(foot)];
    const more = times(unit(less(b, a)), 9);
    s.draw({ mark: 'cut', d: segment(less(a, more), add(b, more)) });
    s.keepOff.push(...along(less(a, more), add(b, more), 5));
    s.asks.push(
      { text: say(word(view.labels, 'cut')), at: add(b, more), places: ['below', 'below-left', 'below-right'], gap: 4, strong: true, leader: false },
      { text: say(word(view.labels, 'goes')), at: at([end * 0.5, -(limbs[0] as number) / 2]), places: ['on', 'below'], leader: false },
    );
  }
  laterals.forEach((thick, i) => {
    const tip = topAt(i, widest * looks.lateral);
    const middle = add(tip, times(side, thick / 2));
    const ratio = quantityOf(outcome, ratios[i] as string);
    const figures = { place: same(word(view.labels, places[i] as string)), ratio: said('ratio', ratio?.planOn ?? ratio?.value ?? 0, 'down') };
    s.asks.push({ text: say(word(view.labels, i === chosen ? 'cutBackTo' : 'place'), figures), at: at(middle), places: ['above', 'above-left', 'above-right'], gap: 6, wrap: 9, strong: i === chosen, leader: false });
  });
  return { ...finish(s), handles: [] };
};
