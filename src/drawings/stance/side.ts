/** `stance` from beside: the vertical plane through the worker and the cut. */
import type { Outcome } from '#core/kit/outcome.ts';
import { said } from '../kit/figures.ts';
import { inset, onStep, unplace, type Frame } from '../kit/frame.ts';
import { along } from '../kit/labels.ts';
import { arc, around, circle, polygon, segment, smooth } from '../kit/path.ts';
import { finish, sketch, type Sketch } from '../kit/picture.ts';
import type { Box, Handle, Placed, Point } from '../kit/placed.ts';
import { say, word, type Figures } from '../kit/say.ts';
import { between, less } from '../kit/vector.ts';
import { dimension } from '../marks/dimension.ts';
import { ground } from '../marks/ground.ts';
import { limb, section } from '../marks/limb.ts';
import { person } from '../marks/person.ts';
import { platform, rails } from '../marks/platform.ts';
import { pole } from '../marks/pole.ts';
import { stem } from '../marks/stem.ts';
import { looks, nearestDrawn, rightOf, sceneOf, sideExtent, type Inputs, type Place, type Scene } from './scene.ts';

export type Move = { cutHeight: number } | { standOff: number };
type Labels = Readonly<Record<string, string>>;

/** Above the ground everything stands lower by what is left out. */
const up = (s: Sketch, scene: Scene, [x, y]: Point): Point => s.at(x, y - scene.leftOut);

/** Two waves across an upright, and paper between: height left out. */
const breaks = (s: Sketch, x: number, y: number, half: number) => {
  const wave = (at: number): Point[] => [[x - half, at + 2], [x - half / 2, at - 2], [x + half / 2, at + 2], [x + half, at - 2]];
  s.draw({ mark: 'gap', d: polygon([...wave(y - 4), ...wave(y + 4).toReversed()]) }, { mark: 'dim', d: smooth(wave(y - 4)) + smooth(wave(y + 4)) });
};

const tree = (s: Sketch, scene: Scene) => {
  const { inputs, stemAt } = scene;
  const cut = up(s, scene, scene.cut);
  const foot = s.at(stemAt, scene.groundAt(-stemAt));
  s.draw(stem(foot, cut[1] - s.px(0.4), Math.max(s.px(looks.stem * 2), 7)));
  const thick = Math.max(s.px(looks.limb * 2), 6);
  if (inputs.standing === 'beside') {
    const radius = Math.max(s.px(0.1), 6);
    s.draw({ mark: 'section', d: circle(cut, radius) }, { mark: 'bark', d: section(cut, radius) });
  } else {
    const out = inputs.standing === 'stemSide' ? 1 : -1;
    const from: Point = [s.at(stemAt + out * looks.stem * 0.8, 0)[0], cut[1] + s.px(0.04)];
    const to: Point = [s.at(out * looks.limbDrawn, 0)[0], cut[1] - s.px(0.1)];
    s.keepOff.push(...along(from, to, thick));
    s.draw(limb({ from, to, fromWidth: thick * 1.1, toWidth: thick * 0.85, start: 'butt' }));
  }
};

/** The room between the limit angle and plumb, the landing, and where one may stand. */
const zones = (s: Sketch, scene: Scene) => {
  const { limitDistance, inputs, gripAt, groundAt, nearest, furthest } = scene;
  const onGround = (standOff: number) => s.at(-standOff, groundAt(standOff));
  if (limitDistance !== null && limitDistance > 0) {
    const [edge, cut] = [up(s, scene, gripAt(limitDistance)), up(s, scene, scene.cut)];
    s.draw({ mark: 'steep', d: polygon([cut, edge, up(s, scene, gripAt(0))]) }, { mark: 'limit', d: segment(edge, cut) });
  }
  const down = (point: Point, px: number): Point => [point[0], point[1] + px];
  if (inputs.landingReach > 0) {
    const [a, b] = [onGround(inputs.landingReach), onGround(0)];
    s.draw({ mark: 'landing', d: polygon([down(a, 2), down(b, 2), down(b, 13), down(a, 13)]) });
  }
  if (nearest !== null && furthest !== null && furthest >= nearest) {
    const [a, b] = [onGround(furthest), onGround(nearest)];
    const tick = (end: Point) => segment(down(end, -7), down(end, 7));
    s.draw({ mark: 'stand', d: segment(a, b) + tick(a) + tick(b) });
  }
};

const worker = (s: Sketch, scene: Scene) => {
  const { standOff, toCut, poleOut, inputs, gripAt, groundAt } = scene;
  const rear = up(s, scene, gripAt(standOff));
  const cut = up(s, scene, scene.cut);
  const feet = up(s, scene, [-standOff, groundAt(standOff) + inputs.platformHeight]);
  const way = less(cut, rear);
  // A pole longer than the way to the cut sticks out behind the hands; a shorter one ends before it.
  const tail = between(rear, cut, Math.min(0, (toCut - poleOut) / toCut));
  const end = between(rear, cut, Math.min(1, poleOut / toCut));
  if (inputs.platformHeight > 0) s.draw(platform(feet, s.at(-standOff - 0.25, groundAt(standOff)), s.frame.scale));
  const figure = person(feet, rear, way, s.frame.scale);
  s.draw(figure.behind, { mark: 'pole', d: segment(tail, rear) }, pole(rear, end, Math.max(s.px(0.25), 15)), figure.before);
  if (inputs.platformHeight > 0) s.draw(rails(feet, s.frame.scale));
  if (poleOut < toCut) s.draw({ mark: 'guide', d: segment(end, cut) });
  const body = around([feet, [feet[0], feet[1] - s.px(1.85)]], s.px(0.28));
  s.keepOff.push(body, ...along(tail, cut, 6));
  return { rear, cut, feet, body };
};

export const side = (inputs: Inputs, outcome: Outcome, place: Place, labels: Labels, box: Box, held?: Frame | null): Placed<Move> => {
  const scene = sceneOf(inputs, outcome, place);
  const s = sketch(sideExtent(scene), box, inset(8, { bottom: 56, right: 46, top: 10 }), held);
  const text = (name: string, figures?: Figures) => say(word(labels, name), figures);
  const { groundAt, standOff, nearest, furthest, leftOut } = scene;
  tree(s, scene);
  s.draw(ground(s.at(-scene.left, groundAt(scene.left)), s.at(rightOf(inputs), groundAt(-rightOf(inputs)))));
  zones(s, scene);
  const { rear, cut, feet, body } = worker(s, scene);

  const measured = rightOf(inputs) - 0.2;
  const height = dimension(s.at(measured, groundAt(-measured)), [s.at(measured, 0)[0], cut[1]], 0);
  s.draw({ mark: 'guide', d: segment([cut[0] + 10, cut[1]], [height.middle[0] + 4, cut[1]]) }, height.shapes);
  const radius = Math.max(Math.min(s.px(0.7), 44), 26);
  s.draw({ mark: 'dim', d: segment(rear, [rear[0] + radius + 6, rear[1]]) + arc(rear, radius, Math.min(0, scene.angle), Math.max(0, scene.angle)) });

  const bisect = (scene.angle / 2) * (Math.PI / 180);
  if (leftOut > 0) {
    const y = s.at(0, 0)[1] - s.px(0.75);
    breaks(s, s.at(scene.stemAt, 0)[0], y, Math.max(s.px(looks.stem), 5) + 4);
    breaks(s, height.middle[0], y, 6);
    breaks(s, s.at(-standOff - 0.5, 0)[0], y, s.px(0.3) + 4);
  }
  const inBand = nearest !== null && furthest !== null && furthest >= nearest;
  const onGround = (x: number): Point => { const [px, py] = s.at(-x, groundAt(x)); return [px, py]; };
  if (inputs.landingReach > 0) {
    s.asks.push({ text: text('landing', { landingReach: said('m', inputs.landingReach, 'up') }), at: [onGround(inputs.landingReach / 2)[0], onGround(inputs.landingReach / 2)[1] + 13], places: ['below', 'below-right'], gap: 4, wrap: 24 });
  }
  s.asks.push(
    { text: said('deg', scene.angle), at: [rear[0] + radius * Math.cos(bisect), rear[1] - radius * Math.sin(bisect)], places: ['right', 'above-right', 'below-right'], gap: 5, strong: true, leader: false },
    inBand
      ? { text: text('stand', { nearest: said('m', nearest, 'up'), furthest: said('m', furthest, 'down') }), at: onGround((nearest + furthest) / 2), places: ['below', 'below-left', 'below-right'], gap: 16, strong: true, wrap: 40 }
      : { text: text('noPlace'), at: onGround(standOff), places: ['below', 'below-left', 'below-right'], gap: 16, strong: true, wrap: 32 },
    { text: said('m', inputs.cutHeight), at: height.middle, places: ['right', 'left'], gap: 5, leader: false },
  );
  if (scene.where !== 'fits') {
    s.asks.push({ text: text(scene.where), at: [feet[0], body.y], places: ['above', 'above-left', 'left'], gap: 4, strong: true, leader: false, wrap: 14 });
  }
  s.asks.push({ text: text(scene.poleOut < scene.toCut ? 'poleNeeded' : 'pole', { pole: said('m', scene.toCut, 'up') }), at: between(rear, cut, 0.62), places: ['above-left', 'left', 'above'], gap: 10, leader: false, wrap: 14 });
  if (scene.limitDistance !== null && scene.limitDistance > 0) {
    const edge = up(s, scene, scene.gripAt(scene.limitDistance));
    const steepest = (Math.atan2(edge[1] - cut[1], cut[0] - edge[0]) * 180) / Math.PI;
    s.asks.push({ text: text('limit', { limitAngle: said('deg', steepest) }), at: between(edge, cut, 0.3), places: ['right', 'below-right'], gap: 9, wrap: 11 });
  }

  const handles: Handle<Move>[] = [
    {
      id: 'standOff', label: word(labels, 'moveStandOff'), way: 'across', x: feet[0], y: s.at(0, groundAt(standOff))[1], area: body,
      min: nearestDrawn, max: scene.furthestDrawn, value: standOff, step: 0.1, says: said('m', standOff),
      at: (point) => onStep(-unplace(s.frame, point)[0], nearestDrawn, scene.furthestDrawn, 0.1),
      move: (value) => ({ standOff: value }),
    },
    {
      id: 'cutHeight', label: word(labels, 'moveCutHeight'), way: 'up', x: height.middle[0], y: cut[1], area: around([cut], 24),
      min: 1.2, max: 15, value: inputs.cutHeight, step: 0.1, says: said('m', inputs.cutHeight),
      at: (point) => onStep(unplace(s.frame, point)[1] + leftOut, 1.2, 15, 0.1),
      move: (value) => ({ cutHeight: value }),
    },
  ];
  return { ...finish(s), handles };
};
