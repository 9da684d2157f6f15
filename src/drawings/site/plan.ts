/** The site from above: the drop zone, the ground everyone else keeps out of, the ways out, who stands where. */
import { inset } from '../kit/frame.ts';
import { along } from '../kit/labels.ts';
import { circle, segment } from '../kit/path.ts';
import { finish, sketch } from '../kit/picture.ts';
import type { Box, Placed } from '../kit/placed.ts';
import { arrow } from '../marks/arrow.ts';
import { job, someone, told, vehicle, type Labels } from './scene.ts';

/** `crew` names the people, `plan` the ground. */
export const plan = (crew: boolean, labels: Labels, box: Box): Placed => {
  const s = sketch({ left: 0, right: 10, bottom: 0, top: 7.4 }, box, inset(4));
  const say = told(labels);
  const ring = s.at(6.65, 4.2);
  s.draw({ mark: 'ground', d: segment(s.at(0, 0.1), s.at(10, 0.1)) + segment(s.at(0, 0.85), s.at(10, 0.85)) });
  s.draw({ mark: 'limit', d: circle(ring, s.px(3.1)) });
  vehicle(s, 0.35, 5.9, 2.2, 1.05);
  job(s, [5.9, 4.2], [6.65, 2.45]);
  const out = [arrow(s.at(6.25, 2.2), s.at(5.15, 1.45)), arrow(s.at(7.05, 2.2), s.at(8.15, 1.45))];
  s.draw(...out);
  s.keepOff.push(...along(s.at(6.25, 2.2), s.at(5.15, 1.45)), ...along(s.at(7.05, 2.2), s.at(8.15, 1.45)));
  someone(s, [4.35, 2.9], [0.93, -0.2]);
  someone(s, [1.3, 0.48], [1, 0]);
  if (crew) {
    someone(s, [2.1, 4.6], [1, 0]);
    someone(s, [3.15, 6.6], [0.8, -0.6]);
    s.asks.push(
      { text: say('operator'), at: s.at(6.9, 2.45), places: ['right', 'below-right'], gap: 12, wrap: 10, strong: true, leader: false },
      { text: say('spotter'), at: s.at(4.35, 2.9), places: ['left', 'below-left'], gap: 16, wrap: 14, strong: true, leader: false },
      { text: say('ground'), at: s.at(2.1, 4.6), places: ['left', 'below'], gap: 15, wrap: 8, strong: true, leader: false },
      { text: say('leader'), at: s.at(3.15, 6.6), places: ['below'], gap: 15, wrap: 14, strong: true, leader: false },
      { text: say('public'), at: s.at(1.3, 0.48), places: ['right'], gap: 15, wrap: 30, leader: false },
    );
  } else {
    s.draw(arrow(s.at(0.75, 2.3), s.at(0.75, 3.7)));
    s.asks.push(
      { text: say('drop'), at: s.at(7.7, 4.95), places: ['above'], gap: 10, wrap: 14, strong: true, leader: false },
      { text: say('keepOut'), at: s.at(3.65, 4.5), places: ['left'], gap: 6, wrap: 13, strong: true, leader: false },
      { text: say('ways'), at: s.at(8.15, 1.45), places: ['above-right', 'right', 'above'], gap: 5, wrap: 9 },
      { text: say('watches'), at: s.at(4.35, 2.9), places: ['left', 'above-left'], gap: 16, wrap: 12, leader: false },
      { text: say('path'), at: s.at(1.3, 0.48), places: ['right'], gap: 15, wrap: 34, leader: false },
      { text: say('wind'), at: s.at(0.75, 3), places: ['right'], gap: 7, leader: false },
      { text: say('vehicle'), at: s.at(1.45, 5.9), places: ['below'], gap: 5, wrap: 12, leader: false },
    );
  }
  s.keepOff.push(...along(s.at(0, 0.85), s.at(10, 0.85)));
  return { ...finish(s), handles: [] };
};
