/** Arbitrary inputs for any calculator, made from its definition: the whole range of each field, its ends and its example. */
import fc from 'fast-check';
import type { AnyCalculator, AnyInput, Got, GotSet } from '#core/kit/calculator.ts';
import type { Inputs } from '#core/kit/outcome.ts';
import { checkInputs } from '#core/kit/problems.ts';

type Numeric = Exclude<AnyInput, { kind: 'choice' }>;
export const inputsOf = (calculator: AnyCalculator): [string, AnyInput][] => Object.entries(calculator.inputs as { [name: string]: AnyInput });

const stepped = (input: Extract<AnyInput, { kind: 'quantity' }>): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: Math.floor((input.max - input.min) / input.step) })
    .map((n) => Math.min(input.max, Number((input.min + n * input.step).toFixed(6))));

const numberIn = (input: Numeric): fc.Arbitrary<number> => {
  const anywhere: fc.Arbitrary<number> = fc.double({ min: input.min, max: input.max, noNaN: true });
  const ends = fc.constantFrom(input.min, input.max);
  const zero = input.min <= 0 && input.max >= 0 ? [fc.constant(0)] : [];
  return input.kind === 'list' ? fc.oneof(anywhere, ends, ...zero) : fc.oneof(anywhere, stepped(input), ...(input.example === null ? [] : [fc.constant(input.example)]), ends, ...zero);
};

const valueFor = (input: AnyInput): fc.Arbitrary<Inputs[string]> => {
  const value: fc.Arbitrary<Inputs[string]> =
    input.kind === 'choice' ? fc.constantFrom(...input.options)
    : input.kind === 'quantity' ? numberIn(input)
    : fc.array(numberIn(input), { minLength: input.shortest, maxLength: input.longest });
  return input.optional ? fc.oneof(value, fc.constant(null)) : value;
};

const record = (calculator: AnyCalculator): fc.Arbitrary<Inputs> =>
  fc.record(Object.fromEntries(inputsOf(calculator).map(([name, input]) => [name, valueFor(input)])));

/** Inputs without problems: as they come, or the example with a few of them changed, so that linked fields leave enough over. */
export const validInputs = (calculator: AnyCalculator): fc.Arbitrary<Inputs> => {
  const names = inputsOf(calculator).map(([name]) => name);
  const example = Object.fromEntries(inputsOf(calculator).map(([name, input]) => [name, input.example]));
  const nearExample = fc.tuple(record(calculator), fc.subarray(names, { maxLength: 3 }))
    .map(([changed, which]): Inputs => ({ ...example, ...Object.fromEntries(which.map((n) => [n, changed[n] as Inputs[string]])) }));
  return fc.oneof(record(calculator), nearExample).filter((inputs) => checkInputs(calculator, inputs).length === 0);
};

const how = fc.constantFrom<Got>('exact', 'measured', 'judged');
/** How the figures were got: one for all, or one for each. */
export const gotSets = (calculator: AnyCalculator): fc.Arbitrary<GotSet> =>
  fc.oneof(how, fc.record(Object.fromEntries(inputsOf(calculator).map(([name]) => [name, how]))));

/** Any text at all, halves of characters included. */
export const anyText = (maxLength: number): fc.Arbitrary<string> =>
  fc.array(fc.oneof(fc.integer({ min: 0, max: 0x7f }), fc.integer({ min: 0, max: 0xffff })), { maxLength }).map((codes) => String.fromCharCode(...codes));
