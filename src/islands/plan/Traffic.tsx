/** One traffic of findings, the worst first, each with what would mend it. */
import { calculator as frame, levels, problems as problemWords } from '#content/interface.json';
import type { Part } from '#core/plan/feed.ts';
import type { PlanFinding } from '#core/plan/findings.ts';
import type { WayName } from '#core/plan/ways.ts';
import { beyondGuess } from '#core/kit/outcome.ts';
import { Both, Say } from '../kit/Say.tsx';
import type { PlanState } from './usePlan.ts';
import { calledHere, clockText, fillIn, ownText, type PlanProps, speakerOf } from './words.ts';

const OwnWords = ({ props, finding }: { props: PlanProps; finding: PlanFinding }) => (
  <Both metric={ownText(props, finding, 'metric')} imperial={ownText(props, finding, 'imperial')} />
);

const Words = ({ props, finding }: { props: PlanProps; finding: PlanFinding }) => {
  const { part, id, values } = finding;
  if (part === 'plan') return <OwnWords props={props} finding={finding} />;
  const speaker = speakerOf(props, part as Part);
  const { problem, limit, ...figures } = values;
  if (id === 'cannotWork') {
    const words = speaker.words.problems[problem as string] ?? problemWords[problem as keyof typeof problemWords] ?? problemWords.notNumber;
    const { min, max, ...others } = figures;
    const bounds = fillIn(words.replaceAll('{label}', calledHere(props, finding.mends[0] as string)), { ...(min === undefined ? {} : { min: String(min), max: String(max) }) });
    return <Say speaker={speaker} text={fillIn(props.words.said.cannotWork, { problem: bounds })} values={others} />;
  }
  if (id === 'outside') return <Say speaker={speaker} text={speaker.words.outside[limit as string] ?? props.words.said.outside} values={figures} />;
  return <Say speaker={speaker} text={id === beyondGuess ? frame.beyondGuess : (speaker.words.findings[id] ?? id)} values={figures} />;
};

/** Where the field of that name stands; those of a limb are of the one that is chosen. */
const fieldId = (name: string, limbNames: readonly string[]): string => `${limbNames.includes(name) ? 'limb' : 'plan'}-${name}`;

const Line = ({ props, state, finding, limbNames }: { props: PlanProps; state: PlanState; finding: PlanFinding; limbNames: readonly string[] }) => {
  const { traffic } = props.words;
  const { level, limb, mends, guess, values } = finding;
  const take = values['take'];
  const ofGate = finding.id.startsWith('gate');
  return (
    <li class={`finding ${level}`} role={level === 'stop' ? 'alert' : undefined}>
      <p>
        <span class="finding-word">{levels[level]}</span>
        {limb !== null && <span class="limb-word">{`${fillIn(traffic.limb, { number: limb + 1 })}: `}</span>}
        <Words props={props} finding={finding} />
      </p>
      {mends.length > 0 && !ofGate && (
        <p class="mends">
          <span>{guess ? traffic.measure : traffic.mend}</span>
          {mends.map((name) => (
            <a
              key={name} href={`#${fieldId(name, limbNames)}`}
              onClick={() => {
                if (limb !== null) state.choose(limb);
              }}
            >{calledHere(props, name)}</a>
          ))}
          {typeof take === 'number' && limb !== null && (
            <button type="button" onClick={() => state.takeWay(limb, values['way'] as WayName, take)}>{fillIn(traffic.take, { clock: clockText(props, take) })}</button>
          )}
        </p>
      )}
    </li>
  );
};

export const Traffic = ({ props, state }: { props: PlanProps; state: PlanState }) => {
  const limb = state.plan.limbs[0]!;
  const limbNames = [...Object.keys(limb.facts), ...Object.keys(limb.choices), ...Object.keys(limb.bearings)];
  const [loud, quiet] = [state.findings.filter(({ level }) => level !== 'note'), state.findings.filter(({ level }) => level === 'note')];
  const lines = (some: readonly PlanFinding[]) => some.map((finding, i) => <Line key={`${finding.part}.${finding.id}.${finding.limb}.${i}`} props={props} state={state} finding={finding} limbNames={limbNames} />);
  return (
    <div class="traffic" aria-live="polite">
      {loud.length > 0 ? <ul class="findings">{lines(loud)}</ul> : state.current && <p>{props.words.traffic.none}</p>}
      {quiet.length > 0 && <details><summary>{props.words.traffic.notes}</summary><ul class="findings">{lines(quiet)}</ul></details>}
    </div>
  );
};

/** Beside the picture: the worst there is, and how many more. */
export const Worst = ({ props, state }: { props: PlanProps; state: PlanState }) => {
  const [first, ...rest] = state.findings.filter(({ level }) => level !== 'note');
  if (!first) return null;
  const more = rest.length;
  return (
    <p class={`worst ${first.level}`}>
      <span class="worst-say">
        <span class="finding-word">{levels[first.level]}</span>
        {first.limb !== null && <span class="limb-word">{`${fillIn(props.words.traffic.limb, { number: first.limb + 1 })}: `}</span>}
        <Words props={props} finding={first} />
      </span>
      <a href="#answer">{more > 0 ? fillIn(props.words.traffic.more, { count: more }) : props.words.traffic.how}</a>
    </p>
  );
};
