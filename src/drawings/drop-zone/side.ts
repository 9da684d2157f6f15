/** The drop zone from beside: the limb before it moves, both worst falls as outlines, the ground it may cover, the heights asked for. */
import { tan } from '#core/formulas/angles.ts';
import { said } from '../kit/figures.ts';
import { inset, onStep, unplace, type Frame } from '../kit/frame.ts';
import { along } from '../kit/labels.ts';
import { polygon, polyline, segment } from '../kit/path.ts';
import { finish, sketch } from '../kit/picture.ts';
import type { Box, Handle, Placed, Point, Shape } from '../kit/placed.ts';
import { say, word } from '../kit/say.ts';
import { arrow } from '../marks/arrow.ts';
import { dimension } from '../marks/dimension.ts';
import { ground } from '../marks/ground.ts';
import { limb } from '../marks/limb.ts';
import { stem } from '../marks/stem.ts';
import type { Inputs, Pose, Scene } from './scene.ts';

export type Move = { cutHeight: number } | { limbLength: number };
export type Moment = { way: 'inward' | 'outward'; at: number };

const looks = { stem: 0.35, thick: 0.11 };

export const side = (inputs: Inputs, scene: Scene, labels: Readonly<Record<string, string>>, box: Box, moment: Moment | null, held?: Frame | null): Placed<Move> => {
  const rise = tan(inputs.groundSlope);
  const onGround = (x: number): number => x * rise;
  const left = -Math.max(scene.inward, inputs.cutToStem + 0.6) - 0.4;
  const right = Math.max(scene.outward, inputs.limbLength) + 0.4;
  const start = scene.poses.inward[0];
  const top = Math.max(inputs.cutHeight, start?.tip[1] ?? 0) + 0.7;
  const s = sketch({ left, right, bottom: Math.min(onGround(left), onGround(right), 0), top }, box, inset(8, { bottom: 48, top: 12 }), held);
  const text = (name: string, figures = {}) => say(word(labels, name), figures);
  const at = (p: readonly [number, number]): Point => s.at(p[0], p[1]);
  const strip = (from: number, to: number): string => {
    const [a, b] = [s.at(from, onGround(from)), s.at(to, onGround(to))];
    return polygon([a, b, [b[0], b[1] + 10], [a[0], a[1] + 10]]);
  };
  s.draw({ mark: 'landing', d: strip(-Math.min(scene.inward, inputs.cutToStem), scene.outward) });
  // Beyond the stem it lands only if the stem does not stop it.
  if (scene.inward > inputs.cutToStem) s.draw({ mark: 'steep', d: strip(-scene.inward, -inputs.cutToStem) });
  s.draw(ground(s.at(left, onGround(left)), s.at(right, onGround(right))));
  s.draw(stem(s.at(-inputs.cutToStem - looks.stem / 2, onGround(-inputs.cutToStem)), s.at(0, top)[1], Math.max(s.px(looks.stem), 9)));
  if (inputs.basketLow < top) {
    const high = Math.min(inputs.basketHigh, top);
    const { passingOut, passingIn } = scene;
    const heights = [inputs.basketLow, inputs.basketHigh].filter((y) => y > 0 && y < top);
    s.draw(heights.map((y): Shape => ({ mark: 'ghost', d: segment(s.at(left, y), s.at(right, y)) })));
    // How far it sweeps between those heights, at those heights.
    const sides = passingOut + passingIn > 0 ? [Math.min(passingOut, right), Math.max(-passingIn, left)] : [];
    const from = (x: number): number => Math.max(inputs.basketLow, onGround(x));
    s.draw(sides.filter((x) => from(x) < high).map((x): Shape => ({ mark: 'need', d: segment(s.at(x, from(x)), s.at(x, high)) })));
    const [out, back] = sides;
    if (out === undefined || back === undefined) s.asks.push({ text: text('clear'), at: s.at(right, high), places: ['above-left', 'below-left'], gap: 3, leader: false, wrap: 16 });
    else {
      s.asks.push(
        { text: text('passesOut', { passingOut: said('m', passingOut, 'up') }), at: s.at(out, high), places: ['below-left', 'above-left', 'left'], gap: 5, leader: false, wrap: 13 },
        { text: text('passesBack', { passingIn: said('m', passingIn, 'up') }), at: s.at(back, high), places: ['below-right', 'above-right', 'right'], gap: 5, leader: false, wrap: 13 },
      );
    }
  }
  const thick = Math.max(s.px(looks.thick), 5);
  const body = (p: Pose, mark: 'limb' | 'piece') =>
    limb({ from: at(p.butt), to: at(p.tip), fromWidth: thick * 1.2, toWidth: inputs.shape === 'pole' ? thick * 0.4 : thick * 0.9, start: 'cut', end: 'cut', bare: true }, mark);
  for (const way of ['outward', 'inward'] as const) {
    const poses = scene.poses[way];
    s.draw({ mark: 'guide', d: polyline(poses.slice(0, -1).map((p) => at(p.tip))) });
    // On the hinge at several angles, where it lets go, halfway down, at the touch and lying.
    const drawn = (i: number): boolean => (i <= scene.letsGo ? i % 2 === 0 : i === scene.letsGo + 3 || i >= scene.touches);
    s.draw({ mark: 'ghost', d: poses.filter((_, i) => drawn(i)).map((p) => segment(at(p.butt), at(p.tip))).join('') });
  }
  const shown = moment ? scene.poses[moment.way][moment.at] : start;
  // What is left on the stem, then the limb itself.
  s.draw(limb({ from: s.at(-inputs.cutToStem, inputs.cutHeight - inputs.cutToStem * tan(Math.max(-45, Math.min(45, inputs.limbAngle)))), to: s.at(0, inputs.cutHeight), fromWidth: thick * 1.4, toWidth: thick * 1.2, start: 'butt', end: 'cut', bare: true }));
  if (shown) s.draw(body(shown, 'piece'));
  const worst = scene.poses.inward[scene.letsGo];
  if (worst && scene.poses.inward.length > scene.letsGo + 2) {
    const next = scene.poses.inward[scene.letsGo + 1]!;
    const middle = (p: Pose): Point => at([(p.butt[0] + p.tip[0]) / 2, (p.butt[1] + p.tip[1]) / 2]);
    s.draw(arrow(middle(worst), middle(next)), { mark: 'edgeline', d: segment(at(worst.butt), at(worst.tip)) });
    const letGo = said('deg', (Math.atan2(worst.tip[1] - worst.butt[1], worst.tip[0] - worst.butt[0]) * 180) / Math.PI);
    s.asks.push({ text: text('worst', { letGo }), at: at(worst.tip), places: ['right', 'below-right', 'above-right', 'below'], gap: 5, wrap: 16 });
  }
  const low = Math.max(s.at(0, Math.min(onGround(left), onGround(right), 0))[1]) + 22;
  const plumb = s.at(0, 0);
  const out = dimension([plumb[0], low], [s.at(scene.outward, 0)[0], low], 0);
  const back = dimension([s.at(-scene.inward, 0)[0], low], [plumb[0], low], 0);
  s.draw(out.shapes, back.shapes, { mark: 'guide', d: segment(s.at(0, inputs.cutHeight), [plumb[0], low + 4]) });
  s.keepOff.push(...along(at([0, inputs.cutHeight]), at(start?.tip ?? [0, 0]), thick), ...along([s.at(-scene.inward, 0)[0], low], [s.at(scene.outward, 0)[0], low]));
  s.asks.push(
    { text: text('outward', { outward: said('m', scene.outward, 'up') }), at: out.middle, places: ['below', 'above'], gap: 6, strong: true, leader: false, wrap: 24 },
    { text: text('inward', { inward: said('m', scene.inward, 'up') }), at: back.middle, places: ['below', 'above'], gap: 6, strong: true, leader: false, wrap: 24 },
    { text: said('m', inputs.cutHeight), at: s.at(0, inputs.cutHeight * 0.5), places: ['right', 'left'], gap: 4, leader: false },
  );
  const cut = at([0, inputs.cutHeight]);
  const tip = at(start?.tip ?? [inputs.limbLength, inputs.cutHeight]);
  const handles: Handle<Move>[] = moment ? [] : [
    {
      id: 'cutHeight', label: word(labels, 'moveCutHeight'), way: 'up', x: cut[0], y: cut[1], min: 1.2, max: 15, step: 0.1, value: inputs.cutHeight, says: said('m', inputs.cutHeight),
      at: (point) => onStep(unplace(s.frame, point)[1], 1.2, 15, 0.1),
      move: (value) => ({ cutHeight: value }),
    },
    {
      id: 'limbLength', label: word(labels, 'moveLength'), way: 'across', x: tip[0], y: tip[1], min: 0.3, max: 8, step: 0.1, value: inputs.limbLength, says: said('m', inputs.limbLength),
      at: (point) => {
        const [x, y] = unplace(s.frame, point);
        return onStep(Math.hypot(x, y - inputs.cutHeight), 0.3, 8, 0.1);
      },
      move: (value) => ({ limbLength: value }),
    },
  ];
  return { ...finish(s), handles };
};
