/** Fields of the plan: a figure with how it was got, a choice, a bearing as on a clock. */
import { useState } from 'preact/hooks';
import { calculator as frame } from '#content/interface.json';
import type { ChoiceInput, QuantityInput } from '#core/kit/calculator.ts';
import { readQuantity } from '#core/kit/read.ts';
import { fieldText, showValue } from '#core/kit/show.ts';
import { faceOf, type UnitSystem } from '#core/kit/units.ts';
import type { Fact } from '#core/plan/facts.ts';
import type { Part } from '#core/plan/feed.ts';
import { longestText } from '#core/plan/names.ts';
import type { PlanProblem } from '#core/plan/problems.ts';
import { plain, Say } from '../kit/Say.tsx';
import { calledHere, clockText, fillIn, type PlanProps, speakerOf } from './words.ts';

type FigureProps = {
  props: PlanProps;
  name: string;
  /** Unique on the page. */
  id: string;
  input: QuantityInput;
  fact: Fact;
  system: UnitSystem;
  problem: PlanProblem | undefined;
  onFact: (fact: Fact) => void;
};

const asks = (input: QuantityInput): boolean => input.tolerance !== null && 'judged' in input.tolerance;

/** A figure as typed: what can be read is the value; what cannot keeps its text. */
const typed = (text: string, { input, fact, system }: FigureProps): Fact => {
  if (text.trim() === '') return { value: null, got: fact.got };
  const read = readQuantity(text, input.unit, system);
  return read.kind === 'value' ? { value: read.value, got: fact.got } : { value: null, got: fact.got, text };
};

const problemText = ({ props, name, input, system, fact }: FigureProps, { problem, values }: PlanProblem): string => {
  const words: { readonly [id: string]: string } = props.words.problems;
  const read = fact.text === undefined ? null : readQuantity(fact.text, input.unit, system);
  const bound = (end: string): string => showValue({ unit: input.unit, step: input.step }, values[end] as number, system);
  const here = words[read?.kind === 'problem' ? read.problem : problem];
  if (here !== undefined) return fillIn(here, { text: fact.text ?? '', ...('min' in values ? { min: bound('min'), max: bound('max') } : {}) });
  // Against another fact: the words of the calculator that knows of it, with what the field is called here.
  const part = (Object.keys(props.parts) as Part[]).find((one) => problem in props.parts[one].words.problems);
  return part ? plain(speakerOf(props, part), props.parts[part].words.problems[problem]!.replaceAll('{label}', calledHere(props, name)), values, system) : problem;
};

export const FigureField = (of: FigureProps) => {
  const { props, name, id, input, fact, system, problem, onFact } = of;
  const words = props.words.facts[name as keyof typeof props.words.facts] as { label: string; hint?: string };
  // What was typed stands as long as it reads as the value: “3.” is 3, and not yet done.
  const [draft, setDraft] = useState<{ text: string; system: UnitSystem } | null>(null);
  const stands = draft && draft.system === system && JSON.stringify(typed(draft.text, of)) === JSON.stringify(fact);
  const text = stands ? draft.text : (fact.text ?? (fact.value === null ? '' : fieldText(input.unit, fact.value, system)));
  const symbol = faceOf(input.unit, system).symbol;
  return (
    <div class={problem ? 'field wrong' : 'field'}>
      <label for={id}>{words.label}</label>
      {words.hint && <p class="hint" id={`${id}-hint`}><Say speaker={speakerOf(props, 'stance')} text={words.hint} /></p>}
      <div class="field-row">
        <span class="field-input">
          <input
            id={id} type="text" maxLength={longestText} inputMode={input.min >= 0 && system === 'metric' ? 'decimal' : undefined} autocomplete="off" value={text}
            aria-invalid={problem ? true : undefined} aria-describedby={`${words.hint ? `${id}-hint ` : ''}${id}-error`}
            onInput={(e) => {
              setDraft({ text: e.currentTarget.value, system });
              onFact(typed(e.currentTarget.value, of));
            }}
          />
          {symbol !== '' && <span class="unit">{symbol}</span>}
        </span>
        {asks(input) && (
          <fieldset class="got">
            <legend class="only-read">{`${words.label}: ${frame.got}`}</legend>
            {([['judged', frame.byEye], ['measured', frame.measured]] as const).map(([got, word]) => (
              <label key={got}>
                <input type="radio" name={`${id}-got`} value={got} checked={fact.got === got} onChange={() => onFact({ ...fact, got })} />
                <span>{word}</span>
              </label>
            ))}
          </fieldset>
        )}
      </div>
      <div id={`${id}-error`} aria-live="polite">{problem && <p class="field-error">{problemText(of, problem)}</p>}</div>
    </div>
  );
};

/** Up to so many stand side by side; more would fill a phone's page. */
const fewest = 2;
type ChoiceProps = { id: string; label: string; input: ChoiceInput; called: { readonly [option: string]: string }; chosen: string; onChoose: (option: string) => void };

export const ChoiceField = ({ id, label, input, called, chosen, onChoose }: ChoiceProps) => {
  // In the order of their names, where there are many; a choice that is not known stays to be seen.
  const options = [...(input.options.includes(chosen) ? [] : [chosen]), ...input.options];
  if (options.length <= fewest) {
    return (
      <fieldset class="field" id={id}>
        <legend>{label}</legend>
        <div class="choices">
          {options.map((option) => (
            <label key={option}>
              <input type="radio" name={id} value={option} checked={option === chosen} onChange={() => onChoose(option)} />
              <span>{called[option] ?? option}</span>
            </label>
          ))}
        </div>
      </fieldset>
    );
  }
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <select id={id} value={chosen} onChange={(e) => onChoose(e.currentTarget.value)}>
        {options.map((option) => <option key={option} value={option} selected={option === chosen}>{called[option] ?? option}</option>)}
      </select>
    </div>
  );
};

const hours = Array.from({ length: 24 }, (_, i) => ((i + 1) * 15) % 360).sort((a, b) => a - b);

/** By clock face, to the half hour; what was dragged between stands as it is. */
export const BearingField = ({ props, id, label, bearing, onTurn }: { props: PlanProps; id: string; label: string; bearing: number; onTurn: (bearing: number) => void }) => {
  const options = hours.includes(bearing % 360) ? hours : [...hours, bearing].sort((a, b) => a - b);
  return (
    <div class="field clock">
      <label for={id}>{label}</label>
      <select id={id} value={String(bearing)} onChange={(e) => onTurn(Number(e.currentTarget.value))}>
        {options.map((at) => <option key={at} value={String(at)} selected={at === bearing}>{clockText(props, at)}</option>)}
      </select>
    </div>
  );
};

export const TextField = ({ id, label, value, type = 'text', onText }: { id: string; label: string; value: string; type?: string; onText: (text: string) => void }) => (
  <div class="field">
    <label for={id}>{label}</label>
    <span class="field-input wide"><input id={id} type={type} maxLength={longestText} autocomplete="off" value={value} onInput={(e) => onText(e.currentTarget.value)} /></span>
  </div>
);
