/** A tree from beside, with what to look for before sawing (`before`) and again when the wood is down (`after`). Not to scale. */
import { inset } from '../kit/frame.ts';
import { along } from '../kit/labels.ts';
import { ellipse, pen, polyline, segment, smooth } from '../kit/path.ts';
import { finish, sketch, type Picture } from '../kit/picture.ts';
import type { Point } from '../kit/placed.ts';
import { same, word } from '../kit/say.ts';
import { ground } from '../marks/ground.ts';
import { limb } from '../marks/limb.ts';
import { line } from '../marks/line.ts';

export type Face = 'before' | 'after';

/** A tuft of leaves. */
const tuft = (centre: Point, radius: number): string =>
  smooth(
    Array.from({ length: 12 }, (_, i): Point => {
      const turn = (i * Math.PI) / 6;
      const r = radius * (i % 2 === 0 ? 1 : 0.78);
      return [centre[0] + r * 1.2 * Math.cos(turn), centre[1] + r * Math.sin(turn)];
    }),
    true,
  );

export const geometry: Picture<Face> = (view, box) => {
  const s = sketch({ left: 0, right: 10, bottom: -0.5, top: 9 }, box, inset(4));
  const say = (name: string) => same(word(view.labels, name));
  const p = (x: number, y: number) => s.at(x, y);
  const before = view.face === 'before';
  const w = (units: number) => s.px(units);
  if (before) s.draw(line(p(0.1, 7.4), p(2.4, 7.7), w(0.12)));
  else s.draw({ mark: 'landing', d: smooth([p(6.1, 0.02), p(6.4, 0.45), p(8.4, 0.45), p(8.7, 0.02)]) });
  s.draw(ground(p(0, 0), p(10, 0)));

  const left = { from: p(4.9, 4.1), to: p(2.6, 7.1), fromWidth: w(0.5), toWidth: w(0.3), start: 'butt' as const };
  const right = { from: p(5.1, 4.1), to: p(7.0, 7.6), fromWidth: w(0.5), toWidth: w(0.28), start: 'butt' as const };
  const low = { from: p(5.15, 3.1), to: p(8.9, 4.0), fromWidth: w(0.36), toWidth: w(0.16), start: 'butt' as const };
  s.draw({ mark: 'ghost', d: tuft(p(2.5, 7.5), w(0.95)) + tuft(p(7.1, 7.8), w(0.95)) + tuft(p(4.8, 8.1), w(0.8)) });
  s.draw(limb(left), limb(right));
  if (before) {
    s.draw(limb({ ...low, end: 'cut' }));
    // Dead twigs, bare.
    s.draw({ mark: 'bark', d: [[6.6, 3.45, 7.2, 4.3], [7.6, 3.7, 8.0, 4.5], [7.2, 3.55, 7.7, 2.9], [8.3, 3.85, 8.9, 3.3]].map(([a, b, c, d]) => segment(p(a!, b!), p(c!, d!))).join('') });
  } else s.draw(limb({ ...low, to: p(5.9, 3.28), toWidth: w(0.33), end: 'cut' }));
  const stem = pen();
  stem.moveTo(...p(3.7, 0));
  stem.quadraticCurveTo(...p(4.35, 0.2), ...p(4.45, 1.1));
  stem.lineTo(...p(4.6, 4.1));
  stem.lineTo(...p(5.0, 4.55));
  stem.lineTo(...p(5.35, 4.1));
  stem.lineTo(...p(5.5, 1.1));
  stem.quadraticCurveTo(...p(5.6, 0.2), ...p(6.3, 0));
  s.draw({ mark: 'stem', d: stem.toString() });
  if (!before) s.draw({ mark: 'pulled', d: smooth([p(5.42, 2.95), p(5.1, 2.7), p(5.2, 2.1), p(5.3, 1.7), p(5.46, 2.1)], true) });
  // Bark caught in the fork.
  s.draw({ mark: 'ridge', d: segment(p(5.0, 4.55), p(4.99, 3.95)) });
  // A branch lying over the right limb.
  const hung = { from: p(6.0, 4.7), to: p(8.4, 6.6), fromWidth: w(0.24), toWidth: w(0.12), start: 'cut' as const };
  s.draw(limb(hung, before ? 'limb' : 'piece'));
  if (before) {
    s.draw({ mark: 'tool', d: ellipse(p(4.9, 2.75), w(0.16), w(0.3)) });
    s.draw({ mark: 'edgeline', d: polyline([p(4.72, 2.25), p(4.78, 1.9), p(4.7, 1.6), p(4.8, 1.2)]) });
    s.draw({ mark: 'over', d: ellipse(p(5.62, 0.95), w(0.26), w(0.1)) + ellipse(p(5.68, 0.62), w(0.3), w(0.11)) });
    s.draw({ mark: 'ground', d: smooth([p(2.3, 0), p(2.9, 0.25), p(3.6, 0.05)]) }, { mark: 'soil', d: segment(p(2.2, 0.02), p(2.5, -0.25)) });
    s.draw({ mark: 'over', d: ellipse(p(3.45, 5.25), w(0.26), w(0.33)) }, { mark: 'soil', d: [0.1, 0, -0.1].map((k) => segment(p(3.25, 5.25 + k * 1.6), p(3.65, 5.25 + k * 1.6))).join('') });
  }
  s.keepOff.push(...along(p(4.5, 0.4), p(4.9, 4), 30), ...along(p(5.3, 0.4), p(5.1, 4), 20), ...along(left.from, left.to, 16), ...along(right.from, right.to, 16), ...along(hung.from, hung.to, 8));
  const ask = (name: string, at: Point, places: readonly ('left' | 'right' | 'above' | 'below' | 'above-left' | 'above-right' | 'below-left' | 'below-right')[], wrap = 13, strong = false) =>
    s.asks.push({ text: say(name), at, places, gap: 9, wrap, strong });
  if (before) {
    s.keepOff.push(...along(low.from, low.to, 14));
    ask('wire', p(1.2, 7.45), ['below', 'above'], 14, true);
    ask('wasps', p(3.2, 5.25), ['left']);
    ask('hung', p(8.1, 6.3), ['right', 'below-right', 'below'], 10);
    ask('dead', p(8.6, 3.9), ['above', 'right', 'below'], 12);
    ask('inclusion', p(4.98, 4.3), ['above', 'left'], 13);
    ask('hollow', p(4.78, 2.8), ['left'], 14);
    ask('crack', p(4.7, 1.7), ['left'], 14);
    ask('brackets', p(5.9, 0.8), ['right', 'above-right'], 16);
    ask('soil', p(2.7, 0.25), ['above', 'left', 'above-left'], 12);
  } else {
    ask('hanging', p(7.6, 5.9), ['right', 'below-right'], 12, true);
    ask('under', p(7.4, 0.45), ['above'], 16, true);
    ask('cut', p(5.95, 3.28), ['right'], 14);
    ask('tear', p(5.3, 2.2), ['right', 'below-right'], 14);
    ask('changed', p(3.2, 6.2), ['left', 'below-left', 'below'], 12);
  }
  return { ...finish(s), handles: [] };
};
