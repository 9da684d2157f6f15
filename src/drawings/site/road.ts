/** Tree work beside a road, from above: what the people who are licensed for it set out before anyone saws. */
import { inset } from '../kit/frame.ts';
import { circle, polygon, segment } from '../kit/path.ts';
import { finish, sketch } from '../kit/picture.ts';
import type { Box, Placed, Point } from '../kit/placed.ts';
import { arrow } from '../marks/arrow.ts';
import { job, someone, told, vehicle, type Labels } from './scene.ts';

/** Where the cones stand: slanting across the lane, then along it. */
const cones: readonly Point[] = [[1.6, 5.0], [2.3, 4.55], [3.0, 4.1], [3.7, 3.65], [4.6, 3.4], [5.6, 3.4], [6.6, 3.4], [7.6, 3.4], [8.6, 3.4], [9.2, 4.2], [9.6, 5.0]];

export const road = (labels: Labels, box: Box): Placed => {
  const s = sketch({ left: 0, right: 10, bottom: 0.6, top: 7.6 }, box, inset(4));
  const say = told(labels);
  s.draw({ mark: 'ground', d: segment(s.at(0, 5.25), s.at(10, 5.25)) + segment(s.at(0, 1.2), s.at(10, 1.2)) });
  s.draw({ mark: 'limit', d: segment(s.at(0, 3.2), s.at(10, 3.2)) });
  job(s, [5.5, 6.1], [6.25, 4.35]);
  for (const cone of cones) s.draw({ mark: 'tool', d: circle(s.at(...cone), 4) }, { mark: 'over', d: circle(s.at(...cone), 1.7) });
  s.draw({ mark: 'warn', d: polygon([s.at(0.25, 5.5), s.at(0.85, 5.5), s.at(0.55, 6.05)]) });
  vehicle(s, 3.9, 4.1, 1.3, 0.75);
  someone(s, [3.6, 6.35], [1, 0]);
  s.draw(arrow(s.at(0.4, 2.1), s.at(1.9, 2.1)), arrow(s.at(9.5, 2.1), s.at(8.2, 2.1)));
  s.asks.push(
    { text: say('signs'), at: s.at(0.55, 6.05), places: ['above-right', 'above'], gap: 5, wrap: 12, leader: false },
    { text: say('taper'), at: s.at(2.3, 4.4), places: ['below-left', 'left', 'below'], gap: 8, wrap: 10 },
    { text: say('closed'), at: s.at(8.1, 4.55), places: ['on'], wrap: 12, strong: true, leader: false },
    { text: say('open'), at: s.at(5, 2.1), places: ['on'], wrap: 26, leader: false },
    { text: say('spotter'), at: s.at(3.6, 6.5), places: ['above', 'left'], gap: 14, wrap: 12, leader: false },
    { text: say('tree'), at: s.at(5.5, 6.5), places: ['above', 'above-right'], gap: 6, wrap: 12, leader: false },
  );
  return { ...finish(s), handles: [] };
};
