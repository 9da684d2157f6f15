/** The ground round a wire that lies on it, from above: rings of falling voltage, feet held close and feet apart. */
import { circle, ellipse, segment } from '../kit/path.ts';
import { inset } from '../kit/frame.ts';
import { finish, sketch, type Picture } from '../kit/picture.ts';
import { same, word } from '../kit/say.ts';
import { line } from '../marks/line.ts';

export type Face = 'above';

/** Radii of the rings and places of the feet, in m; only how the picture looks hangs on them. */
const rings = [0.65, 1.3, 1.95, 2.6];
const foot = { long: 0.24, wide: 0.1 };

export const geometry: Picture<Face> = (view, box) => {
  const s = sketch({ left: -4.3, right: 4.3, bottom: -2.65, top: 2.65 }, box, inset(6));
  const text = (name: string) => same(word(view.labels, name));
  const down = s.at(0, 0);
  for (const radius of rings) s.draw({ mark: 'guide', d: circle(down, s.px(radius)) });
  s.draw(line(s.at(-4.1, 2.4), down, s.px(0.4)));
  const sole = (x: number, y: number, turn: number) => ellipse(s.at(x, y), s.px(foot.long), s.px(foot.wide), turn);
  // Close together on one ring; apart, one on each of two rings.
  s.draw({ mark: 'person', d: sole(1.72, -0.92, 62) + sole(1.92, -1.02, 62) });
  s.draw({ mark: 'person', d: sole(1.21, 0.47, 21) + sole(1.82, 0.7, 21) }, { mark: 'limit', d: segment(s.at(1.21, 0.47), s.at(1.82, 0.7)) });
  s.keepOff.push(
    { x: s.at(0.9, 1)[0], y: s.at(0.9, 1)[1], width: s.px(1.3), height: s.px(0.8) },
    { x: s.at(1.4, -0.6)[0], y: s.at(1.4, -0.6)[1], width: s.px(0.8), height: s.px(0.7) },
  );
  s.asks.push(
    { text: text('close'), at: s.at(2, -1.1), places: ['right', 'below-right', 'below'], gap: 10, wrap: 12, strong: true },
    { text: text('apart'), at: s.at(1.95, 0.75), places: ['right', 'above-right', 'above'], gap: 12, wrap: 14, strong: true },
    { text: text('wire'), at: s.at(-2.6, 1.75), places: ['above-right', 'above', 'below-left'], gap: 8, wrap: 22 },
    { text: text('rings'), at: s.at(-2.7, -1.3), places: ['left', 'on', 'below'], wrap: 12, leader: false },
  );
  return { ...finish(s), handles: [] };
};
