/** A calculator asked at build: every mistake stops the build in words. */
import type { AnyOutput, GotSet, QuantityOutput } from '#core/kit/calculator.ts';
import type { Answer, Inputs, Quantity } from '#core/kit/outcome.ts';
import { calculator as find, evaluate, example } from '#core/registry.ts';

export type Asked = { calculator: string; inputs?: Inputs | undefined; got?: GotSet | undefined };

/** Inputs over the example's. Throws for a name the calculator does not have. */
export const inputsOver = (id: string, inputs: Inputs = {}): Inputs => {
  const all = example(id);
  for (const name of Object.keys(inputs)) if (!(name in all)) throw new Error(`${id} has no input "${name}"; it has ${Object.keys(all).join(', ')}`);
  return { ...all, ...inputs };
};

export const answerOf = ({ calculator, inputs, got = 'measured' }: Asked): { inputs: Inputs; outcome: Answer } => {
  const given = inputsOver(calculator, inputs);
  const outcome = evaluate(calculator, given, got);
  if (outcome.kind !== 'answer') throw new Error(`${calculator} gives no answer for ${JSON.stringify(given)}: ${JSON.stringify(outcome)}`);
  return { inputs: given, outcome };
};

export const resultOf = ({ output: name, ...asked }: Asked & { output: string }): { output: QuantityOutput; figure: Quantity | null } => {
  const { outcome } = answerOf(asked);
  const output = find(asked.calculator)?.outputs[name] as AnyOutput | undefined;
  if (!output || output.kind !== 'quantity') throw new Error(`${asked.calculator} has no quantity "${name}"`);
  return { output, figure: outcome.outputs[name] as Quantity | null };
};
