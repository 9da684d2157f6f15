/** Up to three spells of a day, each of two inputs that belong together: `magnitude1` and `minutes1`, and so on. */
import type { InputProblem } from './calculator.ts';

type Given = { readonly [name: string]: number | string | readonly number[] | null };
const numbers = [1, 2, 3];

/** One of a pair is entered and the other is not: a problem at the empty one. */
export const pairProblems = (inputs: Given, first: string, second: string): InputProblem[] =>
  numbers.flatMap((n) => {
    const pair = [`${first}${n}`, `${second}${n}`];
    const empty = pair.filter((name) => inputs[name] === null);
    return empty.length === 1 ? [{ input: empty[0] as string, problem: 'needsPair', values: {} }] : [];
  });

/** The minutes add up to more than a day has: a problem at the last one entered. */
export const timeProblem = (inputs: Given): InputProblem[] => {
  const names = numbers.map((n) => `minutes${n}`).filter((name) => inputs[name] !== null);
  const sum = names.reduce((total, name) => total + (inputs[name] as number), 0);
  return sum > 24 * 60 ? [{ input: names.at(-1) as string, problem: 'moreThanDay', values: {} }] : [];
};
