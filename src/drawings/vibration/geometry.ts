/** The day's vibration in points, tool by tool and together, against action and limit. Points add up; A(8) does not. */
import type { vibration } from '#core/calculators/vibration.ts';
import type { InputsOf } from '#core/kit/calculator.ts';
import type { Outcome } from '#core/kit/outcome.ts';
import { bars, type Bar } from '../kit/bars.ts';
import { quantityOf, said, worked } from '../kit/figures.ts';
import type { View } from '../kit/picture.ts';
import type { Box, Placed } from '../kit/placed.ts';
import { say, word } from '../kit/say.ts';

export type Face = 'day';
export type Inputs = InputsOf<(typeof vibration)['inputs']>;
export type Move = { minutes1: number } | { minutes2: number } | { minutes3: number };
/** Levels of the day the bars are held to, points. */
export type Levels = { action: number; limit: number };

const longest = 600;

export const geometry = (inputs: Inputs, outcome: Outcome, levels: Levels, view: View<Face>, box: Box): Placed<Move> => {
  const text = (name: string, value: number, unit: 'points' | 'min' = 'points') => say(word(view.labels, name), { value: said(unit, value, 'up') });
  const total = quantityOf(outcome, 'points');
  const tools = ([1, 2, 3] as const).flatMap((n) => {
    const [minutes, anHour] = [inputs[`minutes${n}`], worked(outcome, `rate${n}`)];
    return minutes === null || anHour === null ? [] : [{ n, minutes, rate: anHour / 60 }];
  });
  const rows: Bar<Move>[] = tools.map(({ n, minutes, rate }) => ({
    text: text(`tool${n}`, rate * minutes),
    parts: [rate * minutes],
    high: rate * minutes,
    ...(rate > 0 ? {
      grip: {
        id: `minutes${n}`, label: word(view.labels, `moveMinutes${n}`), min: 0, max: longest, step: 5, value: minutes, says: said('min', minutes),
        move: (value: number) => ({ [`minutes${n}`]: value }) as Move, toValue: (length: number) => length / rate,
      },
    } : {}),
  }));
  rows.push({ text: text('day', total?.high ?? 0), parts: tools.map((t) => t.rate * t.minutes), high: total?.high ?? 0, strong: true });
  return bars(rows, [
    { at: levels.action, text: text('action', levels.action), look: 'need' },
    { at: levels.limit, text: text('limit', levels.limit), look: 'limit' },
  ], box, view.held);
};
