/** A can of petrol and a measure of oil: how high each is filled, and how much of the mixture the oil is. */
import type { fuelMix } from '#core/calculators/fuel-mix.ts';
import type { InputsOf } from '#core/kit/calculator.ts';
import type { Outcome } from '#core/kit/outcome.ts';
import { quantityOf, said } from '../kit/figures.ts';
import { inset, onStep, unplace } from '../kit/frame.ts';
import { polygon, polyline, segment } from '../kit/path.ts';
import { finish, sketch, type View } from '../kit/picture.ts';
import type { Box, Handle, Placed, Point } from '../kit/placed.ts';
import { say, word } from '../kit/say.ts';

export type Face = 'cans';
export type Inputs = InputsOf<(typeof fuelMix)['inputs']>;
export type Move = { fuel: number };

/** Sizes of can and measure that can be bought, about; the smallest that holds it is drawn, filled true to height. */
const cans = [1, 2, 5, 10, 20, 50];
const measures = [50, 100, 250, 500, 1000, 2500];
const sizeFor = (sizes: readonly number[], amount: number): number => sizes.find((size) => amount <= size) ?? (sizes.at(-1) as number);

export const geometry = (inputs: Inputs, outcome: Outcome, view: View<Face>, box: Box): Placed<Move> => {
  const s = sketch({ left: 0, right: 1.6, bottom: 0, top: 1 }, box, inset(14, { top: 26, bottom: 34 }), view.held);
  const { fuel } = inputs;
  const oil = quantityOf(outcome, 'oil')?.value ?? 0;
  const [can, measure] = [sizeFor(cans, fuel), sizeFor(measures, oil)];
  const text = (name: string, unit: 'L' | 'mL', value: number) => say(word(view.labels, name), { value: said(unit, value) });
  const [full, deep] = [0.86, 0.7];
  const vessel = (left: number, right: number, height: number, level: number): void => {
    s.draw(
      { mark: 'liquid', d: polygon([s.at(left, 0), s.at(right, 0), s.at(right, level), s.at(left, level)]) },
      { mark: 'vessel', d: polyline([s.at(left, height), s.at(left, 0), s.at(right, 0), s.at(right, height)]) },
    );
  };
  const petrol = (full * fuel) / can;
  vessel(0.05, 0.75, 1, petrol);
  const filled = (deep * Math.min(oil, measure)) / measure;
  vessel(1.15, 1.45, 0.78, filled);
  for (let tick = 1; tick <= 5; tick++) {
    const y = (deep * tick) / 5;
    s.draw({ mark: 'dim', d: segment(s.at(1.38, y), s.at(1.45, y)) });
  }
  s.draw({ mark: 'need', d: segment(s.at(1.09, filled), s.at(1.5, filled)) });
  const grip: Point = s.at(0.4, petrol);
  s.keepOff.push({ x: grip[0] - 14, y: grip[1] - 14, width: 28, height: 28 });
  s.asks.push(
    { text: text('petrol', 'L', fuel), at: s.at(0.4, 0), places: ['below'], gap: 6, leader: false, wrap: 22 },
    { text: text('can', 'L', can), at: s.at(0.4, 1), places: ['above'], gap: 3, leader: false },
    { text: text('oil', 'mL', oil), at: s.at(1.3, 0), places: ['below'], gap: 6, leader: false, strong: true },
    { text: text('measure', 'mL', measure), at: s.at(1.3, 0.78), places: ['above'], gap: 3, leader: false },
  );
  const handles: Handle<Move>[] = [{
    id: 'fuel', label: word(view.labels, 'moveFuel'), way: 'up', x: grip[0], y: grip[1], min: 0.1, max: 50, step: 0.1, value: fuel, says: said('L', fuel),
    at: (point) => onStep((unplace(s.frame, point)[1] / full) * can, 0.1, 50, 0.1),
    move: (value) => ({ fuel: value }),
  }];
  return { ...finish(s), handles };
};
