/**
 * Four ways a limb is held, which face is squeezed and which stretched, and so which face is cut first.
 * Bending by beam theory (statics textbooks; signs as in `cut-order`); not to scale, bends drawn larger than they are.
 */
import { inset } from '../kit/frame.ts';
import { along } from '../kit/labels.ts';
import { circle, polygon, segment } from '../kit/path.ts';
import { finish, sketch, type Picture, type Sketch } from '../kit/picture.ts';
import type { Point } from '../kit/placed.ts';
import { same, word } from '../kit/say.ts';
import { add, less, times, unit } from '../kit/vector.ts';
import { holds, type Held } from './faces.ts';
import { ground } from '../marks/ground.ts';
import { limb, onLimb, section, type Limb } from '../marks/limb.ts';
import { stem } from '../marks/stem.ts';

export type Face = 'sides';
type Panel = { name: Held; limb: Omit<Limb, 'fromWidth' | 'toWidth'> };

/** In a panel 10 wide and 6.6 high. */
const panels = (at: (x: number, y: number) => Point, px: (length: number) => number): readonly Panel[] => [
  { name: 'free', limb: { from: at(1.5, 3.0), to: at(9.5, 2.2), bow: px(0.6), start: 'butt' } },
  { name: 'resting', limb: { from: at(1.5, 3.7), to: at(9.6, 1.0), bow: px(0.1), start: 'butt', end: 'cut' } },
  { name: 'hung', limb: { from: at(0.4, 3.1), to: at(9.6, 3.1), bow: -px(0.62) } },
  { name: 'held', limb: { from: at(0.4, 2.8), to: at(9.6, 2.8), bow: -px(0.25) } },
];

/** Other limbs, seen end on. */
const otherLimbs = (s: Sketch, centres: readonly Point[], radius: number) =>
  s.draw({ mark: 'section', d: centres.map((c) => circle(c, radius)).join('') }, { mark: 'bark', d: centres.map((c) => section(c, radius)).join('') });

const supports = (s: Sketch, panel: Panel, l: Limb, at: (x: number, y: number) => Point, px: (length: number) => number) => {
  const radius = px(0.52);
  const over = (t: number, side: 1 | -1): Point => add(onLimb(l, t), [0, -side * (onHalf(l, t) + radius)]);
  if (panel.name === 'free' || panel.name === 'resting') s.draw(stem(at(0.9, 0.35), at(0, 4.9)[1], px(1.25)));
  if (panel.name === 'resting') s.draw(ground(at(0, 0.35), at(10, 0.35)));
  if (panel.name === 'hung') otherLimbs(s, holds.hung.supports.map((t) => over(t, -1)), radius);
  if (panel.name === 'held') otherLimbs(s, holds.held.supports.flatMap((t) => [over(t, 1), over(t, -1)]), radius);
};
const onHalf = (l: Limb, t: number) => (l.fromWidth + (l.toWidth - l.fromWidth) * t) / 2;

const drawPanel = (s: Sketch, panel: Panel, at: (x: number, y: number) => Point, px: (length: number) => number, say: (name: string) => string) => {
  const l: Limb = { ...panel.limb, fromWidth: px(1.5), toWidth: px(panel.name === 'free' || panel.name === 'resting' ? 1.05 : 1.5), bare: true };
  s.draw(limb(l));
  supports(s, panel, l, at, px);
  const { stretches, cutAt } = holds[panel.name];
  const strips = (way: 1 | -1) => stretches.map(({ from, to, squeezed }) => {
    const side = way * (squeezed === 'upper' ? 1 : -1);
    const ts = (to - from > 0.4 ? [0, 0.25, 0.5, 0.75, 1] : [0, 0.5, 1]).map((k) => from + (to - from) * k);
    return polygon([...ts.map((t) => onLimb(l, t, side * 0.96)), ...ts.toReversed().map((t) => onLimb(l, t, side * 0.2))]);
  }).join('');
  s.draw({ mark: 'squeezed', d: strips(1) }, { mark: 'pulled', d: strips(-1) });
  const here = stretches.find((x) => x.from <= cutAt && cutAt <= x.to)!;
  const first = here.squeezed === 'upper' ? 1 : -1;
  const unsure = panel.name === 'resting';
  const [upper, under] = [onLimb(l, cutAt, 1), onLimb(l, cutAt, -1)];
  // The release cut a step towards the stem (left).
  const back = Math.min(px(0.45), 7) / Math.hypot(l.to[0] - l.from[0], l.to[1] - l.from[1]);
  const cut = (t: number, side: 1 | -1, deep: number) => segment(onLimb(l, t, side * 1.35), onLimb(l, t, side * (1 - deep)));
  s.draw({ mark: 'cut', d: unsure ? cut(cutAt, 1, 0.25) + cut(cutAt, -1, 0.25) : cut(cutAt, first, 0.6) + cut(cutAt - back, -first as 1 | -1, 0.95) });
  const off = times(unit(less(upper, under)), 17);
  const [one, two] = first === 1 ? [add(upper, off), less(under, off)] : [less(under, off), add(upper, off)];
  s.badges.push({ x: one[0], y: one[1], text: unsure ? '?' : '1' }, { x: two[0], y: two[1], text: unsure ? '?' : '2' });
  s.asks.push({ text: same(say(panel.name)), at: at(0.15, 6.5), places: ['below-right', 'right'], gap: 2, strong: true, leader: false, wrap: 24 });
  s.keepOff.push(...along(onLimb(l, 0, 1), onLimb(l, 1, 1), 4), ...along(onLimb(l, 0, -1), onLimb(l, 1, -1), 4), ...along(upper, under, 12));
};

export const geometry: Picture<Face> = (view, box) => {
  const key = 44;
  const s = sketch({ left: 0, right: 20.8, bottom: 0, top: 13.4 }, { width: box.width, height: box.height - key }, inset(4));
  s.box = box;
  const say = (name: string) => word(view.labels, name);
  panels(s.at, s.px).forEach((_, i) => {
    const [x0, y0] = [(i % 2) * 10.8, i < 2 ? 6.8 : 0];
    const at = (x: number, y: number) => s.at(x + x0, y + y0);
    drawPanel(s, panels(at, s.px)[i]!, at, s.px, say);
  });
  // The key to the hatching.
  const y = box.height - key + 12;
  const swatch = (x: number): Point[] => [[x, y], [x + 34, y], [x + 34, y + 18], [x, y + 18]];
  const half = box.width / 2;
  s.draw(
    { mark: 'squeezed', d: polygon(swatch(6)) }, { mark: 'dim', d: polygon(swatch(6)) },
    { mark: 'pulled', d: polygon(swatch(half)) }, { mark: 'dim', d: polygon(swatch(half)) },
  );
  s.asks.push(
    { text: same(say('squeezed')), at: [42, y + 9], places: ['right'], leader: false, wrap: 26 },
    { text: same(say('pulled')), at: [half + 36, y + 9], places: ['right'], leader: false, wrap: 26 },
  );
  return { ...finish(s), handles: [] };
};
