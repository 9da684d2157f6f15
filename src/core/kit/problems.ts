/** What can be wrong with inputs before anything is worked out. Ids only: the words stand in content/interface.json. */
import type { AnyCalculator, AnyInput, InputProblem, InputsOf } from './calculator.ts';
import type { Inputs } from './outcome.ts';

const numberProblem = (name: string, value: unknown, min: number, max: number): InputProblem[] => {
  if (typeof value !== 'number' || !Number.isFinite(value)) return [{ input: name, problem: 'notNumber', values: {} }];
  if (value < min) return [{ input: name, problem: 'tooSmall', values: { min, max } }];
  if (value > max) return [{ input: name, problem: 'tooLarge', values: { min, max } }];
  return [];
};

const problemOf = (name: string, input: AnyInput, value: Inputs[string] | undefined): InputProblem[] => {
  if (value === null || value === undefined) {
    return input.optional ? [] : [{ input: name, problem: 'missing', values: {} }];
  }
  if (input.kind === 'choice') {
    return input.options.includes(value as string) ? [] : [{ input: name, problem: 'notChoice', values: {} }];
  }
  if (input.kind === 'quantity') return numberProblem(name, value, input.min, input.max);
  if (!Array.isArray(value)) return [{ input: name, problem: 'notNumber', values: {} }];
  if (value.length < input.shortest) return [{ input: name, problem: 'tooFew', values: { shortest: input.shortest } }];
  if (value.length > input.longest) return [{ input: name, problem: 'tooMany', values: { longest: input.longest } }];
  return value.flatMap((item) => numberProblem(name, item, input.min, input.max)).slice(0, 1);
};

/** Problems of each input by itself: missing, not a number, not among the choices, outside the field's range. */
export const checkEach = (calculator: AnyCalculator, inputs: Inputs): InputProblem[] =>
  Object.entries(calculator.inputs as { [name: string]: AnyInput }).flatMap(([name, input]) => problemOf(name, input, inputs[name]));

/** Problems at named inputs: those of each by itself, or where there are none, of one against another. */
export const checkInputs = (calculator: AnyCalculator, inputs: Inputs): InputProblem[] => {
  const problems = checkEach(calculator, inputs);
  return problems.length > 0 ? problems : calculator.relate(inputs as InputsOf<never>);
};
