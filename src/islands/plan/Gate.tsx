/** Eight questions before any figure: a no says what instead. Answered yes, all of them, they fold away. */
import { gates } from '#core/plan/names.ts';
import type { PlanState } from './usePlan.ts';
import type { PlanProps } from './words.ts';

export const Gate = ({ props, state }: { props: PlanProps; state: PlanState }) => {
  const { gate } = props.words;
  const answers = state.plan.gate;
  const questions = (
    <ol class="gate" role="list">
      {gates.map((name) => {
        const { ask, instead, read } = gate.questions[name];
        return (
          <li key={name} id={`gate-${name}`}>
            <fieldset class="field">
              <legend>{ask}</legend>
              <div class="field-row">
                <div class="choices">
                  {(['yes', 'no'] as const).map((answer) => (
                    <label key={answer}>
                      <input type="radio" name={`gate-${name}`} value={answer} checked={answers[name] === answer} onChange={() => state.change({ gate: { ...answers, [name]: answer } })} />
                      <span>{gate[answer]}</span>
                    </label>
                  ))}
                </div>
                <a class="read" href={`${props.base}chapters/${read}/`}>{props.chapters[read]}</a>
              </div>
              {answers[name] === 'no' && <p class="field-error" role="alert">{instead}</p>}
            </fieldset>
          </li>
        );
      })}
    </ol>
  );
  const done = gates.every((name) => answers[name] === 'yes');
  return (
    <section>
      <h2>{gate.title}</h2>
      {done ? <details><summary>{gate.done}</summary>{questions}</details> : <><p>{gate.say}</p>{questions}</>}
    </section>
  );
};
