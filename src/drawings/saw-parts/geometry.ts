/** Parts of the saw to look at: the bar and its chain (`chain`), the two hoses of a hydraulic saw (`hoses`). Not to scale. */
import { inset } from '../kit/frame.ts';
import { along } from '../kit/labels.ts';
import { circle, pen, polygon, segment, smooth } from '../kit/path.ts';
import { finish, sketch, type Picture } from '../kit/picture.ts';
import type { Point } from '../kit/placed.ts';
import { same, word } from '../kit/say.ts';
import { arrow } from '../marks/arrow.ts';
import { bar } from '../marks/pole.ts';

export type Face = 'chain' | 'hoses';

const chain: Picture<Face> = (view, box) => {
  const s = sketch({ left: 0, right: 10, bottom: 0, top: 5.6 }, box, inset(4));
  const say = (name: string) => same(word(view.labels, name));
  const p = (x: number, y: number) => s.at(x, y);
  s.draw({ mark: 'head', d: polygon([p(0.1, 1.7), p(2.2, 1.9), p(2.2, 3.9), p(0.1, 4.1)]) });
  // The bar, and the chain round it: drawn a little off it so that it can be seen.
  const blade = pen();
  blade.moveTo(...p(2.2, 3.5));
  blade.lineTo(...p(8.3, 3.4));
  blade.bezierCurveTo(...p(9.3, 3.3), ...p(9.3, 2.3), ...p(8.3, 2.2));
  blade.lineTo(...p(2.2, 2.1));
  blade.closePath();
  s.draw({ mark: 'head', d: blade.toString() }, { mark: 'guide', d: segment(p(2.2, 3.36), p(8.2, 3.26)) + segment(p(2.2, 2.24), p(8.2, 2.34)) });
  s.draw({ mark: 'need', d: segment(p(2.2, 3.66), p(8.3, 3.55)) + smooth([p(8.3, 3.55), p(9.2, 2.8), p(8.3, 2.05)]) + smooth([p(8.3, 2.05), p(5.3, 1.96), p(2.2, 1.95)]) });
  s.draw({ mark: 'over', d: circle(p(2.7, 3.0), 4) }, { mark: 'over', d: circle(p(1.1, 2.85), s.px(0.5)) }, { mark: 'bark', d: circle(p(1.1, 2.85), s.px(0.22)) });
  s.draw({ mark: 'over', d: circle(p(0.9, 3.8), 4) });
  s.draw({ mark: 'squeezed', d: polygon([p(8.35, 3.4), p(9.05, 2.95), p(8.35, 2.8)]) });
  s.keepOff.push(...along(p(2.2, 2.8), p(9, 2.8), 56), ...along(p(2.2, 1.8), p(8.3, 1.8), 12), ...along(p(0.1, 2.8), p(2.2, 2.8), 76));
  const ask = (name: string, at: Point, places: readonly ('above' | 'below' | 'left' | 'right' | 'above-right' | 'below-right')[], wrap = 16) => s.asks.push({ text: say(name), at, places, gap: 16, wrap });
  ask('cutters', p(4.9, 3.62), ['above']);
  ask('lies', p(5.3, 1.96), ['below'], 22);
  ask('oil', p(2.7, 3.1), ['above'], 12);
  ask('nose', p(8.8, 3.1), ['above', 'above-right'], 14);
  ask('cover', p(1.0, 2.5), ['below'], 14);
  ask('rail', p(7.6, 2.25), ['below', 'below-right'], 14);
  return { ...finish(s), handles: [] };
};

const hoses: Picture<Face> = (view, box) => {
  const s = sketch({ left: 0, right: 10, bottom: 0, top: 5.6 }, box, inset(4));
  const say = (name: string) => same(word(view.labels, name));
  const p = (x: number, y: number) => s.at(x, y);
  s.draw({ mark: 'vessel', d: polygon([p(0.2, 1.6), p(2.2, 1.6), p(2.2, 4.0), p(0.2, 4.0)]) + segment(p(2.2, 2.9), p(0.2, 2.9)) });
  const out = [p(2.2, 3.6), p(3.4, 3.9), p(4.6, 3.3), p(5.8, 3.5)];
  const back = [p(5.8, 2.7), p(4.6, 2.4), p(3.4, 2.0), p(2.2, 2.2)];
  s.draw({ mark: 'pole', d: smooth(out) }, { mark: 'need', d: smooth(back) });
  s.draw(arrow(p(3.1, 3.25), p(4.1, 3.15)), arrow(p(4.2, 2.75), p(3.2, 2.5)));
  s.draw({ mark: 'head', d: polygon([p(5.8, 2.5), p(6.7, 2.7), p(6.7, 3.5), p(5.8, 3.7)]) }, { mark: 'pole', d: segment(p(6.7, 3.1), p(8.1, 3.1)) }, bar(p(8.1, 3.1), [1, 0], s.px(1.6), 12));
  for (const [x, y] of [[5.8, 3.5], [5.8, 2.7], [2.2, 3.6], [2.2, 2.2]] as const) s.draw({ mark: 'fitting', d: circle(p(x, y), 5) });
  s.keepOff.push(...along(p(2.2, 3.6), p(5.8, 3.5), 14), ...along(p(2.2, 2.2), p(5.8, 2.6), 14), ...along(p(5.8, 3.1), p(9.7, 3.1), 40));
  s.asks.push(
    { text: say('pump'), at: p(1.2, 3.45), places: ['on'], wrap: 8, leader: false },
    { text: say('tank'), at: p(1.2, 2.25), places: ['on'], wrap: 8, leader: false },
    { text: say('pressure'), at: p(4.0, 3.65), places: ['above'], gap: 18, wrap: 16, strong: true, leader: false },
    { text: say('return'), at: p(4.0, 2.2), places: ['below'], gap: 20, wrap: 16, strong: true, leader: false },
    { text: say('joint'), at: p(5.85, 3.6), places: ['above', 'above-right'], gap: 24, wrap: 22 },
    { text: say('leak'), at: p(4.7, 2.4), places: ['below-right'], gap: 26, wrap: 24 },
  );
  return { ...finish(s), handles: [] };
};

export const geometry: Picture<Face> = (view, box) => (view.face === 'chain' ? chain(view, box) : hoses(view, box));
