/**
 * A limb from beside with what was measured on it, its thickness drawn larger than its length, and its weight counted in
 * bags. Px of the box throughout but for the length.
 */
import type { limbWeight } from '#core/calculators/limb-weight.ts';
import type { InputsOf } from '#core/kit/calculator.ts';
import type { Outcome } from '#core/kit/outcome.ts';
import { planOn, said } from '../kit/figures.ts';
import { inset, onStep, unplace } from '../kit/frame.ts';
import { around } from '../kit/path.ts';
import { finish, sketch, type View } from '../kit/picture.ts';
import type { Box, Handle, Placed, Point } from '../kit/placed.ts';
import { say, word, type Figures } from '../kit/say.ts';
import { dimension } from '../marks/dimension.ts';
import { limb, onLimb } from '../marks/limb.ts';
import { polygon } from '../kit/path.ts';

export type Face = 'side';
export type Inputs = InputsOf<(typeof limbWeight)['inputs']>;
export type Move = { length: number };

/** The bag that the weight is compared with, kg, as the finding says it. */
const bagOf = (outcome: Outcome): number => {
  const compare = outcome.kind === 'answer' ? outcome.findings.find((f) => f.id === 'compare') : undefined;
  return typeof compare?.values['bag'] === 'number' ? compare.values['bag'] : 1;
};

const thickest = 62;
const bag = { width: 17, height: 12, most: 40 };

export const geometry = (inputs: Inputs, outcome: Outcome, view: View<Face>, box: Box): Placed<Move> => {
  const { buttDiameter, midDiameter, tipDiameter, length } = inputs;
  const frameLength = Math.max(1, length);
  const s = sketch({ left: 0, right: frameLength, bottom: -0.01, top: 0.01 }, box, inset(26, { left: 64 }), view.held);
  const butt = buttDiameter ?? midDiameter ?? 0;
  const px = (diameter: number): number => Math.max(3, (thickest * diameter) / Math.max(butt, midDiameter ?? 0, 1));
  const y = box.height * 0.34;
  const [from, to]: Point[] = [[s.at(0, 0)[0], y], [s.at(length, 0)[0], y]] as [Point, Point];
  const tip = tipDiameter ?? (buttDiameter === null ? butt : butt * 0.12);
  const wood = { from: from!, to: to!, fromWidth: px(butt), toWidth: px(tip), start: 'cut', end: tipDiameter === null ? 'on' : 'cut' } as const;
  s.draw(limb(wood));
  s.keepOff.push(around([from!, to!], thickest / 2));
  const weight = planOn(outcome, 'weight');
  const figures: Figures = {
    length: said('m', length),
    bag: said('kg', bagOf(outcome)),
    ...(buttDiameter === null ? {} : { buttDiameter: said('mm', buttDiameter) }),
    ...(midDiameter === null ? {} : { midDiameter: said('mm', midDiameter) }),
    ...(tipDiameter === null ? {} : { tipDiameter: said('mm', tipDiameter) }),
    ...(weight === null ? {} : { weight: said('kg', weight, 'up') }),
  };
  const text = (name: string) => say(word(view.labels, name), figures);
  const across = (at: number, name: string, places: ('left' | 'right' | 'above' | 'below')[]): void => {
    const [a, b] = [onLimb(wood, at, -1), onLimb(wood, at, 1)];
    const d = dimension(a, b, at === 0 ? 8 : 0);
    s.draw(d.shapes);
    s.asks.push({ text: text(name), at: at === 0 ? d.middle : b, places, gap: 5, leader: false });
  };
  if (buttDiameter !== null) across(0, 'butt', ['left']);
  if (midDiameter !== null) across(0.5, 'mid', ['above', 'below']);
  if (tipDiameter !== null) across(1, 'tip', ['above', 'below']);
  const under = y + thickest / 2 + 16;
  const long = dimension([from![0], under], [to![0], under], 0);
  s.draw(long.shapes);
  s.asks.push({ text: text('length'), at: long.middle, places: ['below'], gap: 4, leader: false });

  // The weight in bags; the last one as full as it is.
  const bags = weight === null ? 0 : Math.min(bag.most, weight / bagOf(outcome));
  const row = Math.floor((box.width - 40) / bag.width);
  const floor = box.height - 26;
  for (let i = 0; i < bags; i += 1) {
    const full = Math.min(1, bags - i);
    const x = 20 + (i % row) * bag.width;
    const bottom = floor - Math.floor(i / row) * (bag.height + 3);
    const at = (w: number): Point[] => [[x, bottom], [x + w, bottom], [x + w, bottom - bag.height], [x, bottom - bag.height]];
    s.draw({ mark: 'vessel', d: polygon(at(bag.width - 3)) }, { mark: 'amount', d: polygon(at((bag.width - 3) * full)) });
  }
  s.keepOff.push({ x: 20, y: floor - Math.ceil(Math.max(bags, 1) / row) * (bag.height + 3), width: Math.min(bags, row) * bag.width, height: Math.ceil(Math.max(bags, 1) / row) * (bag.height + 3) });
  if (weight !== null) {
    s.asks.push(
      { text: text('weight'), at: [20, floor - Math.ceil(bags / row) * (bag.height + 3)], places: ['above-right', 'above'], gap: 6, strong: true, leader: false },
      { text: text('bags'), at: [20, floor], places: ['below-right', 'below'], gap: 5, leader: false },
    );
  }
  const end = to!;
  const handles: Handle<Move>[] = [
    {
      id: 'length', label: word(view.labels, 'moveLength'), way: 'across', x: end[0], y: end[1], min: 0.3, max: 10, step: 0.1, value: length, says: said('m', length),
      at: (point) => onStep(unplace(s.frame, point)[0], 0.3, 10, 0.1),
      move: (value) => ({ length: value }),
    },
  ];
  return { ...finish(s), handles };
};
