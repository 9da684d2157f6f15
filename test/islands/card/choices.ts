/** Cards as readers might choose them, out of a seed. */
import { type BlockId, blockIds, type CardChoices, type CardInputs, cardFields, noCalls } from '#core/card/fields.ts';
import type { AnyInput } from '#core/kit/calculator.ts';

/** @param fixed what is not left to chance */
export const anyChoices = (random: () => number, fixed: { blocks?: readonly BlockId[]; inputs?: Partial<CardInputs> } = {}): CardChoices => {
  const between = (input: { min: number; max: number }): number => Number((input.min + random() ** 2 * (input.max - input.min)).toFixed(2));
  const all = cardFields.inputs as { readonly [name: string]: AnyInput };
  const inputs = Object.fromEntries(Object.entries(all).map(([name, input]) => [
    name,
    input.kind === 'choice' ? input.options[Math.floor(random() * input.options.length)]
    : input.kind === 'quantity' ? between(input)
    : Array.from({ length: 1 + Math.floor(random() * input.longest) }, () => between(input)),
  ])) as unknown as CardInputs;
  const magnitude = inputs.magnitude as number;
  const own = random() < 0.3;
  const size = fixed.inputs?.size ?? inputs.size;
  const shuffled = blockIds.filter(() => random() < 0.4);
  return {
    blocks: fixed.blocks ?? (size === 'id1' ? shuffled.slice(0, 2) : shuffled.length === 0 ? ['lines'] : shuffled),
    inputs: {
      ...inputs,
      uncertainty: Number((random() * magnitude).toFixed(2)),
      ownDistance: own ? inputs.ownDistance : null,
      ownVoltage: own ? inputs.ownVoltage : null,
      ...fixed.inputs,
    },
    calls: random() < 0.5 ? noCalls : { emergency: '112', operator: '0800 123 456' },
  };
};
