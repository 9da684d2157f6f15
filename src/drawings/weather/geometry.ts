/** Wind on the Beaufort scale, and air on the scale of heat and cold, each against its published bands. */
import type { weather } from '#core/calculators/weather.ts';
import type { InputsOf } from '#core/kit/calculator.ts';
import type { Outcome } from '#core/kit/outcome.ts';
import { quantityOf, said } from '../kit/figures.ts';
import type { View } from '../kit/picture.ts';
import type { Box, Placed } from '../kit/placed.ts';
import { same, say, word } from '../kit/say.ts';
import { strip, type Band, type Pin } from '../kit/strip.ts';

export type Face = 'wind' | 'air';
export type Inputs = InputsOf<(typeof weather)['inputs']>;
export type Move = { wind: number } | { gust: number } | { air: number };
/** Edges of the bands, as core/facts gives them: m/s and °C. */
export type Bands = { forces: readonly number[]; platform: number; heat: readonly number[]; chillFrom: number };

const strongest = 40;
const [coldest, hottest] = [-50, 55];

const windStrip = (inputs: Inputs, outcome: Outcome, bands: Bands, view: View<Face>, box: Box): Placed<Move> => {
  const { labels } = view;
  const text = (name: string, value: number) => say(word(labels, name), { value: said('m/s', value, 'up') });
  const top = Math.max(strongest, (quantityOf(outcome, 'gustAtBasket')?.high ?? 0) * 1.02);
  const forces: Band[] = bands.forces.map((from, force) => {
    const to = bands.forces[force + 1] ?? top;
    // Narrow classes have no room for their number.
    return { from, to, text: to - from > top * 0.05 ? same(String(force)) : null, warn: from >= bands.platform };
  });
  const basket = quantityOf(outcome, 'gustAtBasket');
  const { wind, gust } = inputs;
  // Below the forecast's height the basket has the gust itself.
  const aloft = basket !== null && basket.value > gust;
  const pins: Pin<Move>[] = [
    {
      text: text('wind', wind), at: wind, low: wind, high: wind,
      grip: { id: 'wind', label: word(labels, 'moveWind'), min: 0, max: Math.min(strongest, gust), step: 0.5, says: said('m/s', wind), move: (value) => ({ wind: value }) },
    },
    {
      text: text('gust', gust), at: gust, low: aloft ? gust : (basket?.low ?? gust), high: aloft ? gust : (basket?.high ?? gust),
      grip: { id: 'gust', label: word(labels, 'moveGust'), min: wind, max: strongest, step: 0.5, says: said('m/s', gust), move: (value) => ({ gust: value }) },
    },
  ];
  if (aloft) pins.push({ text: text('basket', basket.high), at: basket.value, low: basket.low, high: basket.high, strong: true });
  return strip([0, top], forces, [{ at: bands.platform, text: text('platform', bands.platform) }], pins, box, view.held);
};

const airStrip = (inputs: Inputs, outcome: Outcome, bands: Bands, view: View<Face>, box: Box): Placed<Move> => {
  const { labels } = view;
  const text = (name: string, value: number) => say(word(labels, name), { value: said('degC', value) });
  const heat = quantityOf(outcome, 'heatIndex');
  const chill = quantityOf(outcome, 'windChill');
  const ends: [number, number] = [Math.min(coldest, (chill?.low ?? 0) - 3), Math.max(hottest, (heat?.high ?? 0) + 3)];
  const [caution, extreme, danger, worst] = bands.heat as [number, number, number, number];
  const parts: Band[] = [
    { from: ends[0], to: bands.chillFrom, text: say(word(labels, 'chillBand')) },
    { from: caution, to: extreme, text: same('1') },
    { from: extreme, to: danger, text: same('2') },
    { from: danger, to: worst, text: same('3'), warn: true },
    { from: worst, to: ends[1], text: same('4'), warn: true },
  ];
  const { air } = inputs;
  const pins: Pin<Move>[] = [{
    text: text('air', air), at: air, low: air, high: air,
    grip: { id: 'air', label: word(labels, 'moveAir'), min: coldest, max: hottest, step: 1, says: said('degC', air), move: (value) => ({ air: value }) },
  }];
  const apparent = quantityOf(outcome, 'apparent');
  if (heat) pins.push({ text: text('heat', heat.high), at: heat.value, low: heat.low, high: heat.high, strong: true });
  else if (chill) pins.push({ text: text('chill', chill.low), at: chill.value, low: chill.low, high: chill.high, strong: true });
  else if (apparent) pins.push({ text: text('apparent', apparent.value), at: Math.max(ends[0], apparent.value), low: Math.max(ends[0], apparent.low), high: apparent.high });
  return strip(ends, parts, [{ at: danger, text: text('danger', danger) }], pins, box, view.held);
};

export const geometry = (inputs: Inputs, outcome: Outcome, bands: Bands, view: View<Face>, box: Box): Placed<Move> =>
  (view.face === 'wind' ? windStrip : airStrip)(inputs, outcome, bands, view, box);
