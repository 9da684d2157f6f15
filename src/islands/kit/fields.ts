/**
 * The fields of a calculator as the reader fills them: text as typed, the value it reads as, how it was got. Pure: text
 * in, fields out. What cannot be read keeps its text, so that nothing entered is lost.
 */
import type { AnyCalculator, AnyInput, Got, GotSet, InputProblem } from '#core/kit/calculator.ts';
import type { Inputs } from '#core/kit/outcome.ts';
import { readList, readQuantity } from '#core/kit/read.ts';
import { fieldText } from '#core/kit/show.ts';
import type { UnitSystem } from '#core/kit/units.ts';
import { diameterFromGirth, girthFromDiameter } from '#core/formulas/girth.ts';

/** `example`: the figure is still the example's, untouched. */
export type Field = { text: string; value: Inputs[string] | undefined; problem: string | null; got: Got; girth: boolean; example?: boolean };
export type Fields = { readonly [name: string]: Field };

const inputsOf = (calculator: AnyCalculator): [string, AnyInput][] => Object.entries(calculator.inputs as { [name: string]: AnyInput });

/** Whether the field asks how the figure was got. */
export const asksGot = (input: AnyInput): boolean => input.kind !== 'choice' && input.tolerance !== null && !('label' in input.tolerance);

const shown = (input: AnyInput, value: Inputs[string] | undefined, girth: boolean, system: UnitSystem): string => {
  if (value === null || value === undefined) return '';
  if (input.kind === 'choice') return String(value);
  const one = (n: number): string => fieldText(input.unit, girth ? girthFromDiameter(n) : n, system);
  return typeof value === 'number' ? one(value) : (value as readonly number[]).map(one).join(' ');
};

/** The value a text reads as, or the id of what is wrong. */
export const readField = (input: AnyInput, text: string, girth: boolean, system: UnitSystem): Pick<Field, 'value' | 'problem'> => {
  if (input.kind === 'choice') return input.options.includes(text) ? { value: text, problem: null } : { value: undefined, problem: 'notChoice' };
  if (text.trim() === '' && input.optional) return { value: null, problem: null };
  const reads = input.kind === 'list' ? readList(text, input.unit, system) : [readQuantity(text, input.unit, system)];
  const wrong = reads.find((r) => r.kind === 'problem');
  if (wrong) return { value: undefined, problem: wrong.problem };
  const values = reads.map((r) => (r.kind === 'value' ? r.value : 0)).map((n) => (girth ? diameterFromGirth(n) : n));
  return { value: input.kind === 'list' ? values : (values[0] as number), problem: null };
};

const gotNamed = (got: GotSet, name: string): Got => (typeof got === 'string' ? got : (got[name] ?? 'judged'));

/** Fields that hold these inputs; `texts` keeps what a link brought that could not be read. */
export const fieldsFrom = (calculator: AnyCalculator, inputs: Inputs, got: GotSet, system: UnitSystem, texts: { readonly [name: string]: string } = {}, problems: readonly InputProblem[] = []): Fields =>
  Object.fromEntries(
    inputsOf(calculator).map(([name, input]): [string, Field] => {
      const problem = problems.find((p) => p.input === name)?.problem ?? null;
      const value = inputs[name];
      const text = problem === null ? shown(input, value, false, system) : (texts[name] ?? '');
      return [name, { text, value: problem === null ? value : undefined, problem, got: gotNamed(got, name), girth: false }];
    }),
  );

export const exampleFields = (calculator: AnyCalculator, system: UnitSystem): Fields =>
  Object.fromEntries(
    Object.entries(fieldsFrom(calculator, Object.fromEntries(inputsOf(calculator).map(([name, input]) => [name, input.example])), calculator.exampleGot, system))
      .map(([name, field]) => [name, { ...field, example: true }]),
  );

/** What is entered so far: values that could be read, and a problem for each that could not. */
export const entered = (fields: Fields): { inputs: Inputs; got: GotSet; problems: InputProblem[] } => {
  const all = Object.entries(fields);
  return {
    inputs: Object.fromEntries(all.map(([name, f]) => [name, f.value ?? null])),
    got: Object.fromEntries(all.map(([name, f]) => [name, f.got])),
    problems: all.flatMap(([input, f]) => (f.problem === null ? [] : [{ input, problem: f.problem, values: {} }])),
  };
};

/** The same figures in the other unit system; what could not be read keeps its text. */
export const inSystem = (calculator: AnyCalculator, fields: Fields, system: UnitSystem): Fields =>
  Object.fromEntries(
    inputsOf(calculator).map(([name, input]): [string, Field] => {
      const field = fields[name] as Field;
      return [name, field.problem === null ? { ...field, text: shown(input, field.value, field.girth, system) } : field];
    }),
  );

/** What a link should hold: values, and the text itself where it could not be read, so that a reload brings it back. */
export const forLink = (fields: Fields): Inputs =>
  Object.fromEntries(Object.entries(fields).map(([name, f]) => [name, f.problem === null ? (f.value ?? null) : f.text]));

export const withText = (input: AnyInput, field: Field, text: string, system: UnitSystem): Field => ({ ...field, text, ...readField(input, text, field.girth, system), example: false });
export const withValue = (input: AnyInput, field: Field, value: number | string, system: UnitSystem): Field => ({ ...field, value, problem: null, text: shown(input, value, field.girth, system), example: false });

/** The same diameter said as girth, or back; a text that could not be read is read anew as the other. */
export const withGirth = (input: AnyInput, field: Field, girth: boolean, system: UnitSystem): Field =>
  field.problem === null
    ? { ...field, girth, text: shown(input, field.value, girth, system) }
    : { ...field, girth, ...readField(input, field.text, girth, system) };
