/** The working, step by step, as a trainer would write it on a board; last, what the guesses add. */
import { Fragment } from 'preact';
import { calculator as frame } from '#content/interface.json';
import { allowing, type Step } from '#core/kit/outcome.ts';
import { Figure, labelOf, Say, type Speaker } from './Say.tsx';
import type { CalculatorState } from './useCalculator.ts';

const Line = ({ speaker, step }: { speaker: Speaker; step: Step }) => {
  const { name, value } = step.result;
  const words = speaker.words.working[step.id];
  if (step.id === allowing) {
    return (
      <li>
        <span class="working-title">{frame.allowingTitle}</span>
        <span class="working-numbers">
          {Object.entries(step.values).map(([input, at], i) => (
            <Fragment key={input}>{`${i === 0 ? '' : ', '}${labelOf(speaker.words, input)} `}<Figure speaker={speaker} name={input} value={at} fine /></Fragment>
          ))}
        </span>
        <span class="working-result">{`${labelOf(speaker.words, name)} → `}<Figure speaker={speaker} name={name} value={value} fine={false} /></span>
      </li>
    );
  }
  return (
    <li>
      <span class="working-title">{words?.title ?? labelOf(speaker.words, name)}</span>
      <span class="working-formula"><Say speaker={speaker} text={words?.formula ?? ''} /></span>
      <span class="working-numbers"><Say speaker={speaker} text={words?.numbers ?? ''} values={step.values} fine /></span>
      <span class="working-result">{'= '}<Figure speaker={speaker} name={name} value={value} fine /></span>
    </li>
  );
};

export const Working = ({ speaker, state }: { speaker: Speaker; state: CalculatorState }) => {
  if (state.outcome.kind !== 'answer') return null;
  return (
    <section>
      <h2>{frame.working}</h2>
      <ol class="working">
        {state.outcome.working.map((step, i) => <Line key={`${i}-${step.id}`} speaker={speaker} step={step} />)}
      </ol>
    </section>
  );
};
