/** `stance` from above. The worker stands on the left; the limb points as they stand to it, bearings clock-wise from it. */
import { landingOutline, stripTo } from '#core/formulas/landing-outline.ts';
import type { Outcome } from '#core/kit/outcome.ts';
import { said } from '../kit/figures.ts';
import { inset, onStep, unplace, type Frame } from '../kit/frame.ts';
import { along } from '../kit/labels.ts';
import { around, circle, polygon, ringPart, segment } from '../kit/path.ts';
import { finish, sketch } from '../kit/picture.ts';
import type { Box, Handle, Placed, Point } from '../kit/placed.ts';
import { say, word, type Figures } from '../kit/say.ts';
import { dimension } from '../marks/dimension.ts';
import { limb, section } from '../marks/limb.ts';
import { personAbove } from '../marks/person.ts';
import { bar } from '../marks/pole.ts';
import { looks, nearestDrawn, sceneOf, type Inputs, type Place } from './scene.ts';

type Move = { standOff: number };
/** Half the opening of the part of the ring that is drawn, degrees: what lies further round has another bearing. */
const opening = 18;

/** The way the limb points, as seen with the worker on the left: down the page where they stand square beside it. */
export const limbWay = { beside: [0, -1], stemSide: [1, 0], tipSide: [-1, 0] } as const satisfies Record<Inputs['standing'], Point>;

/** All the ground that the drop zone marks, were it carried on; who does not stand square beside has a reach of another side. */
const outlineOf = ({ standing, landingReach, landingOut, landingBack, landingSwing }: Inputs) =>
  standing === 'beside' && landingReach > 0 && landingOut !== null && landingBack !== null
    ? landingOutline(stripTo(landingOut, landingBack, landingReach, landingSwing ?? 0)) : null;

export const plan = (inputs: Inputs, outcome: Outcome, place: Place, labels: Readonly<Record<string, string>>, box: Box, held?: Frame | null): Placed<Move> => {
  const scene = sceneOf(inputs, outcome, place);
  const half = Math.sin((opening * Math.PI) / 180) * (scene.left - 0.6);
  const outline = outlineOf(inputs);
  const [across, along1, along2] = outline ? [0, 1, 2].map((side) => Math.max(...outline.map(([x, y]) => [y, -x, x][side]!))) as [number, number, number] : [0, 0, 0];
  const extent = {
    left: -Math.max(scene.left, across + 0.2),
    right: outline ? across + 0.2 : inputs.standing === 'stemSide' ? 1.3 : 1,
    top: Math.max(half, looks.cutToStem + 0.25, along1 + 0.2),
    bottom: -Math.max(half, inputs.standing === 'beside' ? looks.limbDrawn : 0.4, along2 + 0.1) - 0.1,
  };
  const s = sketch(extent, box, inset(8, { top: 26, bottom: 34 }), held);
  const text = (name: string, figures?: Figures) => say(word(labels, name), figures);
  const { standOff, nearest, furthest } = scene;
  const cut = s.at(0, 0);
  const inBand = nearest !== null && furthest !== null && furthest >= nearest;
  const [dx, dy] = limbWay[inputs.standing];
  if (outline) s.draw({ mark: 'landing', d: polygon(outline.map(([x, y]) => s.at(dx * x - dy * y, dy * x + dx * y))) });
  else if (inputs.landingReach > 0) s.draw({ mark: 'landing', d: ringPart(cut, 0, s.px(inputs.landingReach), 180 - opening, 180 + opening) });
  if (inBand) s.draw({ mark: 'room', d: ringPart(cut, s.px(nearest), s.px(furthest), 180 - opening, 180 + opening) });

  const thick = Math.max(s.px(looks.limb * 2), 7);
  const stemAt: Point = [-dx * looks.cutToStem, -dy * looks.cutToStem];
  s.draw(limb({ from: s.at(...stemAt), to: s.at(dx * looks.limbDrawn, dy * looks.limbDrawn), fromWidth: thick * 1.1, toWidth: thick * 0.85, start: 'butt' }));
  const stemRadius = Math.max(s.px(looks.stem), 8);
  s.draw({ mark: 'stem', d: circle(s.at(...stemAt), stemRadius) }, { mark: 'bark', d: section(s.at(...stemAt), stemRadius) });

  const feet = s.at(-standOff, 0);
  const short = scene.poleOut < scene.toCut ? scene.poleOut / scene.toCut : 1;
  const end = s.at(-standOff * (1 - short), 0);
  const barLength = Math.max(s.px(0.25 * Math.cos((scene.angle * Math.PI) / 180)), 9);
  s.draw(personAbove(feet, feet, [1, 0], s.frame.scale), { mark: 'pole', d: segment(feet, [end[0] - barLength / 2, end[1]]) }, bar([end[0] - barLength / 2, end[1]], [1, 0], barLength, 5));
  if (short < 1) s.draw({ mark: 'guide', d: segment(end, cut) });

  const low = s.at(0, extent.bottom)[1] + 8;
  const off = dimension([feet[0], low], [cut[0], low], 0);
  s.draw(off.shapes, { mark: 'guide', d: segment(feet, [feet[0], low + 4]) + segment(cut, [cut[0], low + 4]) });
  s.keepOff.push(around([feet], s.px(0.35)), around([s.at(...stemAt)], stemRadius), ...along(feet, cut, 6), ...along(s.at(...stemAt), s.at(dx * looks.limbDrawn, dy * looks.limbDrawn), thick), ...along([feet[0], low], [cut[0], low]));

  s.asks.push({ text: text('standOff', { standOff: said('m', standOff) }), at: off.middle, places: ['below', 'above'], gap: 4, strong: true, leader: false });
  if (inBand) {
    const top = (r: number): Point => s.at(-r * Math.cos((opening * Math.PI) / 180), r * Math.sin((opening * Math.PI) / 180));
    s.asks.push({ text: text('stand', { nearest: said('m', nearest, 'up'), furthest: said('m', furthest, 'down') }), at: top((nearest + furthest) / 2), places: ['above', 'above-left', 'left'], gap: 5, wrap: 40 });
  }
  if (inputs.landingReach > 0) s.asks.push({ text: text('landing', { landingReach: said('m', inputs.landingReach, 'up') }), at: s.at(-inputs.landingReach * 0.55, inputs.landingReach * 0.22), places: ['above', 'above-right'], gap: 4, wrap: 24 });
  if (scene.where !== 'fits') s.asks.push({ text: text(scene.where), at: feet, places: ['above', 'left', 'above-left'], gap: s.px(0.35) + 4, leader: false, strong: true, wrap: 14 });
  s.asks.push(
    { text: text('stem'), at: s.at(...stemAt), places: ['right', 'above-right', 'below-right'], gap: stemRadius + 4, leader: false },
    { text: text('limb'), at: s.at(dx * looks.limbDrawn * 0.75, dy * looks.limbDrawn * 0.75), places: ['right', 'below', 'above'], gap: thick, leader: false },
  );
  const handles: Handle<Move>[] = [
    {
      id: 'standOff', label: word(labels, 'moveStandOff'), way: 'across', x: feet[0], y: low, area: around([feet], 24),
      min: nearestDrawn, max: scene.furthestDrawn, value: standOff, step: 0.1, says: said('m', standOff),
      at: (point) => onStep(-unplace(s.frame, point)[0], nearestDrawn, scene.furthestDrawn, 0.1),
      move: (value) => ({ standOff: value }),
    },
  ];
  return { ...finish(s), handles };
};
