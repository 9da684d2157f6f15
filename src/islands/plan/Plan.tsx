/** The plan: the gate first, one set of facts, one picture, what the numbers say, and the sheet. */
import { calculator as frame } from '#content/interface.json';
import { newPlan, type Plan as PlanData } from '#core/plan/facts.ts';
import { Each } from './Each.tsx';
import { Facts } from './Facts.tsx';
import { Gate } from './Gate.tsx';
import { KeptNote } from './kept/KeptNote.tsx';
import { KeptPlans } from './kept/KeptPlans.tsx';
import { useKept } from './kept/useKept.ts';
import { Picture } from './Picture.tsx';
import { SavePdf } from './SavePdf.tsx';
import { Sheet } from './Sheet.tsx';
import { Traffic, Worst } from './Traffic.tsx';
import { usePlan } from './usePlan.ts';
import { calledHere, fillIn, type PlanProps } from './words.ts';

export default function Plan(props: PlanProps) {
  const { words } = props;
  const state = usePlan(words);
  const { good, problems, plan } = state;
  const kept = useKept({ plan, put: state.open, rename: (name) => state.change({ name }), blank: () => newPlan(words.newName, words.newLimb) });
  const openDemo = async (): Promise<void> => {
    const { default: demo } = await import('#content/plan/demo.json');
    kept.withDesk((desk) => void desk.look(demo as unknown as PlanData));
  };
  return (
    <div class="plan">
      <div class="no-print">
        {plan.demo && <p class="example-words">{words.invented}</p>}
        <p class="actions needs-script">
          {!plan.demo && <button type="button" onClick={() => void openDemo()}>{words.demo}</button>}
          {kept.state.looks && <button type="button" onClick={() => kept.withDesk((desk) => void desk.back())}>{words.demoBack}</button>}
        </p>
        <KeptNote kept={kept} />
        <Gate props={props} state={state} />
        <div class="calculator">
          <div class="result">
            {good && <Picture props={props} state={state} good={good} />}
            {good && <Worst props={props} state={state} />}
            {problems.length > 0 && <p class="answer-none">{fillIn(words.wants, { count: problems.length })}</p>}
          </div>
          <div class="work">
            <Facts props={props} state={state} />
          </div>
        </div>
        <section id="answer">
          <h2>{words.parts.answer}</h2>
          <Traffic props={props} state={state} />
          <p class="soft">{frame.statement}</p>
        </section>
        <Each props={props} state={state} />
      </div>
      {good && (
        <section>
          <div class="no-print">
            <h2>{words.parts.sheet}</h2>
            <p>{words.sheet.say}</p>
            <SavePdf props={props} state={state} />
          </div>
          <Sheet props={props} state={state} />
        </section>
      )}
      <KeptPlans kept={kept} called={(name) => calledHere(props, name)} />
    </div>
  );
}
