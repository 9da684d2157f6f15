/** Where a young shoot is cut: just above a node, too far out along the bare length, and too close. Not to scale. */
import { inset } from '../kit/frame.ts';
import { polygon, segment, smooth } from '../kit/path.ts';
import { finish, sketch, type Picture, type Sketch } from '../kit/picture.ts';
import type { Point } from '../kit/placed.ts';
import { same, word } from '../kit/say.ts';
import { limb } from '../marks/limb.ts';

export type Face = 'cuts';
/** One shoot each: where the cut meets the shoot's edge on the bud's side, and on the other. */
const shoots = [
  { name: 'right', x: 0, near: 0.5, far: 0.02, good: true },
  { name: 'far', x: 3, near: 1.5, far: 1.1, good: false },
  { name: 'close', x: 6, near: 0.08, far: -0.75, good: false },
] as const;
const half = 0.3;
const top = 2.1;

const bud = (s: Sketch, x: number, y: number, side: 1 | -1) => {
  const at = (dx: number, dy: number): Point => s.at(x + side * (half + dx), y + dy);
  s.draw({ mark: 'limb', d: smooth([at(-0.08, -0.12), at(0.22, 0.05), at(0.3, 0.42), at(0.06, 0.3), at(-0.06, 0.14)], true) });
};

export const geometry: Picture<Face> = (view, box) => {
  const s = sketch({ left: -1.1, right: 7.1, bottom: -2, top }, box, inset(8, { top: 12, bottom: 40 }));
  const say = (name: string) => same(word(view.labels, name));
  for (const { name, x, near, far, good } of shoots) {
    s.draw(limb({ from: s.at(x, -2), to: s.at(x, top), fromWidth: s.px(half * 2), toWidth: s.px(half * 1.8), bare: true }));
    s.draw({ mark: 'piece', d: polygon([s.at(x + half, near), s.at(x + half * 0.93, top), s.at(x - half * 0.93, top), s.at(x - half, far)]) });
    bud(s, x, 0, 1);
    bud(s, x, -1.35, -1);
    s.draw({ mark: 'bark', d: segment(s.at(x - half, -0.06), s.at(x + half, -0.06)) + segment(s.at(x - half, -1.41), s.at(x + half, -1.41)) });
    const over = 0.32;
    const slope = (near - far) / (2 * half);
    s.draw({ mark: good ? 'cut' : 'othercut', d: segment(s.at(x + half + over, near + slope * over), s.at(x - half - over, far - slope * over)) });
    s.asks.push({ text: say(name), at: s.at(x, -2), places: ['below'], gap: 8, leader: false, strong: good, wrap: 15 });
  }
  s.asks.push(
    { text: say('node'), at: s.at(half + 0.1, -0.06), places: ['right', 'below-right'], gap: 22, wrap: 8 },
    { text: say('internode'), at: s.at(-half, -0.75), places: ['left', 'below-left'], gap: 6, wrap: 8 },
  );
  return { ...finish(s), handles: [] };
};
