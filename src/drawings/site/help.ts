/** When somebody is hurt, from above: the saw is off and nothing hangs, one stays, one calls, one meets the ambulance. */
import { inset } from '../kit/frame.ts';
import { along } from '../kit/labels.ts';
import { circle, ellipse, rod, segment } from '../kit/path.ts';
import { finish, sketch } from '../kit/picture.ts';
import type { Box, Placed } from '../kit/placed.ts';
import { arrow } from '../marks/arrow.ts';
import { section } from '../marks/limb.ts';
import { someone, told, vehicle, type Labels } from './scene.ts';

export const help = (labels: Labels, box: Box): Placed => {
  const s = sketch({ left: 0, right: 10, bottom: 0, top: 6.2 }, box, inset(4));
  const say = told(labels);
  s.draw({ mark: 'ground', d: segment(s.at(2.6, 0), s.at(2.6, 1.6)) + segment(s.at(2.6, 2.9), s.at(2.6, 6.2)) });
  vehicle(s, 0.2, 1.8, 1.9, 0.95);
  someone(s, [3.2, 3.25], [-1, -0.2]);
  const way = [s.at(3.2, 2.2), s.at(5.4, 2.2)] as const;
  s.draw(arrow(...way));
  s.keepOff.push(...along(...way, 6));
  // Somebody lying on the ground, and the one who stays.
  const [head, hip, foot] = [s.at(6.05, 2.25), s.at(6.75, 2.25), s.at(7.7, 2.2)];
  s.draw({ mark: 'person', d: rod(head, hip, 6, 7) + rod(hip, foot, 6, 4) }, { mark: 'over', d: circle([head[0] - 9, head[1]], 7) });
  s.keepOff.push({ x: head[0] - 16, y: head[1] - 9, width: foot[0] - head[0] + 22, height: 18 });
  someone(s, [6.7, 1.35], [0, 1]);
  someone(s, [8.7, 1.3], [-0.3, 0.9]);
  s.draw({ mark: 'landing', d: ellipse(s.at(7.9, 4.65), s.px(1.6), s.px(0.95)) });
  s.draw({ mark: 'stem', d: circle(s.at(6.4, 4.65), 15) }, { mark: 'bark', d: section(s.at(6.4, 4.65), 15) });
  s.keepOff.push({ x: s.at(6.4, 4.65)[0] - 16, y: s.at(6.4, 4.65)[1] - 16, width: 32, height: 32 });
  s.asks.push(
    { text: say('gate'), at: s.at(3.2, 3.3), places: ['right'], gap: 17, wrap: 20, strong: true, leader: false },
    { text: say('stays'), at: s.at(6.7, 1.2), places: ['below', 'left'], gap: 13, wrap: 20, strong: true, leader: false },
    { text: say('calls'), at: s.at(8.7, 1.2), places: ['below', 'above'], gap: 13, wrap: 12, strong: true, leader: false },
    { text: say('wood'), at: s.at(7.95, 4.65), places: ['on'], wrap: 15, leader: false },
    { text: say('way'), at: s.at(4.3, 2.2), places: ['below'], gap: 7, wrap: 16, leader: false },
    { text: say('ambulance'), at: s.at(1.15, 1.8), places: ['below'], gap: 5, wrap: 14, leader: false },
  );
  return { ...finish(s), handles: [] };
};
