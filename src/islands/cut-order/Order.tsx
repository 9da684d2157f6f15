/** The cuts as numbered steps to take to the tree, for this support and this thickness. */
import type { Choice, Quantity } from '#core/kit/outcome.ts';
import { Say, type Speaker } from '../kit/Say.tsx';
import type { CalculatorState } from '../kit/useCalculator.ts';

type Words = { title: string } & Readonly<Record<string, string | readonly string[]>>;
type Props = { words: Words; speaker: Speaker; state: CalculatorState };

export const Order = ({ words, speaker, state }: Props) => {
  if (state.outcome.kind !== 'answer' || state.predicts) return null;
  const { outputs } = state.outcome;
  const sequence = (outputs['sequence'] as Choice).value;
  const figure = (name: string): number => {
    const found = outputs[name] as Quantity;
    return found.planOn ?? found.value;
  };
  const values = { firstCutDepth: figure('firstCutDepth'), readyAt: figure('readyAt'), stepOffset: figure('stepOffset') };
  const steps = (of: string) => <ol>{(words[of] as readonly string[]).map((step) => <li key={step}><Say speaker={speaker} text={step} values={values} /></li>)}</ol>;
  return (
    <section>
      <h2>{words.title}</h2>
      {steps(sequence)}
      {sequence === 'twoCuts' && <><h3>{words['farOut'] as string}</h3>{steps('stepCut')}</>}
    </section>
  );
};
