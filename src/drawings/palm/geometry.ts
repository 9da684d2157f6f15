/** A palm and the level line through the base of its canopy: what stays, what may go, what is dead. Not to scale. */
import { inset } from '../kit/frame.ts';
import { around, segment, smooth } from '../kit/path.ts';
import { finish, sketch, type Picture, type Sketch } from '../kit/picture.ts';
import type { Point, Shape } from '../kit/placed.ts';
import { same, word } from '../kit/say.ts';
import { ground } from '../marks/ground.ts';
import { limb } from '../marks/limb.ts';

export type Face = 'line';
type Frond = { angle: number; length: number; droop: number };
const stays: readonly Frond[] = [
  { angle: 90, length: 1.7, droop: 0 }, { angle: 68, length: 1.9, droop: 0.1 }, { angle: 112, length: 1.9, droop: 0.1 },
  { angle: 46, length: 2.1, droop: 0.2 }, { angle: 134, length: 2.1, droop: 0.2 }, { angle: 26, length: 2.2, droop: 0.25 }, { angle: 154, length: 2.2, droop: 0.25 },
  { angle: 10, length: 2.1, droop: 0.12 }, { angle: 170, length: 2.1, droop: 0.12 },
];
const may: readonly Frond[] = [{ angle: -14, length: 2, droop: 0.2 }, { angle: 194, length: 2, droop: 0.2 }];
const dead: readonly Frond[] = [{ angle: -58, length: 1.6, droop: 0.2 }, { angle: 238, length: 1.6, droop: 0.2 }, { angle: -76, length: 1.5, droop: 0.05 }, { angle: 256, length: 1.5, droop: 0.05 }];

const along = ({ angle, length, droop }: Frond, t: number): Point => {
  const turn = (angle * Math.PI) / 180;
  return [Math.cos(turn) * length * t, Math.sin(turn) * length * t - droop * length * t * t];
};

const frond = (s: Sketch, f: Frond, mark: Shape['mark']) => {
  const steps = [0, 0.3, 0.7, 1];
  const edge = (side: 1 | -1): Point[] => steps.map((t) => {
    const [x, y] = along(f, t);
    const [ax, ay] = along(f, Math.min(t + 0.02, 1));
    const [bx, by] = along(f, Math.max(t - 0.02, 0));
    const size = Math.hypot(ax - bx, ay - by) || 1;
    const wide = 0.17 * Math.sin(Math.PI * Math.min(1, t * 0.9 + 0.05)) * side;
    return s.at(x - ((ay - by) / size) * wide, y + ((ax - bx) / size) * wide);
  });
  s.draw({ mark, d: smooth([...edge(1), ...edge(-1).reverse()], true) });
  s.draw({ mark: 'bark', d: smooth(steps.map((t) => s.at(...along(f, t)))) });
};

export const geometry: Picture<Face> = (view, box) => {
  const s = sketch({ left: -3.3, right: 3.3, bottom: -2.7, top: 2 }, box, inset(8));
  const say = (name: string) => same(word(view.labels, name));
  s.draw(ground(s.at(-1.2, -2.6), s.at(1.2, -2.6)));
  s.draw(limb({ from: s.at(0, -2.6), to: s.at(0, 0), fromWidth: s.px(0.5), toWidth: s.px(0.36), start: 'cut', end: 'cut' }));
  for (const f of dead) frond(s, f, 'piece');
  for (const f of may) frond(s, f, 'limb');
  for (const f of stays) frond(s, f, 'limb');
  s.draw({ mark: 'limit', d: segment(s.at(-2.9, 0), s.at(2.9, 0)) });
  s.keepOff.push(around([s.at(-2.9, 0.05), s.at(2.9, -0.05)], 2));
  s.asks.push(
    { text: say('stays'), at: s.at(...along(stays[4]!, 0.8)), places: ['above-left', 'left', 'above'], gap: 12, wrap: 12, strong: true },
    { text: say('line'), at: s.at(2.4, 0), places: ['above-right', 'above'], gap: 14, wrap: 14 },
    { text: say('may'), at: s.at(...along(may[0]!, 0.85)), places: ['below-right', 'below'], gap: 12, wrap: 15 },
    { text: say('dead'), at: s.at(...along(dead[1]!, 0.85)), places: ['below-left', 'left'], gap: 12, wrap: 12 },
  );
  return { ...finish(s), handles: [] };
};
