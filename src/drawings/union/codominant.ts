/**
 * Two stems of one thickness from one fork, from beside: the bark ridge runs down between them, and the stem removed is cut
 * from outside the top of the ridge to its own far side, level with the ridge's foot. Not to scale.
 */
import { along } from '../kit/labels.ts';
import { pen, segment } from '../kit/path.ts';
import type { Sketch } from '../kit/picture.ts';
import type { Point } from '../kit/placed.ts';
import { same, word } from '../kit/say.ts';
import { add, between, less, times, unit } from '../kit/vector.ts';
import { limb, onLimb, type Limb } from '../marks/limb.ts';
import { ridge } from '../marks/ridge.ts';

/** In stem widths, origin at the top of the ridge; the foot of the ridge straight under it. */
const foot: Point = [0, -0.75];

export const codominant = (s: Sketch, labels: Readonly<Record<string, string>>) => {
  const stemOf = (side: 1 | -1): Limb => ({
    from: s.at(side * 0.36, -0.32), to: s.at(side * 0.85, 0.66), fromWidth: s.px(0.78), toWidth: s.px(0.66), start: 'butt', end: 'on', bare: true,
  });
  const [stays, goes] = [stemOf(-1), stemOf(1)];
  // The stem under the fork, its edges running into those of both.
  const [left, right] = [onLimb(stays, 0.12, 1), onLimb(goes, 0.12, -1)];
  const trunk = pen();
  trunk.moveTo(...s.at(-0.62, -1.5));
  trunk.bezierCurveTo(...s.at(-0.64, -1.0), ...s.at(-0.72, -0.6), ...left);
  trunk.lineTo(...onLimb(stays, 0.12, -1));
  trunk.lineTo(...s.at(0, 0.02));
  trunk.lineTo(...onLimb(goes, 0.12, 1));
  trunk.lineTo(...right);
  trunk.bezierCurveTo(...s.at(0.72, -0.6), ...s.at(0.64, -1.0), ...s.at(0.62, -1.5));
  trunk.bezierCurveTo(...s.at(0.2, -1.44), ...s.at(-0.2, -1.56), ...s.at(-0.62, -1.5));
  trunk.closePath();
  s.draw(limb(stays, 'stem'), limb(goes, 'stem'));
  s.draw({ mark: 'gap', d: trunk.toString() });
  const edge = pen();
  edge.moveTo(...left);
  edge.bezierCurveTo(...s.at(-0.72, -0.6), ...s.at(-0.64, -1.0), ...s.at(-0.62, -1.5));
  edge.bezierCurveTo(...s.at(-0.2, -1.56), ...s.at(0.2, -1.44), ...s.at(0.62, -1.5));
  edge.bezierCurveTo(...s.at(0.64, -1.0), ...s.at(0.72, -0.6), ...right);
  edge.moveTo(...onLimb(stays, 0.12, -1));
  edge.lineTo(...s.at(0, 0.02));
  edge.lineTo(...onLimb(goes, 0.12, 1));
  s.draw({ mark: 'edgeline', d: edge.toString() });

  // The cut: from just outside the ridge to the far side of the stem that goes, at the height of the ridge's foot.
  const top = s.at(0.07, 0.09);
  const end = s.at(0.695, foot[1]);
  const piece = pen();
  const along1 = [0.12, 1].map((t) => onLimb(goes, t, 1)) as [Point, Point];
  const along2 = [1, 0.12].map((t) => onLimb(goes, t, -1)) as [Point, Point];
  const out = times(unit([along2[0][1] - along1[1][1], along1[1][0] - along2[0][0]]), 8);
  piece.moveTo(...top);
  piece.lineTo(...along1[1]);
  piece.bezierCurveTo(...add(between(along1[1], along2[0], 0.3), out), ...less(between(along1[1], along2[0], 0.65), out), ...along2[0]);
  piece.lineTo(...along2[1]);
  piece.lineTo(...end);
  piece.closePath();
  s.draw({ mark: 'piece', d: piece.toString() }, ridge(s.at(0, 0), s.at(...foot)));
  const more = times(unit(less(end, top)), 11);
  const [from, to] = [less(top, more), add(end, more)];
  s.draw({ mark: 'guide', d: segment(s.at(-0.25, foot[1]), s.at(1.05, foot[1])) }, { mark: 'cut', d: segment(from, to) });
  const say = (name: string) => same(word(labels, name));
  s.keepOff.push(...along(from, to), ...along(s.at(0, 0), s.at(...foot)));
  s.asks.push(
    { text: say('stem-ridge'), at: s.at(0, -0.4), places: ['left', 'below-left'], gap: 12, wrap: 11 },
    { text: say('level'), at: s.at(0.9, foot[1]), places: ['below', 'below-right', 'right'], gap: 6, wrap: 18 },
    { text: say('cut'), at: to, places: ['right', 'above-right'], gap: 8, strong: true, wrap: 16 },
    { text: say('goes'), at: onLimb(goes, 0.6), places: ['on'], leader: false },
    { text: say('stays'), at: onLimb(stays, 0.6), places: ['on'], leader: false },
  );
};
