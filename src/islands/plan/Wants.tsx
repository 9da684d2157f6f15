/** How many figures are still wanted before there is an answer, and the way to the first of them. */
import { calledHere, fillIn, type PlanProps } from './words.ts';
import type { PlanState } from './usePlan.ts';

export const Wants = ({ props, state }: { props: PlanProps; state: PlanState }) => {
  const { problems, choose } = state;
  const { wants, wantsFirst } = props.words;
  const [first] = problems;
  if (!first) return null;
  const [, limb, name] = /^(?:limbs\.(\d+)\.)?facts\.(\w+)$/.exec(first.at) ?? [];
  return (
    <p class="answer-none">
      {fillIn(wants, { count: problems.length })}
      {name && (
        <>
          {' '}
          <a
            href={`#${limb === undefined ? 'plan' : 'limb'}-${name}`}
            onClick={() => {
              if (limb !== undefined) choose(Number(limb));
            }}
          >{fillIn(wantsFirst, { name: calledHere(props, name) })}</a>
        </>
      )}
    </p>
  );
};
