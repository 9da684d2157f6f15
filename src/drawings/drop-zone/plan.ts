/** The drop zone from above, the limb pointing right: the strip it lands in, turned by the swing, and how far square beside it you are clear. */
import { landingOutline, stripTo } from '#core/formulas/landing-outline.ts';
import { said } from '../kit/figures.ts';
import { inset } from '../kit/frame.ts';
import { along } from '../kit/labels.ts';
import { circle, polygon, segment } from '../kit/path.ts';
import { finish, sketch } from '../kit/picture.ts';
import type { Box, Placed } from '../kit/placed.ts';
import { say, word } from '../kit/say.ts';
import { dimension } from '../marks/dimension.ts';
import { limb, section } from '../marks/limb.ts';
import type { Inputs, Scene } from './scene.ts';

export const plan = (inputs: Inputs, scene: Scene, labels: Readonly<Record<string, string>>, box: Box): Placed<never> => {
  const { outward, inward, beside } = scene;
  const [out, back] = [outward + inputs.margin, inward + inputs.margin];
  const strip = stripTo(out, back, beside, inputs.swing);
  const { half } = strip;
  const around = landingOutline(strip);
  const tall = Math.max(...around.map(([, y]) => y));
  const s = sketch({ left: -back - 0.4, right: out + 0.4, bottom: -tall - 0.3, top: tall + 0.3 }, box, inset(10));
  const text = (name: string, figures = {}) => say(word(labels, name), figures);
  // Everywhere it may land, and the strip were it not to turn.
  s.draw(
    { mark: 'landing', d: polygon(around.map(([x, y]) => s.at(x, y))) },
    { mark: 'ghost', d: polygon([s.at(-back, -half), s.at(out, -half), s.at(out, half), s.at(-back, half)]) },
  );
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
