/**
 * The stem's section, and in it one disc with the section of all the cuts: what share of the crown goes. Dashed rings show
 * the limits to the same scale. Under it the cuts themselves. True to scale, in mm.
 */
import type { crownShare } from '#core/calculators/crown-share.ts';
import type { InputsOf } from '#core/kit/calculator.ts';
import type { Outcome } from '#core/kit/outcome.ts';
import { planOn, quantityOf, said } from '../kit/figures.ts';
import { inset, onStep, unplace } from '../kit/frame.ts';
import { circle } from '../kit/path.ts';
import { finish, sketch, type View } from '../kit/picture.ts';
import type { Box, Handle, Placed } from '../kit/placed.ts';
import { say, word, type Figures } from '../kit/say.ts';

export type Face = 'section';
export type Inputs = InputsOf<(typeof crownShare)['inputs']>;
export type Move = { stemDiameter: number };

export const geometry = (inputs: Inputs, outcome: Outcome, view: View<Face>, box: Box): Placed<Move> => {
  const { stemDiameter: stem, cuts, earlier } = inputs;
  const radius = stem / 2;
  const share = quantityOf(outcome, 'share')?.value ?? null;
  const most = planOn(outcome, 'share');
  const limit = planOn(outcome, 'limit');
  const [widest, total] = [Math.max(...cuts), cuts.reduce((sum, d) => sum + d, 0)];
  const gap = stem * 0.03;
  // The cuts stand in a row beside the stem, in as many rows as its height takes.
  const perRow = Math.max(1, Math.ceil(cuts.length / Math.max(1, Math.floor(stem / (widest + gap)))));
  const rowWidth = Math.min(total + gap * cuts.length, perRow * (widest + gap));
  const s = sketch({ left: -radius, right: radius + stem * 0.1 + rowWidth, bottom: -radius, top: radius }, box, inset(12, { top: 22, bottom: 26, left: box.width * 0.22, right: 14 }), view.held);
  const disc = (percent: number) => circle(s.at(0, 0), s.px(radius) * Math.sqrt(Math.min(percent, 100) / 100));
  const figures: Figures = {
    stemDiameter: said('mm', stem),
    ...(share === null ? {} : { share: said('%', most ?? share, 'up') }),
    ...(limit === null ? {} : { limit: said('%', limit) }),
    earlier: said('%', earlier),
  };
  const text = (name: string) => say(word(view.labels, name), figures);
  s.draw({ mark: 'section', d: circle(s.at(0, 0), s.px(radius)) });
  s.draw({ mark: 'bark', d: [0.93, 0.86].map((k) => circle(s.at(0, 0), s.px(radius) * k)).join('') });
  // Labels stand outside the stem, with a thin line to what they speak of.
  const [left, top] = s.at(-radius * 0.8, radius * 0.8);
  s.keepOff.push({ x: left, y: top, width: s.px(radius * 1.8), height: s.px(radius * 1.6) });
  if (share !== null) {
    s.draw({ mark: 'piece', d: disc(share) });
    if (most !== null && most > share * 1.001) s.draw({ mark: 'ghost', d: disc(most) });
    const edge = radius * Math.sqrt(Math.min(most ?? share, 100) / 100);
    s.asks.push({ text: text('share'), at: s.at(-edge * 0.8, -edge * 0.6), places: ['left', 'below-left'], gap: 8, strong: true, wrap: 11 });
  }
  if (limit !== null) {
    s.draw({ mark: 'limit', d: disc(limit) });
    const ring = radius * Math.sqrt(limit / 100);
    s.asks.push({ text: text('limit'), at: s.at(-ring * 0.75, ring * 0.66), places: ['left', 'above-left'], gap: 8, wrap: 11 });
  }
  s.asks.push({ text: text('stem'), at: s.at(0, -radius), places: ['below'], gap: 5, leader: false, wrap: 30 });
  for (const [i, d] of cuts.entries()) {
    const [row, place] = [Math.floor(i / perRow), i % perRow];
    const before = cuts.slice(row * perRow, i).reduce((sum, other) => sum + other + gap, 0);
    const x = perRow === cuts.length ? before + d / 2 : place * (widest + gap) + widest / 2;
    s.draw({ mark: 'piece', d: circle(s.at(radius + stem * 0.1 + x, radius - widest / 2 - row * (widest + gap)), Math.max(s.px(d / 2), 1)) });
  }
  const grip = s.at(radius, 0);
  const handles: Handle<Move>[] = [
    {
      id: 'stemDiameter', label: word(view.labels, 'moveStem'), way: 'across', x: grip[0], y: grip[1],
      min: 40, max: 1500, step: 5, value: stem, says: said('mm', stem),
      at: (point) => onStep(2 * unplace(s.frame, point)[0], 40, 1500, 5),
      move: (value) => ({ stemDiameter: value }),
    },
  ];
  return { ...finish(s), handles };
};
