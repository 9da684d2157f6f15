/** The ground round a wire that lies on it, from above: rings of falling voltage, feet held close and feet apart. */
import { circle, ellipse, segment } from '../kit/path.ts';
import { inset } from '../kit/frame.ts';
import { finish, sketch, type Picture } from '../kit/picture.ts';
import { same, word } from '../kit/say.ts';
import { line } from '../marks/line.ts';

export type Face = 'above';

/** Radii of the rings and places of the feet, in m; only how the picture looks hangs on them. */
const rings = [0.7, 1.4, 2.1, 2.8, 3.5];
const foot = { long: 0.15, wide: 0.06 };

export const geometry: Picture<Face> = (view, box) => {
  const s = sketch({ left: -4.2, right: 4.2, bottom: -2.6, top: 3 }, box, inset(6));
  const text = (name: string) => same(word(view.labels, name));
  const down = s.at(0, 0);
  for (const radius of rings) s.draw({ mark: 'guide', d: circle(down, s.px(radius)) });
  s.draw(line(s.at(-4.1, 2.7), down, s.px(0.4)));
  const sole = (x: number, y: number, turn: number) => ellipse(s.at(x, y), s.px(foot.long), s.px(foot.wide), turn);
  // Close together on one ring; apart, one on each of two rings.
  s.draw({ mark: 'person', d: sole(2.1, -1.28, 60) + sole(2.24, -1.36, 60) });
  s.draw({ mark: 'person', d: sole(1.3, 0.5, 20) + sole(2, 0.78, 20) }, { mark: 'limit', d: segment(s.at(1.3, 0.5), s.at(2, 0.78)) });
  s.keepOff.push(
    { x: s.at(1, 1)[0], y: s.at(1, 1)[1], width: s.px(1.3), height: s.px(0.8) },
    { x: s.at(1.9, -1)[0], y: s.at(1.9, -1)[1], width: s.px(0.6), height: s.px(0.6) },
  );
  s.asks.push(
    { text: text('close'), at: s.at(2.2, -1.45), places: ['below', 'below-right', 'right'], gap: 10, wrap: 22, strong: true },
    { text: text('apart'), at: s.at(1.8, 0.9), places: ['above-right', 'above', 'right'], gap: 12, wrap: 18, strong: true },
    { text: text('wire'), at: s.at(-2.6, 1.9), places: ['below-left', 'left', 'below'], gap: 8, wrap: 16 },
    { text: text('rings'), at: s.at(-2, -0.7), places: ['on', 'below', 'left'], wrap: 18, leader: false },
  );
  return { ...finish(s), handles: [] };
};
