/** The day's noise as shares of the whole dose, tool by tool and together, against the full dose of the rule chosen. */
import type { noise } from '#core/calculators/noise.ts';
import type { InputsOf } from '#core/kit/calculator.ts';
import type { Outcome } from '#core/kit/outcome.ts';
import { bars, type Bar } from '../kit/bars.ts';
import { quantityOf, said, worked } from '../kit/figures.ts';
import type { View } from '../kit/picture.ts';
import type { Box, Placed } from '../kit/placed.ts';
import { say, word } from '../kit/say.ts';

export type Face = 'day';
export type Inputs = InputsOf<(typeof noise)['inputs']>;
export type Move = { minutes1: number } | { minutes2: number } | { minutes3: number };

const longest = 720;
const tools = [1, 2, 3] as const;

export const geometry = (inputs: Inputs, outcome: Outcome, view: View<Face>, box: Box): Placed<Move> => {
  const text = (name: string, value: number) => say(word(view.labels, name), { value: said('%', value, 'up') });
  const total = quantityOf(outcome, 'dose');
  const rows: Bar<Move>[] = [];
  const parts: number[] = [];
  for (const n of tools) {
    const minutes = inputs[`minutes${n}`];
    const allowed = worked(outcome, `allowed${n}`);
    if (minutes === null || allowed === null) continue;
    const share = 100 / allowed;
    parts.push(share * minutes);
    rows.push({
      text: text(`tool${n}`, share * minutes),
      parts: [share * minutes],
      high: share * minutes,
      grip: {
        id: `minutes${n}`, label: word(view.labels, `moveMinutes${n}`), min: 0, max: longest, step: 5, value: minutes, says: said('min', minutes),
        move: (value) => ({ [`minutes${n}`]: value }) as Move, toValue: (length) => length / share,
      },
    });
  }
  rows.push({ text: text('day', total?.high ?? 0), parts, high: total?.high ?? 0, strong: true });
  return bars(rows, [{ at: 100, text: text('full', 100), look: 'limit' }], box, view.held);
};
