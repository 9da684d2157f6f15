/** Will the bar cross the limb: the cut seen square on with the bar over it, and the same from above. True to scale. */
import type { Outcome } from '#core/kit/outcome.ts';
import { said } from '../kit/figures.ts';
import { inset, onStep, unplace } from '../kit/frame.ts';
import { along } from '../kit/labels.ts';
import { arc, around, ellipse, pen, polygon, segment } from '../kit/path.ts';
import { finish, sketch, type Sketch, type View } from '../kit/picture.ts';
import type { Box, Handle, Placed, Point } from '../kit/placed.ts';
import { say, word } from '../kit/say.ts';
import { add, leftOf, less, times, way } from '../kit/vector.ts';
import { dimension } from '../marks/dimension.ts';
import { limb } from '../marks/limb.ts';
import { bar as barMark } from '../marks/pole.ts';
import { head, limbWord, sceneOf, type Inputs, type Scene } from './scene.ts';

export type Face = 'section' | 'above';
export type Move = { limbDiameter: number } | { barLength: number } | { offSquare: number };
export type { Inputs };
type Labels = Readonly<Record<string, string>>;

/** The bar from where its foot bears on the limb, with the head of the saw behind it. */
const saw = (s: Sketch, foot: Point, ahead: Point, length: number) => {
  const thick = Math.max(s.px(34), 9);
  const back = times(ahead, -s.px(head));
  const side = times(leftOf(ahead), thick * 0.75);
  s.draw(barMark(foot, ahead, length, thick), {
    mark: 'head',
    d: polygon([add(foot, side), add(add(foot, back), side), less(add(foot, back), side), less(foot, side)]),
  });
  s.draw({ mark: 'pole', d: segment(add(foot, back), add(foot, times(back, 2))) });
};

/** A line across the bar's way at the length needed, with its figure. */
const neededMark = (s: Sketch, foot: Point, ahead: Point, length: number) => {
  const at = add(foot, times(ahead, length));
  const side = times(leftOf(ahead), 20);
  s.draw({ mark: 'need', d: segment(add(at, side), less(at, side)) });
  return { at, top: add(at, side), bottom: less(at, side) };
};

const section = (scene: Scene, s: Sketch, labels: Labels): Handle<Move>[] => {
  const { most, width, diameter, bar, needed, figures } = scene;
  const centre = s.at(0, 0);
  const foot = s.at(-most.width / 2, 0);
  const ring = (k: number) => ellipse(centre, s.px(width / 2) * k, s.px(diameter / 2) * k);
  s.draw({ mark: 'section', d: ring(1) }, { mark: 'bark', d: [0.78, 0.56, 0.34, 0.12].map(ring).join('') });
  if (most.width > width * 1.001) s.draw({ mark: 'ghost', d: ellipse(centre, s.px(most.width / 2), s.px(most.diameter / 2)) });
  if (bar < most.width) {
    // What the bar does not reach: the limb beyond its nose.
    const [a, b] = [most.width / 2, most.diameter / 2];
    const from = Math.acos(Math.min(Math.max((bar - a) / a, -1), 1));
    const points = Array.from({ length: 13 }, (_, i): Point => {
      const turn = from - (2 * from * i) / 12;
      return s.at(a * Math.cos(turn), b * Math.sin(turn));
    });
    s.draw({ mark: 'uncut', d: polygon(points) });
  }
  saw(s, foot, [1, 0], s.px(bar));
  const mark = neededMark(s, foot, [1, 0], s.px(needed));
  const across = dimension(s.at(-most.width / 2, most.diameter / 2), s.at(most.width / 2, most.diameter / 2), 14);
  s.draw(across.shapes);
  s.keepOff.push(around([add(foot, [-s.px(head), 0]), add(foot, [s.px(bar), 0])], Math.max(s.px(26), 12)), ...along(mark.top, mark.bottom, 6));
  const text = (name: string) => say(word(labels, name), figures);
  s.asks.push(
    { text: text('cutWidth'), at: across.middle, places: ['above'], gap: 4, leader: false, wrap: 26 },
    { text: text(limbWord(scene)), at: s.at(0, -most.diameter / 2), places: ['below'], gap: 5, strong: true, wrap: 26, leader: false },
    { text: text(scene.crosses ? 'needed' : 'short'), at: mark.bottom, places: ['below', 'below-right', 'below-left'], gap: 4, wrap: 16, strong: !scene.crosses },
    { text: text('bar'), at: [foot[0] + s.px(bar), foot[1] - 6], places: ['above-right', 'above', 'above-left'], gap: 12, wrap: 14 },
  );
  const missing = most.width - bar;
  if (s.px(missing) > 70) s.asks.push({ text: text('notReached'), at: s.at(most.width / 2 - missing / 2, most.diameter * 0.27), places: ['on'], leader: false, wrap: 12 });
  return [
    {
      id: 'limbDiameter', label: word(labels, 'moveDiameter'), way: 'up', x: centre[0], y: s.at(0, diameter / 2)[1],
      min: 10, max: 400, step: 1, value: diameter, says: said('mm', diameter),
      at: (point) => onStep(2 * unplace(s.frame, point)[1], 10, 400, 1),
      move: (value) => ({ limbDiameter: value }),
    },
    {
      id: 'barLength', label: word(labels, 'moveBar'), way: 'across', x: foot[0] + s.px(bar), y: foot[1],
      min: 150, max: 400, step: 10, value: bar, says: said('mm', bar),
      at: (point) => onStep((point[0] - foot[0]) / s.frame.scale, 150, 400, 10),
      move: (value) => ({ barLength: value }),
    },
  ];
};

const above = (scene: Scene, s: Sketch, labels: Labels, half: number): Handle<Move>[] => {
  const { most, diameter, offSquare, bar, needed, figures } = scene;
  const wood = (d: number) => ({ from: s.at(-half, 0), to: s.at(half, 0), fromWidth: s.px(d), toWidth: s.px(d) });
  s.draw(limb(wood(diameter)));
  for (const y of most.diameter > diameter * 1.001 ? [most.diameter / 2, -most.diameter / 2] : []) s.draw({ mark: 'ghost', d: segment(s.at(-half, y), s.at(half, y)) });
  const foot = s.at(0, -most.diameter / 2);
  const ahead = way(90 - offSquare);
  const square = pen();
  const reach = s.px(Math.max(bar, needed)) * 0.8;
  square.moveTo(...foot);
  square.lineTo(foot[0], foot[1] - reach);
  s.draw({ mark: 'guide', d: square.toString() });
  saw(s, foot, ahead, s.px(bar));
  const mark = neededMark(s, foot, ahead, s.px(needed));
  const radius = reach * 0.9;
  if (offSquare > 0) s.draw({ mark: 'dim', d: arc(foot, radius, 90 - offSquare, 90) });
  const nose = add(foot, times(ahead, s.px(bar)));
  const text = (name: string) => say(word(labels, name), figures);
  s.keepOff.push(...along(less(foot, times(ahead, s.px(head * 2))), nose, 14), ...along(mark.top, mark.bottom, 6), ...along(foot, [foot[0], foot[1] - reach]));
  s.asks.push(
    s.px(diameter) > 44
      ? { text: text(limbWord(scene)), at: s.at(-half * 0.6, 0), places: ['on'], strong: true, leader: false, wrap: 12 }
      : { text: text(limbWord(scene)), at: s.at(-half * 0.6, most.diameter / 2), places: ['above'], gap: 6, strong: true, leader: false, wrap: 14 },
    { text: text(scene.crosses ? 'needed' : 'short'), at: mark.bottom, places: ['right', 'below-right'], gap: 5, wrap: 14, strong: !scene.crosses },
    { text: text('bar'), at: nose, places: ['right', 'above-right', 'above'], gap: 20, wrap: 14 },
  );
  if (offSquare > 0) s.asks.push({ text: text('offSquare'), at: add(foot, times(way(90 - offSquare / 2), radius)), places: ['left', 'above-left', 'above'], gap: 12, wrap: 11 });
  return [
    {
      id: 'offSquare', label: word(labels, 'moveOffSquare'), way: 'across', x: nose[0], y: nose[1],
      min: 0, max: 60, step: 5, value: offSquare, says: said('deg', offSquare),
      at: (point) => onStep((Math.atan2(point[0] - foot[0], foot[1] - point[1]) * 180) / Math.PI, 0, 60, 5),
      move: (value) => ({ offSquare: value }),
    },
  ];
};

export const geometry = (inputs: Inputs, outcome: Outcome, view: View<Face>, box: Box): Placed<Move> => {
  const scene = sceneOf(inputs, outcome);
  const { most, bar, needed, offSquare } = scene;
  const long = Math.max(bar, needed, most.width);
  if (view.face === 'section') {
    const extent = { left: -most.width / 2 - head * 2, right: long - most.width / 2 + 15, bottom: -most.diameter / 2, top: most.diameter / 2 };
    const s = sketch(extent, box, inset(10, { top: 40, bottom: 44 }), view.held);
    const handles = section(scene, s, view.labels);
    return { ...finish(s), handles };
  }
  const tilt = way(90 - offSquare);
  const extent = {
    left: -Math.max(head * 2 * tilt[0] + 20, long * 0.62),
    right: Math.max(long * tilt[0] + 40, long * 0.5),
    bottom: -most.diameter / 2 + 2 * head * tilt[1],
    top: Math.max(-most.diameter / 2 - long * tilt[1], most.diameter / 2) + 10,
  };
  const s = sketch(extent, box, inset(10, { top: 18, right: 60 }), view.held);
  const half = Math.min(s.frame.x0, box.width - s.frame.x0) / s.frame.scale - 12 / s.frame.scale;
  const handles = above(scene, s, view.labels, half);
  return { ...finish(s), handles };
};
