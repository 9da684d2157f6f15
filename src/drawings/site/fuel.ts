/** Filling and starting on a dry day, from above: bare ground, a walk between, something to put a fire out, the wind. */
import { inset } from '../kit/frame.ts';
import { along } from '../kit/labels.ts';
import { circle, ellipse, polygon, rod } from '../kit/path.ts';
import { finish, sketch } from '../kit/picture.ts';
import type { Box, Placed } from '../kit/placed.ts';
import { arrow } from '../marks/arrow.ts';
import { dimension } from '../marks/dimension.ts';
import { someone, told, type Labels } from './scene.ts';

export const fuel = (labels: Labels, box: Box): Placed => {
  const s = sketch({ left: 0, right: 10, bottom: 0, top: 5.4 }, box, inset(4));
  const say = told(labels);
  s.draw({ mark: 'piece', d: polygon([s.at(0.05, 4.3), s.at(9.95, 4.3), s.at(9.95, 5.3), s.at(0.05, 5.3)]) });
  s.draw({ mark: 'ghost', d: ellipse(s.at(2, 2.6), s.px(1.7), s.px(1.25)) });
  s.draw({ mark: 'vessel', d: polygon([s.at(1.5, 2.4), s.at(2.1, 2.4), s.at(2.1, 3.0), s.at(1.5, 3.0)]) + circle(s.at(1.95, 2.85), 3) });
  s.draw({ mark: 'person', d: rod(s.at(2.9, 2.95), s.at(2.9, 2.5), 6, 6) });
  const start = s.at(7.4, 2.6);
  someone(s, [7.4, 2.6], [0, -1]);
  const apart = dimension(s.at(2, 1.15), [start[0], s.at(2, 1.15)[1]], 0);
  s.draw(apart.shapes, { mark: 'guide', d: `M${s.at(7.4, 2.2).join(',')}L${s.at(7.4, 1).join(',')}` });
  s.keepOff.push(...along(s.at(2, 1.15), s.at(7.4, 1.15)), { x: s.at(1.4, 3)[0], y: s.at(1.4, 3.1)[1], width: s.px(1.8), height: s.px(0.9) });
  const blow = [s.at(9.3, 3.6), s.at(9.3, 1.9)] as const;
  s.draw(arrow(...blow));
  s.keepOff.push(...along(...blow, 8));
  s.asks.push(
    { text: say('grass'), at: s.at(5, 4.8), places: ['on'], wrap: 30, strong: true, leader: false },
    { text: say('apart'), at: apart.middle, places: ['below'], gap: 4, wrap: 40, strong: true, leader: false },
    { text: say('fill'), at: s.at(1.8, 2.4), places: ['below', 'left'], gap: 4, wrap: 20, leader: false },
    { text: say('out'), at: s.at(3.05, 2.75), places: ['right', 'above-right'], gap: 10, wrap: 14 },
    { text: say('start'), at: s.at(7.4, 2.75), places: ['above', 'left'], gap: 14, wrap: 16, leader: false },
    { text: say('wind'), at: blow[1], places: ['below', 'left'], gap: 4, leader: false },
  );
  return { ...finish(s), handles: [] };
};
