/** The drop zone from above, the limb pointing right: the strip it lands in, turned by the swing, and how far square beside it you are clear. */
import { cos, sin } from '#core/formulas/angles.ts';
import { said } from '../kit/figures.ts';
import { inset } from '../kit/frame.ts';
import { along } from '../kit/labels.ts';
import { circle, polygon, segment } from '../kit/path.ts';
import { finish, sketch } from '../kit/picture.ts';
import type { Box, Placed, Point } from '../kit/placed.ts';
import { say, word } from '../kit/say.ts';
import { dimension } from '../marks/dimension.ts';
import { limb, section } from '../marks/limb.ts';
import type { Inputs, Scene } from './scene.ts';

export const plan = (inputs: Inputs, scene: Scene, labels: Readonly<Record<string, string>>, box: Box): Placed<never> => {
  const { outward, inward, beside } = scene;
  const half = inputs.spread / 2 + inputs.margin;
  const [out, back] = [outward + inputs.margin, inward + inputs.margin];
  const turn = (x: number, y: number, angle: number): [number, number] => [x * cos(angle) - y * sin(angle), x * sin(angle) + y * cos(angle)];
  const tall = Math.max(beside, half * cos(inputs.swing) + Math.max(out, back) * sin(inputs.swing));
  const s = sketch({ left: -back - 0.4, right: out + 0.4, bottom: -tall - 0.3, top: tall + 0.3 }, box, inset(10));
  const text = (name: string, figures = {}) => say(word(labels, name), figures);
  const strip = (angle: number): Point[] => ([[-back, -half], [out, -half], [out, half], [-back, half]] as const).map(([x, y]) => s.at(...turn(x, y, angle)));
  s.draw({ mark: 'ghost', d: polygon(strip(inputs.swing)) + polygon(strip(-inputs.swing)) }, { mark: 'landing', d: polygon(strip(0)) });
  const stemAt = s.at(-inputs.cutToStem, 0);
  const radius = Math.max(s.px(0.18), 6);
  s.draw(limb({ from: stemAt, to: s.at(inputs.limbLength, 0), fromWidth: 7, toWidth: 4, start: 'butt', bare: true }), { mark: 'stem', d: circle(stemAt, radius) }, { mark: 'bark', d: section(stemAt, radius) });
  const you = s.at(0, -beside);
  s.draw({ mark: 'stand', d: segment([you[0] - 14, you[1]], [you[0] + 14, you[1]]) });
  const off = dimension(s.at(0, 0), you, 0);
  s.draw(off.shapes);
  s.keepOff.push(...along(s.at(-inputs.cutToStem, 0), s.at(inputs.limbLength, 0), 8), ...along(s.at(0, 0), you, 6));
  s.asks.push(
    { text: text('beside', { beside: said('m', beside, 'up') }), at: off.middle, places: ['right', 'left'], gap: 6, strong: true, leader: false, wrap: 18 },
    { text: text('stemSide'), at: s.at(-back, 0), places: ['right', 'above-right'], gap: 6, leader: false, wrap: 12 },
    { text: text('tipSide'), at: s.at(out, 0), places: ['left', 'above-left'], gap: 6, leader: false, wrap: 12 },
    { text: text('keepOut', { keepOut: said('m', scene.keepOut, 'up') }), at: [box.width / 2, 14], places: ['on', 'below'], gap: 2, leader: false, wrap: 44 },
  );
  return { ...finish(s), handles: [] };
};
