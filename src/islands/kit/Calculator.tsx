/** The body of every calculator page: answer and drawing in view, inputs, findings, working, links. */
import type { ComponentChildren } from 'preact';
import { calculator as frame, settings as settingWords } from '#content/interface.json';
import type { Inputs } from '#core/kit/outcome.ts';
import { Answer, Findings, More } from './Answer.tsx';
import { Field, problemText, type Step } from './Field.tsx';
import { FromPlan } from './FromPlan.tsx';
import { Kept, Rested } from './Kept.tsx';
import { labelOf, plain, type Speaker } from './Say.tsx';
import { ShareBar } from './ShareBar.tsx';
import type { CalculatorState, Good } from './useCalculator.ts';
import { useWide } from './Views.tsx';
import { Working } from './Working.tsx';
import type { IslandProps } from './words.ts';

/** What a drawing is given: the last good state (quiet while a field is in trouble), its description, and a way back. */
export type Drawn = { good: Good; quiet: boolean; description: string; onInput: CalculatorState['setInputs'] };

type Props = IslandProps & {
  state: CalculatorState;
  drawing: (drawn: Drawn) => ComponentChildren;
  /** Whether it asks first for wires within reach: every calculator of where things are. */
  wire?: boolean;
  /** Usual values to choose from beside typing, by input. */
  steps?: Readonly<Record<string, readonly Step[]>>;
  /** Whether a field is shown, as the others stand; all, unless said. */
  shows?: (name: string, inputs: Inputs) => boolean;
  /** Figures that must be the reader's own: said while they are still the example's. */
  own?: readonly string[];
  /** Whether the last drawing stays, quiet, where there is no answer; not where its figure could be taken for one. */
  quietOutside?: boolean;
  /** What helps to fill a field, as a measuring instrument would. */
  aid?: (name: string) => ComponentChildren;
  /** What stands after the working: what this calculator keeps. */
  after?: ComponentChildren;
};

const clearance = 'line-clearance';

const Wire = ({ base, titles }: { base: string; titles: Readonly<Record<string, string>> }) => (
  <p class="finding caution wire">
    {clearance in titles ? <a href={`${base}calculators/${clearance}/`}>{frame.wire}</a> : <span>{frame.wire}</span>}
  </p>
);

/** What stands where the answer will: the learner writes it down first. */
const Predict = ({ words, state }: { words: IslandProps['words']; state: CalculatorState }) => (
  <div class="predict">
    <p>{frame.predict}</p>
    <ul>{state.calculator.lead.map((name) => <li key={name}>{labelOf(words, name)}</li>)}</ul>
    <p class="no-print"><button type="button" onClick={state.showAnswer}>{frame.showAnswer}</button></p>
  </div>
);

export const Calculator = ({ words, base, titles = {}, state, drawing, wire = true, steps = {}, shows = () => true, own = [], quietOutside = true, aid, after }: Props) => {
  const speaker: Speaker = { calculator: state.calculator, words, base };
  const isWide = useWide();
  const { outcome, good, fields, system, general, linkUnits, isExample, predicts } = state;
  const described = good
    ? plain(speaker, words.drawing, {
        ...good.inputs as Record<string, number | string>,
        ...Object.fromEntries(Object.entries(good.outcome.outputs).flatMap(([k, f]) => (f === null ? [] : [[k, 'also' in f ? f.value : (f.planOn ?? f.value)]]))),
      }, state.system)
    : '';
  const troubled = outcome.kind === 'problems';
  /** A field in trouble is shown wherever it is: there is no answer until it is mended. */
  const asked = (name: string): boolean => shows(name, state.inputs) || (troubled && outcome.problems.some(({ input }) => input === name));
  const drawn = good && !predicts && (quietOutside || outcome.kind !== 'outside');
  const stops = outcome.kind === 'answer' && !predicts ? outcome.findings.filter(({ level }) => level === 'stop').length : 0;
  const ownLeft = isExample ? '' : own.filter((name) => fields[name]?.example).map((name) => words.inputs[name]?.label ?? name).join('; ');
  return (
    <div class="calculator">
      <div class="result">
        <FromPlan base={base} />
        <div class="seen">
          <p class="link-words">{`${frame.reading} `}<span class="soft">{frame.readingFailed}</span></p>
          <div class="held">
            <Kept on={[outcome, good, system, isExample, predicts, ownLeft]}>
              {() => (
                <>
                  {isExample && <p class="example-words">{frame.example}</p>}
                  {predicts ? <Predict words={words} state={state} /> : <Answer speaker={speaker} state={state} />}
                  {!predicts && ownLeft !== '' && <p class="example-words">{`${frame.stillExample} ${ownLeft}`}</p>}
                </>
              )}
            </Kept>
            {drawn && <figure class={outcome.kind === 'answer' ? 'drawing' : 'drawing quiet'}>{drawing({ good, quiet: outcome.kind !== 'answer', description: described, onInput: state.setInputs })}</figure>}
            {stops > 0 && <p class="stop-count" data-no-print aria-hidden="true">{(stops === 1 ? frame.oneStop : frame.stops).replace('{count}', String(stops))}</p>}
          </div>
        </div>
        <div class="held stops">
          <Kept on={[outcome, system, predicts]}>{() => !predicts && <Findings speaker={speaker} state={state} only="stop" />}</Kept>
        </div>
      </div>
      <div class="work held">
        <Rested now={isWide || !state.byHandle}>
          <Kept on={[fields, outcome, system, general, linkUnits, predicts, aid]}>
            {() => (
              <>
                {general.map((p) => <p class="field-error" role="alert" key={p.problem}>{problemText(speaker, state, p)}</p>)}
                {linkUnits && (
                  <p class="link-units">{`${frame.units.replace('{system}', settingWords[linkUnits])} `}<button type="button" onClick={state.keepUnits}>{frame.keepUnits}</button></p>
                )}
                <h2>{frame.inputs}</h2>
                {wire && <Wire base={base} titles={titles} />}
                <form onSubmit={(e) => e.preventDefault()} autocomplete="off">
                  {Object.keys(state.calculator.inputs).filter(asked).map((name) => (
                    <Kept key={name} on={[fields[name], system, troubled ? outcome : null, aid]}>
                      {() => <Field speaker={speaker} state={state} name={name} steps={steps[name]} aid={aid?.(name)} />}
                    </Kept>
                  ))}
                </form>
                {troubled && <p><button type="button" onClick={state.fillFromExample}>{frame.fill}</button></p>}
                {!predicts && (
                  <Rested>
                    <Findings speaker={speaker} state={state} only="others" />
                    <More speaker={speaker} state={state} />
                    <Working speaker={speaker} state={state} />
                  </Rested>
                )}
              </>
            )}
          </Kept>
        </Rested>
        {after}
        <Kept on={[fields, outcome, good, system, predicts]}>{() => <Rested><ShareBar speaker={speaker} state={state} titles={titles} /></Rested>}</Kept>
        <p class="soft">{frame.statement}</p>
      </div>
    </div>
  );
};
