/** One set of facts, each typed once: site, tree and gear, rule and line, the limb in hand, and what is seldom changed. */
import type { ComponentChildren } from 'preact';
import type { ChoiceInput, QuantityInput } from '#core/kit/calculator.ts';
import { ruleChanged } from '#core/plan/edition.ts';
import type { PlanLimb } from '#core/plan/facts.ts';
import {
  limbBearings, limbChoices, limbFacts, mostLimbs, type SharedBearing, sharedChoices, type SharedFact, sharedFacts, siteTexts,
} from '#core/plan/names.ts';
import { isWeighed } from '#core/plan/problems.ts';
import { Kept, Rested } from '../kit/Kept.tsx';
import { BearingField, ChoiceField, FigureField, TextField } from './Fields.tsx';
import { GearList } from './GearList.tsx';
import type { PlanState } from './usePlan.ts';
import { fillIn, type PlanProps, slackText } from './words.ts';

type Part = { props: PlanProps; state: PlanState };

const line: readonly SharedFact[] = ['voltage', 'ownDistance', 'lineHeight', 'lineOffset', 'movement'];
const gear: readonly SharedFact[] = ['poleShortest', 'poleLongest', 'barLength', 'gripHeight', 'groundSlope'];
const platform: readonly SharedFact[] = ['platformHeight', 'boomReach'];
const usual: readonly SharedFact[] = ['margin', 'swing', 'offSquare', 'barMargin', 'undercut', 'strength', 'springUp', 'handHeight', 'barTip', 'stumble'];

// A field is drawn again only when it is its own figure that has changed: a bearing that is dragged changes one. That one
// follows when the hand rests: the browser looks through the whole form when a choice is changed for it.
const Shared = ({ props, state, name }: Part & { name: SharedFact }) => {
  const fact = state.plan.facts[name];
  const problem = state.problems.find(({ at }) => at === `facts.${name}`);
  return (
    <Kept on={[fact, problem?.problem, state.system]}>
      {() => (
        <FigureField
          props={props} name={name} id={`plan-${name}`} input={sharedFacts[name] as QuantityInput} fact={fact} system={state.system}
          problem={problem} onFact={(next) => state.setFact(name, next)}
        />
      )}
    </Kept>
  );
};
const SharedChoice = ({ props, state, name }: Part & { name: keyof typeof sharedChoices }) => {
  const chosen = state.plan.choices[name];
  return (
    <Kept on={[chosen]}>
      {() => (
        <ChoiceField
          id={`plan-${name}`} label={props.words.choices[name]} input={sharedChoices[name] as ChoiceInput} called={props.choices[name] ?? {}}
          chosen={chosen} onChoose={(option) => state.setChoice(name, option)}
        />
      )}
    </Kept>
  );
};
const SharedBearing = ({ props, state, name }: Part & { name: SharedBearing }) => {
  const bearing = state.plan.bearings[name];
  return (
    <Rested>
      <BearingField props={props} id={`plan-${name}`} label={props.words.bearings[name]} bearing={bearing} onTurn={(to) => state.setBearing(name, to)} />
    </Rested>
  );
};

/** Beside the rule, where its figures have changed since the plan was made. */
const RuleChanged = ({ props, state }: Part) => {
  if (!ruleChanged(state.plan)) return null;
  return (
    <p class="finding caution" role="alert">{`${props.words.rule.changed} `}<button type="button" onClick={state.takeRuleOfNow}>{props.words.rule.seen}</button></p>
  );
};

const Folded = ({ title, children, open = false }: { title: string; children: ComponentChildren; open?: boolean }) => (
  <details open={open}><summary>{title}</summary>{children}</details>
);

const Site = ({ props, state }: Part) => {
  const { site, name } = state.plan;
  return (
    <Folded title={props.words.parts.site}>
      <TextField id="plan-name" label={props.words.site.name} value={name} onText={(text) => state.change({ name: text })} />
      {siteTexts.filter((field) => field !== 'saw').map((field) => (
        <TextField key={field} id={`plan-${field}`} label={props.words.site[field]} value={site[field]} type={field === 'date' ? 'date' : 'text'} onText={(text) => state.change({ site: { ...site, [field]: text } })} />
      ))}
    </Folded>
  );
};

/** Which limb is in hand, and their order. */
const Order = ({ props, state }: Part) => {
  const { limbs } = props.words;
  const { plan, limb } = state;
  return (
    <>
      <fieldset class="field">
        <legend>{limbs.choose}</legend>
        <div class="choices">
          {plan.limbs.map((one, i) => (
            <label key={i}>
              <input type="radio" name="limb" value={i} checked={i === limb} onChange={() => state.choose(i)} />
              <span>{`${i + 1} ${one.name}`}</span>
            </label>
          ))}
        </div>
      </fieldset>
      <p class="actions">
        <button type="button" disabled={plan.limbs.length >= mostLimbs} onClick={state.addLimb}>{limbs.add}</button>
        <button type="button" disabled={limb === 0} onClick={() => state.moveLimb(-1)}>{limbs.earlier}</button>
        <button type="button" disabled={limb === plan.limbs.length - 1} onClick={() => state.moveLimb(1)}>{limbs.later}</button>
        <button type="button" disabled={plan.limbs.length === 1} onClick={state.removeLimb}>{limbs.remove}</button>
      </p>
      {plan.limbs.length >= mostLimbs && <p>{fillIn(limbs.full, { most: mostLimbs })}</p>}
      {state.before && (
        <p role="status">{`${fillIn(limbs.removed, { name: state.before.name })} `}<button type="button" onClick={state.bringBack}>{limbs.undo}</button></p>
      )}
    </>
  );
};

const LimbFacts = ({ props, state, one }: Part & { one: PlanLimb }) => (
  <>
    {(Object.keys(limbFacts) as (keyof typeof limbFacts)[]).map((name) => {
      const problem = state.problems.find(({ at }) => at === `limbs.${state.limb}.facts.${name}`);
      return (
        <Kept key={name} on={[one.facts[name], problem?.problem, state.system, state.limb]}>
          {() => (
            <FigureField
              props={props} name={name} id={`limb-${name}`} input={limbFacts[name] as QuantityInput} fact={one.facts[name]} system={state.system}
              problem={problem} onFact={(fact) => state.setLimbFact(name, fact)}
            />
          )}
        </Kept>
      );
    })}
    {(Object.keys(limbChoices) as (keyof typeof limbChoices)[]).map((name) => (
      <Kept key={name} on={[one.choices[name], state.limb]}>
        {() => (
          <ChoiceField
            id={`limb-${name}`} label={props.words.choices[name]} input={limbChoices[name] as ChoiceInput} called={props.choices[name] ?? {}}
            chosen={one.choices[name]} onChoose={(option) => state.setLimbChoice(name, option)}
          />
        )}
      </Kept>
    ))}
  </>
);

const Limb = ({ props, state }: Part) => {
  const one = state.plan.limbs[state.limb]!;
  return (
    <section id="limb">
      <h2>{props.words.parts.limb}</h2>
      <Order props={props} state={state} />
      <TextField id="limb-name" label={props.words.limbs.name} value={one.name} onText={state.nameLimb} />
      <Kept on={[one.facts, one.choices, state.problems, state.system, state.limb]}>{() => <LimbFacts props={props} state={state} one={one} />}</Kept>
      <p class="hint">{`${props.words.bearings.say} ${slackText(props)}`}</p>
      <div class="clocks">
        {limbBearings.map((name) => (
          <Rested key={`${name} ${state.limb}`}>
            <BearingField props={props} id={`limb-${name}`} label={props.words.bearings[name]} bearing={one.bearings[name]} onTurn={(to) => state.setLimbBearing(name, to)} />
          </Rested>
        ))}
      </div>
    </section>
  );
};

export const Facts = ({ props, state }: Part) => {
  const { parts } = props.words;
  const { plan, problems, system } = state;
  const { choices, facts, bearings } = plan;
  const shared = (names: readonly SharedFact[]) => names.map((name) => <Shared key={name} props={props} state={state} name={name} />);
  const now = [facts, plan.site.saw, choices, bearings, plan.ruleEdition, problems, system] as const;
  return (
    <form onSubmit={(e) => e.preventDefault()} autocomplete="off">
      <Kept on={[plan.site, plan.name]}>{() => <Site props={props} state={state} />}</Kept>
      <Kept on={now}>
        {() => (
          <>
            <section>
              <h2>{parts.gear}</h2>
              <SharedChoice props={props} state={state} name="species" />
              <SharedChoice props={props} state={state} name="workingFrom" />
              {choices.workingFrom === 'platform' && shared(platform)}
              <GearList state={state} />
              {shared(gear)}
              <TextField id="plan-saw" label={props.words.site.saw} value={plan.site.saw} onText={(text) => state.change({ site: { ...plan.site, saw: text } })} />
              {shared(isWeighed(plan) ? ['mass', 'balance', 'gripSpacing'] : ['mass'])}
              <SharedBearing props={props} state={state} name="downhill" />
            </section>
            <section>
              <h2>{parts.line}</h2>
              <SharedChoice props={props} state={state} name="wires" />
              {choices.wires === 'yes' && (
                <>
                  <SharedChoice props={props} state={state} name="ruleSet" />
                  <RuleChanged props={props} state={state} />
                  <SharedChoice props={props} state={state} name="lineKind" />
                  <SharedChoice props={props} state={state} name="toldBy" />
                  {shared(line)}
                  <SharedBearing props={props} state={state} name="line" />
                </>
              )}
            </section>
          </>
        )}
      </Kept>
      <Limb props={props} state={state} />
      <Kept on={now}>{() => <Folded title={parts.usual}>{shared(usual)}</Folded>}</Kept>
    </form>
  );
};
