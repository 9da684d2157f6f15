/**
 * The height of a cut, from beside, true to scale in metres: origin on the ground plumb under the cut, the person on the
 * left. Sighted from the eye, or touched with the pole.
 */
import type { height } from '#core/calculators/height.ts';
import { fromPercent } from '#core/formulas/sighting.ts';
import type { InputsOf } from '#core/kit/calculator.ts';
import type { Outcome } from '#core/kit/outcome.ts';
import { quantityOf, said, worked } from '../kit/figures.ts';
import { inset, onStep, unplace } from '../kit/frame.ts';
import { along } from '../kit/labels.ts';
import { circle, segment } from '../kit/path.ts';
import { finish, sketch, type Sketch, type View } from '../kit/picture.ts';
import type { Box, Handle, Placed, Point } from '../kit/placed.ts';
import { say, word, type Figures } from '../kit/say.ts';
import { less } from '../kit/vector.ts';
import { dimension } from '../marks/dimension.ts';
import { limb } from '../marks/limb.ts';
import { ground } from '../marks/ground.ts';
import { person } from '../marks/person.ts';
import { pole } from '../marks/pole.ts';
import { stem } from '../marks/stem.ts';

export type Face = 'side';
export type Inputs = InputsOf<(typeof height)['inputs']>;
export type Move = { angleToCut: number };

type Scene = { cut: number; away: number; eye: number; grip: number };

/** Heights over the ground plumb under the cut. */
const sceneOf = (inputs: Inputs, outcome: Outcome): Scene => {
  const cut = quantityOf(outcome, 'height')?.value ?? 3;
  const away = quantityOf(outcome, 'levelDistance')?.value ?? 3;
  const base = worked(outcome, 'baseFromEye');
  const feet = -away * Math.tan((inputs.slope * Math.PI) / 180);
  return { cut, away, eye: base === null ? 1.6 : -base, grip: feet + (inputs.gripHeight ?? 1.1) };
};

const sighted = (s: Sketch, scene: Scene, inputs: Inputs, text: (name: string, more?: Figures) => ReturnType<typeof say>): void => {
  const eye = s.at(-scene.away, scene.eye);
  const [cut, base] = [s.at(0, scene.cut), s.at(0, 0)];
  const up = inputs.scale === 'degrees' ? (inputs.angleToCut ?? 0) : fromPercent(inputs.percentToCut ?? 0);
  const level = s.at(0, scene.eye);
  s.draw({ mark: 'guide', d: segment(eye, level) }, { mark: 'dim', d: segment(eye, cut) }, { mark: 'dim', d: segment(eye, base) });
  s.draw({ mark: 'person', d: circle(eye, 4) });
  s.keepOff.push(...along(eye, cut, 6), ...along(eye, base, 6));
  const part = (to: Point, share: number): Point => [eye[0] + (to[0] - eye[0]) * share, eye[1] + (to[1] - eye[1]) * share];
  s.asks.push(
    { text: text('eye'), at: eye, places: ['left', 'above-left', 'below-left'], gap: 7, leader: false },
    { text: text('up', { angle: said('deg', Math.abs(up)) }), at: part(cut, 0.45), places: ['above-left', 'above', 'left'], gap: 6, strong: true },
  );
  if (inputs.angleToBase !== null || inputs.percentToBase !== null) {
    const down = inputs.scale === 'degrees' ? (inputs.angleToBase ?? 0) : fromPercent(inputs.percentToBase ?? 0);
    s.asks.push({ text: text('down', { angle: said('deg', Math.abs(down)) }), at: part(base, 0.45), places: ['below-left', 'below', 'left'], gap: 6 });
  }
};

const touched = (s: Sketch, scene: Scene, inputs: Inputs, text: (name: string) => ReturnType<typeof say>): void => {
  const rear = s.at(-scene.away, scene.grip);
  const cut = s.at(0, scene.cut);
  const figure = person(s.at(-scene.away, scene.grip - (inputs.gripHeight ?? 1.1)), rear, less(cut, rear), s.frame.scale);
  s.draw(figure.behind, pole(rear, cut, Math.max(s.px(0.25), 12)), figure.before);
  s.keepOff.push(...along(rear, cut, 8));
  s.asks.push({ text: text('pole'), at: [(rear[0] + cut[0]) / 2, (rear[1] + cut[1]) / 2], places: ['above-left', 'left'], gap: 8, wrap: 12 });
};

export const geometry = (inputs: Inputs, outcome: Outcome, view: View<Face>, box: Box): Placed<Move> => {
  const scene = sceneOf(inputs, outcome);
  const bySight = inputs.method === 'sight';
  const low = Math.min(0, scene.eye - 1.7, scene.grip - 1.2);
  const wide = scene.away + 0.8;
  const s = sketch({ left: -wide, right: wide * 0.22, bottom: low, top: Math.max(scene.cut, scene.eye, 1.9) * 1.06 }, box, inset(10, { top: 16, bottom: 34 }), view.held);
  const figures: Figures = {
    height: said('m', scene.cut),
    levelDistance: said('m', scene.away),
    ...(inputs.poleOut === null ? {} : { poleOut: said('m', inputs.poleOut) }),
    ...(inputs.standOff === null ? {} : { standOff: said('m', inputs.standOff) }),
  };
  const text = (name: string, more: Figures = {}) => say(word(view.labels, name), { ...figures, ...more });
  const slope = Math.tan((inputs.slope * Math.PI) / 180);
  s.draw(ground(s.at(-wide, -wide * slope * (bySight && inputs.along === 'level' && inputs.slope === 0 ? 0 : 1)), s.at(0, 0)), ground(s.at(0, 0), s.at(wide * 0.22, 0)));
  s.draw(stem(s.at(wide * 0.1, 0), s.at(0, Math.max(scene.cut, 1.9) * 1.06)[1], Math.max(s.px(0.3), 9)));
  const cut = s.at(0, scene.cut);
  const thick = Math.max(s.px(0.1), 5);
  s.draw(limb({ from: [s.at(wide * 0.1, 0)[0], cut[1] + thick], to: [cut[0] - Math.min(s.px(0.8), 40), cut[1] - thick], fromWidth: thick * 1.2, toWidth: thick * 0.8, start: 'butt' }));
  s.draw({ mark: 'cut', d: segment([cut[0] - 7, cut[1]], [cut[0] + 7, cut[1]]) }, { mark: 'guide', d: segment(cut, s.at(0, 0)) });
  if (bySight) sighted(s, scene, inputs, text);
  else touched(s, scene, inputs, text);
  const under = s.at(0, low)[1] + 12;
  const across = dimension([s.at(-scene.away, 0)[0], under], [cut[0], under], 0);
  s.draw(across.shapes);
  s.keepOff.push(...along([s.at(-scene.away, 0)[0], under], [cut[0], under]));
  s.asks.push(
    { text: text(bySight ? 'distance' : 'standOff'), at: across.middle, places: ['below', 'above'], gap: 4, leader: false },
    { text: text('height'), at: cut, places: ['above-left', 'above', 'left'], gap: 14, strong: true },
  );
  const handles: Handle<Move>[] = [];
  if (bySight && inputs.scale === 'degrees' && inputs.angleToCut !== null) {
    handles.push({
      id: 'angleToCut', label: word(view.labels, 'moveAngle'), way: 'up', x: cut[0], y: cut[1], min: -45, max: 60, step: 0.5,
      value: inputs.angleToCut, says: said('deg', inputs.angleToCut),
      at: (point) => onStep((Math.atan2(unplace(s.frame, point)[1] - scene.eye, scene.away) * 180) / Math.PI, -45, 60, 0.5),
      move: (value) => ({ angleToCut: value }),
    });
  }
  return { ...finish(s), handles };
};
