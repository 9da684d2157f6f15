/** The basket beside the cut, seen along the limb: the limb comes towards the eye, its fall path runs down the page. */
import { inset } from '../kit/frame.ts';
import { along } from '../kit/labels.ts';
import { circle, polygon, segment } from '../kit/path.ts';
import { finish, sketch, type Picture } from '../kit/picture.ts';
import type { Point } from '../kit/placed.ts';
import { same, word } from '../kit/say.ts';
import { arrow } from '../marks/arrow.ts';
import { less } from '../kit/vector.ts';
import { ground } from '../marks/ground.ts';
import { section } from '../marks/limb.ts';
import { person } from '../marks/person.ts';
import { platform, rails } from '../marks/platform.ts';
import { pole } from '../marks/pole.ts';

export type Face = 'along';

export const geometry: Picture<Face> = (view, box) => {
  const s = sketch({ left: -4.7, right: 4.3, bottom: -0.3, top: 7.3 }, box, inset(4));
  const say = (name: string) => same(word(view.labels, name));
  const p = (x: number, y: number) => s.at(x, y);
  const { scale } = s.frame;
  const cut = p(0.9, 6.0);
  s.draw({ mark: 'landing', d: polygon([p(0.55, 5.9), p(1.25, 5.9), p(2.3, 0), p(-0.5, 0)]) });
  s.draw(ground(p(-4.7, 0), p(4.3, 0)));
  // The machine, and whoever keeps its ground controls.
  const foot = p(-3.9, 0.95);
  s.draw({ mark: 'vessel', d: polygon([p(-4.6, 0.35), p(-3.0, 0.35), p(-3.0, 0.95), p(-4.6, 0.95)]) + circle(p(-4.3, 0.2), s.px(0.2)) + circle(p(-3.3, 0.2), s.px(0.2)) });
  const keeper = person(p(-2.3, 0), p(-2.85, 0.95), [-1, -0.2], scale * 0.95);
  s.draw(keeper.behind, keeper.before);
  // Beside the cut.
  const floor = p(-1.75, 4.55);
  const feet: Point = [floor[0] - s.px(0.05), floor[1]];
  const rear = p(-1.55, 5.6);
  const worker = person(feet, rear, less(cut, rear), scale);
  s.draw(platform(floor, foot, scale), worker.behind);
  s.draw({ mark: 'section', d: circle(cut, s.px(0.27)) }, { mark: 'bark', d: section(cut, s.px(0.27)) });
  s.draw(pole(rear, cut, s.px(0.36)), worker.before, rails(floor, scale));
  // Never under it.
  const x = 1.0;
  s.draw({ mark: 'ghost', d: polygon([p(x - 0.55, 2.9), p(x + 0.55, 2.9), p(x + 0.55, 1.9), p(x - 0.55, 1.9)]) });
  s.draw({ mark: 'cut', d: segment(p(x - 0.75, 3.1), p(x + 0.75, 1.7)) + segment(p(x - 0.75, 1.7), p(x + 0.75, 3.1)) });
  s.draw(arrow(p(0.9, 5.5), p(0.9, 4.5)));
  s.keepOff.push(...along(foot, p(-2.85, 3.2), 8), ...along(p(-2.85, 3.2), floor, 8), ...along(p(x - 0.6, 2.9), p(x + 0.6, 1.9), 10), ...along(rear, cut, 6), { x: p(-2.4, 6.6)[0], y: p(-2.4, 6.6)[1], width: s.px(1.3), height: s.px(2.1) }, { x: p(-2.8, 1.8)[0], y: p(-2.8, 1.8)[1], width: s.px(0.8), height: s.px(1.8) });
  s.asks.push(
    { text: say('limb'), at: cut, places: ['right', 'above-right'], gap: 14, wrap: 12, leader: false },
    { text: say('beside'), at: p(-2.0, 6.5), places: ['above', 'above-left', 'left'], gap: 6, wrap: 26, strong: true, leader: false },
    { text: say('never'), at: p(1.8, 2.4), places: ['right', 'above-right'], gap: 8, wrap: 10, strong: true, leader: false },
    { text: say('boom'), at: p(-2.85, 3.2), places: ['left', 'above-left'], gap: 6, wrap: 9 },
    { text: say('fall'), at: p(1.3, 4.3), places: ['right', 'above-right'], gap: 10, wrap: 12 },
    { text: say('controls'), at: p(-2.3, 1.75), places: ['above-right', 'above', 'right'], gap: 5, wrap: 12, leader: false },
  );
  return { ...finish(s), handles: [] };
};
