/** Each output moves with each input as its definition declares, and not at all with those it does not name. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { AnyCalculator, Move, SharedError } from '#core/kit/calculator.ts';
import type { Inputs } from '#core/kit/outcome.ts';
import { inputsOf, validInputs } from './arbitrary.ts';
import { compute, outputsOf, settings, wide } from './runs.ts';

const scaled = (value: Inputs[string] | undefined, by: number): Inputs[string] => {
  if (Array.isArray(value)) return value.map((item: number) => item * by);
  return typeof value === 'number' ? value * by : null;
};

/** An input's ways to be moved: itself, or all that share an error by a factor. */
type Mover = { name: string; move: (inputs: Inputs, to: number) => Inputs };
const moversOf = (calculator: AnyCalculator): Mover[] => [
  ...inputsOf(calculator).flatMap(([name, input]): Mover[] => {
    if (input.kind === 'choice') return [];
    const reach = (to: number): number => input.min + to * (input.max - input.min);
    if (input.kind === 'quantity') return [{ name, move: (inputs, to) => ({ ...inputs, [name]: reach(to) }) }];
    return [{ name, move: (inputs, to) => ({ ...inputs, [name]: scaled(inputs[name], 0.5 + to) }) }];
  }),
  ...Object.entries(calculator.shared as { [name: string]: SharedError }).map(([name, error]): Mover => ({
    name,
    move: (inputs, to) => ({
      ...inputs,
      ...Object.fromEntries(error.inputs.map((n) => [n, scaled(inputs[n], 0.75 + to / 2)])),
    }),
  })),
];

export const directions = (calculator: AnyCalculator): void => {
  const goes = (move: Move | undefined, from: number, to: number): boolean => {
    if (move === undefined) return Math.abs(to - from) <= wide(from, to);
    // A solver's last digits may go either way.
    const give = 1000 * wide(from, to);
    if (move === 'up') return to >= from - give;
    return move === 'down' ? to <= from + give : true;
  };
  it.each(moversOf(calculator))('moves with $name as declared', ({ name, move }) => {
    const part = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(fc.property(validInputs(calculator), part, part, (inputs, one, two) => {
      const [less, more] = [move(inputs, Math.min(one, two)), move(inputs, Math.max(one, two))];
      if (calculator.relate(less).length > 0 || calculator.relate(more).length > 0) return;
      const [from, to] = [compute(calculator, less), compute(calculator, more)];
      if (from.kind !== 'answer' || to.kind !== 'answer') return;
      for (const [key, output] of outputsOf(calculator)) {
        const [a, b] = [from.outputs[key], to.outputs[key]];
        if (typeof a === 'number' && typeof b === 'number') expect(goes(output.moves[name], a, b), `${key}: ${a} to ${b}`).toBe(true);
        else if (output.moves[name] === undefined) expect(b, key).toBe(a);
      }
    }), settings());
  });
};
