/** The plan: the gate first, one set of facts, one picture, what the numbers say, and the sheet. */
import { calculator as frame } from '#content/interface.json';
import { newPlan, type Plan as PlanData } from '#core/plan/facts.ts';
import { Kept, Rested } from '../kit/Kept.tsx';
import { Each } from './Each.tsx';
import { Facts } from './Facts.tsx';
import { Gate } from './Gate.tsx';
import { KeptNote } from './kept/KeptNote.tsx';
import { KeptPlans } from './kept/KeptPlans.tsx';
import { useKept } from './kept/useKept.ts';
import { Picture } from './Picture.tsx';
import { SavePdf } from './SavePdf.tsx';
import { Seen } from './Seen.tsx';
import { Sheet } from './Sheet.tsx';
import { Traffic, Worst } from './Traffic.tsx';
import { usePlan } from './usePlan.ts';
import { Wants } from './Wants.tsx';
import { calledHere, type PlanProps } from './words.ts';

export default function Plan(props: PlanProps) {
  const { words } = props;
  const state = usePlan(words);
  const { good, plan } = state;
  const kept = useKept({ plan, put: state.open, rename: (name) => state.change({ name }), blank: () => newPlan(words.newName, words.newLimb) });
  const openDemo = async (): Promise<void> => {
    const { default: demo } = await import('#content/plan/demo.json');
    kept.withDesk((desk) => void desk.look(demo as unknown as PlanData));
  };
  // What is said goes by the figures, and they follow when the hand rests.
  const said = [good, state.current, plan.gate] as const;
  return (
    <div class="plan">
      <div class="no-print">
        {plan.demo && <p class="example-words">{words.invented}</p>}
        <p class="actions needs-script">
          {!plan.demo && <button type="button" onClick={() => void openDemo()}>{words.demo}</button>}
          {kept.state.looks && <button type="button" onClick={() => kept.withDesk((desk) => void desk.back())}>{words.demoBack}</button>}
        </p>
        <KeptNote kept={kept} />
        <Kept on={[plan.gate]}>{() => <Gate props={props} state={state} />}</Kept>
        <div class="calculator">
          <div class="result">
            <Seen words={words} picture={good && <Picture props={props} state={state} good={good} />}>
              <Kept on={said}>{() => good && <Worst props={props} state={state} />}</Kept>
              <Wants props={props} state={state} />
            </Seen>
          </div>
          <div class="work">
            <Facts props={props} state={state} />
          </div>
        </div>
        <section id="answer">
          <h2>{words.parts.answer}</h2>
          <Kept on={said}>{() => <Traffic props={props} state={state} />}</Kept>
          <p class="soft">{frame.statement}</p>
        </section>
        <Kept on={said}>{() => <Each props={props} state={state} />}</Kept>
      </div>
      {good && (
        <section>
          <div class="no-print">
            <h2>{words.parts.sheet}</h2>
            <p>{words.sheet.say}</p>
            <SavePdf props={props} state={state} />
          </div>
          <Kept on={[...said, state.limb, state.system]}>{() => <Sheet props={props} state={state} />}</Kept>
        </section>
      )}
      <Rested><KeptPlans kept={kept} called={(name) => calledHere(props, name)} /></Rested>
    </div>
  );
}
