/** The figures to plan on, large; every output with its range; what the figures say. */
import { calculator as frame, levels } from '#content/interface.json';
import type { AnyOutput, QuantityOutput } from '#core/kit/calculator.ts';
import { beyondGuess, type Choice, type Finding, type Quantity } from '#core/kit/outcome.ts';
import { show, showRange } from '#core/kit/show.ts';
import type { UnitSystem } from '#core/kit/units.ts';
import { Both, labelOf, Say, type Speaker } from './Say.tsx';
import type { CalculatorState, Good } from './useCalculator.ts';

const both = (text: (system: UnitSystem) => string) => <Both metric={text('metric')} imperial={text('imperial')} />;

type One = { speaker: Speaker; good: Good; name: string };

const FigureOf = ({ speaker, good, name }: One) => {
  const output = speaker.calculator.outputs[name] as AnyOutput;
  const figure = good.outcome.outputs[name] ?? null;
  if (figure === null) return <span>{good.outcome.outside[name] ? frame.outsideOne : speaker.words.outputs[name]?.none ?? frame.none}</span>;
  if (output.kind === 'choice') return <span>{speaker.words.outputs[name]?.choices?.[(figure as Choice).value] ?? (figure as Choice).value}</span>;
  return both((system) => show(output, figure as Quantity, system));
};

const RangeOf = ({ speaker, good, name }: One) => {
  const output = speaker.calculator.outputs[name] as AnyOutput;
  const figure = good.outcome.outputs[name] ?? null;
  const passed = good.outcome.outside[name];
  if (passed) return <Say speaker={speaker} text={speaker.words.outside[passed.limit] ?? passed.limit} values={passed.values} />;
  if (figure === null) return null;
  if (output.kind === 'choice') {
    const { also } = figure as Choice;
    return also.length === 0 ? null : <span>{frame.also.replace('{others}', also.map((o) => speaker.words.outputs[name]?.choices?.[o] ?? o).join(', '))}</span>;
  }
  const { low, high } = figure as Quantity;
  if (low === high || output.protects === 'both') return null;
  return both((system) => frame.range.replace('{range}', showRange(output as QuantityOutput, low, high, system)));
};

export const Answer = ({ speaker, state }: { speaker: Speaker; state: CalculatorState }) => {
  const { outcome, good } = state;
  if (outcome.kind === 'problems') {
    const count = outcome.problems.length;
    return <p class="answer-none">{count === 1 ? frame.noAnswer : frame.noAnswerMany.replace('{count}', String(count))}</p>;
  }
  if (outcome.kind === 'outside') {
    return (
      <div class="finding stop" role="alert">
        <p class="finding-word">{frame.outside}</p>
        <p><Say speaker={speaker} text={speaker.words.outside[outcome.limit] ?? outcome.limit} values={outcome.values} /></p>
      </div>
    );
  }
  return (
    <dl class="answer" aria-live="polite" aria-atomic="true">
      {speaker.calculator.lead.map((name) => (
        <div class="answer-item" key={name}>
          <dt class="answer-label">{labelOf(speaker.words, name)}</dt>
          <dd class="answer-figure"><FigureOf speaker={speaker} good={good as Good} name={name} /></dd>
          <dd class="answer-range"><RangeOf speaker={speaker} good={good as Good} name={name} /></dd>
        </div>
      ))}
    </dl>
  );
};

/** Outputs that are not shown large. */
export const More = ({ speaker, state }: { speaker: Speaker; state: CalculatorState }) => {
  const rest = Object.keys(speaker.calculator.outputs).filter((name) => !speaker.calculator.lead.includes(name));
  if (state.outcome.kind !== 'answer' || !state.good || rest.length === 0) return null;
  const good = state.good;
  return (
    <section class="more">
      <h2>{frame.more}</h2>
      <dl class="more-list">
        {rest.map((name) => (
          <div key={name}>
            <dt>{labelOf(speaker.words, name)}</dt>
            <dd><strong><FigureOf speaker={speaker} good={good} name={name} /></strong> <span class="answer-range"><RangeOf speaker={speaker} good={good} name={name} /></span></dd>
          </div>
        ))}
      </dl>
    </section>
  );
};

const FindingLine = ({ speaker, finding }: { speaker: Speaker; finding: Finding }) => (
  <div class={`finding ${finding.level}`} role={finding.level === 'stop' ? 'alert' : undefined}>
    <p>
      <span class="finding-word">{levels[finding.level]}</span>
      <Say speaker={speaker} text={finding.id === beyondGuess ? frame.beyondGuess : (speaker.words.findings[finding.id] ?? finding.id)} values={finding.values} />
    </p>
    {finding.guess && finding.id !== beyondGuess && finding.level !== 'note' && <p>{frame.guess}</p>}
  </div>
);

export const Findings = ({ speaker, state, only }: { speaker: Speaker; state: CalculatorState; only?: 'stop' | 'others' }) => {
  if (state.outcome.kind !== 'answer') return null;
  const some = state.outcome.findings.filter((f) => only === undefined || (f.level === 'stop') === (only === 'stop'));
  return (
    <div class="findings" aria-live="polite">
      {some.map((finding) => <FindingLine key={finding.id} speaker={speaker} finding={finding} />)}
    </div>
  );
};
