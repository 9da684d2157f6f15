/** One input: label, hint, the figure with its unit, how it was got, and what is wrong with it. */
import type { ComponentChildren } from 'preact';
import { calculator as frame, problems as problemWords } from '#content/interface.json';
import type { AnyInput, Got, InputProblem, Values } from '#core/kit/calculator.ts';
import { fieldText, showValue } from '#core/kit/show.ts';
import { faceOf, type UnitSystem } from '#core/kit/units.ts';
import { Choice, fewest } from './Choice.tsx';
import { asksGot } from './fields.ts';
import { plain, Say, type Speaker } from './Say.tsx';
import type { CalculatorState } from './useCalculator.ts';

/** The example as it would be typed; nothing where it leaves the field empty. */
const exampleText = (input: AnyInput | undefined, system: UnitSystem): string => {
  if (!input || input.kind === 'choice' || input.example === null) return '';
  const { unit, example } = input;
  return (typeof example === 'number' ? [example] : example).map((one) => fieldText(unit, one, system)).join(' ');
};

/** The message for a problem, in the label's own words. */
export const problemText = (speaker: Speaker, state: FieldState, problem: InputProblem): string => {
  const { words, calculator } = speaker;
  const input = calculator.inputs[problem.input] as AnyInput | undefined;
  const id = problem.problem === 'missing' && input?.kind === 'choice' ? 'notChoice' : problem.problem;
  const text = words.problems[id] ?? problemWords[id as keyof typeof problemWords] ?? problemWords.notNumber;
  const like = exampleText(input, state.system);
  const bound = (value: Values[string] | undefined): string =>
    typeof value === 'number' && input && input.kind !== 'choice' ? showValue({ unit: input.unit, step: input.kind === 'quantity' ? input.step : undefined }, value, state.system) : String(value ?? '');
  const filled = text
    .replaceAll('{label}', words.inputs[problem.input]?.label ?? '')
    .replaceAll('{text}', state.fields[problem.input]?.text ?? '')
    .replaceAll('{mend}', like === '' ? frame.orEmpty : frame.like.replace('{example}', like))
    .replace(/\{(min|max)\}/g, (_, end: string) => bound(problem.values[end]))
    .replace(/\{(shortest|longest)\}/g, (_, end: string) => String(problem.values[end] ?? ''));
  return plain(speaker, filled, problem.values, state.system);
};

/** What a field needs of the state that holds it. */
export type FieldState = Pick<CalculatorState, 'system' | 'fields' | 'outcome' | 'setText' | 'setGot' | 'setGirth'>;
export type Part = { speaker: Speaker; state: FieldState; name: string };
/** A usual value: the text it puts in the field, and how it is called. */
export type Step = { text: string; label: string };

const Steps = ({ state, name, steps, label }: Pick<Part, 'state' | 'name'> & { steps: readonly Step[]; label: string }) => (
  <select
    class="steps"
    aria-label={label}
    onChange={(e) => {
      if (e.currentTarget.value) state.setText(name, e.currentTarget.value);
    }}
  >
    <option value="">{frame.steps}</option>
    {steps.map(({ text, label: called }) => <option key={text} value={text} selected={state.fields[name]?.text === text}>{called}</option>)}
  </select>
);

const Got = ({ speaker, state, name, hint }: Part & { hint: string }) => {
  const now = state.fields[name]?.got ?? 'judged';
  const said = speaker.words.inputs[name]?.got ?? { judged: frame.byEye, measured: frame.measured };
  const options: [Got, string][] = [['judged', said.judged], ['measured', said.measured], ...(now === 'exact' ? [['exact', frame.exact] as [Got, string]] : [])];
  return (
    <fieldset class="got">
      <legend class="only-read">{hint}</legend>
      {options.map(([got, word]) => (
        <label key={got}>
          <input type="radio" name={`${name}-got`} value={got} checked={now === got} onChange={() => state.setGot(name, got)} />
          <span>{word}</span>
        </label>
      ))}
    </fieldset>
  );
};

const Figure = ({ speaker, state, name, input, described }: Part & { input: Exclude<AnyInput, { kind: 'choice' }>; described: string }) => {
  const field = state.fields[name];
  const symbol = faceOf(input.unit, state.system).symbol;
  const words = speaker.words.inputs[name];
  return (
    <>
      <span class="field-input">
        <input
          id={`in-${name}`}
          type="text"
          inputMode={input.kind === 'quantity' && input.min >= 0 && state.system === 'metric' ? 'decimal' : undefined}
          autocomplete="off"
          value={field?.text ?? ''}
          aria-invalid={field?.problem ? true : undefined}
          aria-describedby={described}
          onInput={(e) => state.setText(name, e.currentTarget.value)}
        />
        {symbol !== '' && <span class="unit">{symbol}</span>}
      </span>
      {input.girth && (
        <fieldset class="got">
          <legend class="only-read">{`${words?.label}: ${frame.givenAs}`}</legend>
          {[false, true].map((girth) => (
            <label key={String(girth)}>
              <input type="radio" name={`${name}-as`} value={girth ? 'girth' : 'diameter'} checked={field?.girth === girth} onChange={() => state.setGirth(name, girth)} />
              <span>{girth ? frame.girth : frame.diameter}</span>
            </label>
          ))}
        </fieldset>
      )}
      {asksGot(input) && <Got speaker={speaker} state={state} name={name} hint={`${words?.label}: ${frame.got}`} />}
    </>
  );
};

/** `aid`: what helps to fill the field, as a measuring instrument would. */
export const Field = ({ speaker, state, name, steps, aid }: Part & { steps?: readonly Step[] | undefined; aid?: ComponentChildren }) => {
  const input = speaker.calculator.inputs[name] as AnyInput;
  const words = speaker.words.inputs[name];
  const problem = state.outcome.kind === 'problems' ? state.outcome.problems.find((p) => p.input === name) : undefined;
  const radios = input.kind === 'choice' && input.options.length <= fewest;
  const body = (
    <>
      {words?.hint && <p class="hint" id={`hint-${name}`}><Say speaker={speaker} text={words.hint} /></p>}
      <div class="field-row">
        {input.kind === 'choice'
          ? <Choice speaker={speaker} state={state} name={name} options={input.options} />
          : <Figure speaker={speaker} state={state} name={name} input={input} described={[words?.hint ? `hint-${name}` : '', `error-${name}`].join(' ').trim()} />}
        {aid}
        {steps && <Steps state={state} name={name} steps={steps} label={`${words?.label}: ${frame.steps}`} />}
      </div>
      <div id={`error-${name}`} aria-live="polite">
        {problem && <p class="field-error">{problemText(speaker, state, problem)}</p>}
      </div>
    </>
  );
  const css = problem ? 'field wrong' : 'field';
  return radios ? (
    <fieldset class={css}><legend>{words?.label ?? name}</legend>{body}</fieldset>
  ) : (
    <div class={css}><label for={`in-${name}`}>{words?.label ?? name}</label>{body}</div>
  );
};
