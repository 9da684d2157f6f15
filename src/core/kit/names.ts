/** How a named figure of a calculator is shown: an input, an output or an intermediate figure of its working. */
import type { AnyCalculator, AnyInput, AnyOutput } from './calculator.ts';
import type { Direction, Shown } from './show.ts';

export type NamedFigure = Shown & { direction: Direction };

/** Null for a choice. Throws for a name that the calculator does not have. */
export const figureNamed = (calculator: AnyCalculator, name: string): NamedFigure | null => {
  const output = calculator.outputs[name] as AnyOutput | undefined;
  const input = calculator.inputs[name] as AnyInput | undefined;
  if (output?.kind === 'quantity') {
    const { unit, step, imperialStep, protects } = output;
    return { unit, step, imperialStep, direction: protects === 'both' ? 'nearest' : protects };
  }
  if (input?.kind === 'quantity' || input?.kind === 'list') return { unit: input.unit, direction: 'nearest' };
  if (input || output) return null;
  const middle = calculator.middle[name];
  if (!middle) throw new Error(`${calculator.id} has no figure named "${name}"`);
  return typeof middle === 'string' ? { unit: middle, direction: 'nearest' } : { unit: middle.unit, direction: middle.protects };
};
