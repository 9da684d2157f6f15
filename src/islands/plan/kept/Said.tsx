/** What was done with the plans, or could not be, in words: with its place in the file, and the way back. */
import { plans as words } from '#content/interface.json';
import { fill } from '#components/fill.ts';
import type { PlanProblem } from '#core/plan/problems.ts';
import type { Desk, Said as What } from './desk.ts';

/** What the page calls a part of a plan. */
export type Called = (name: string) => string;
type Words = { readonly [name: string]: string };

/** `limbs.1.facts.cutHeight` as the page calls it. */
const placeOf = (at: string, called: Called): string => {
  const [, limb, below = at] = /^limbs\.(\d+)(?:\.(.*))?$/.exec(at) ?? [];
  const name = (limb === undefined ? at : below === at ? '' : below).split('.').at(-1) ?? '';
  const label = called(name);
  return limb === undefined ? label : fill(words.limbPlace, { n: Number(limb) + 1, place: label }).replace(/, $/, '');
};

/** One problem as a line: where, and what. */
export const problemText = ({ at, problem, values }: PlanProblem, called: Called): string => {
  const said = fill((words.planProblems as Words)[problem] ?? (words.fileProblems as Words)[problem] ?? problem, values as { [name: string]: string | number });
  const place = placeOf(at, called);
  return place === '' || at === 'v' ? said : fill(words.place, { place, problem: said });
};

const sentence = (said: Exclude<What, { id: 'read' | 'badLink' | 'trouble' }>): string => ('name' in said ? fill(words[said.id], { name: said.name }) : words[said.id]);

const FileSaid = ({ said, called }: { said: Extract<What, { id: 'read' }>; called: Called }) => {
  const { file: { plans, faults }, fresh, here, loose } = said;
  const lines = [
    ...(plans.length === 1 && fresh.length === 1 ? [fill(words.readOne, { name: fresh[0] as string })] : fresh.length > 0 ? [fill(words.read, { n: fresh.length })] : []),
    ...(here.length === 1 ? [fill(words.hereOne, { name: here[0] as string })] : here.length > 1 ? [fill(words.here, { n: here.length })] : []),
    ...(loose > 0 ? [words.loose] : []),
    ...(plans.length === 0 ? [words.nothingRead] : []),
  ];
  return (
    <>
      {lines.map((line) => <p key={line}>{line}</p>)}
      {faults.map(({ plan, name, problems, more }) => (
        <div class="field-error" key={plan}>
          {plan !== null && <p>{fill(words.inFile, { n: plan + 1, name: name ? fill(words.ofName, { name }) : '' })}</p>}
          <ul>
            {problems.map((problem) => <li key={problem.at}>{problemText(problem, called)}</li>)}
            {more > 0 && <li>{fill(words.more, { n: more })}</li>}
          </ul>
        </div>
      ))}
    </>
  );
};

export const Said = ({ said, called, desk }: { said: What; called: Called; desk: Desk }) => {
  if (said.id === 'read') return <FileSaid said={said} called={called} />;
  if (said.id === 'badLink') return <p class="field-error">{words.linkProblems[said.problem]}</p>;
  if (said.id === 'trouble') return <p class="field-error">{words.trouble[said.trouble]}</p>;
  return (
    <p>
      <span>{sentence(said)}</span>
      {said.id === 'deleted' && <button type="button" onClick={() => void desk.bringBack(said.undo)}>{words.undo}</button>}
    </p>
  );
};
