import drawn from '#content/drawings/approach-distance.json';
import { approachDistance } from '#core/calculators/approach-distance.ts';
import { ruleMark, ruleSet } from '#core/facts/rule-sets.ts';
import type { Inputs as Given } from '#core/kit/outcome.ts';
import { Drawing } from '#drawings/approach-distance/Drawing.tsx';
import type { Inputs } from '#drawings/approach-distance/geometry.ts';
import { Calculator } from '../kit/Calculator.tsx';
import { useCalculator } from '../kit/useCalculator.ts';
import { Views } from '../kit/Views.tsx';
import type { IslandProps } from '../kit/words.ts';
import { RuleKept } from './RuleKept.tsx';
import { RuleSheet } from './RuleSheet.tsx';
import { usualSteps, withRuleTitles } from './words.ts';

const steps = { voltage: usualSteps };
const own = ['voltage'];
const markOf = (inputs: Given): string | undefined => {
  const set = ruleSet(String(inputs['ruleSet']));
  return set && ruleMark(set);
};

export default function ApproachDistanceIsland(props: IslandProps) {
  const state = useCalculator(approachDistance, markOf);
  return (
    <>
      <Calculator
        {...props}
        words={withRuleTitles(props.words)}
        state={state}
        wire={false}
        own={state.fields['toldBy']?.text === 'operator' ? own : []}
        quietOutside={false}
        steps={steps}
        drawing={(now) => (
          <Views of="approach-distance" faces={['side']} words={drawn} drawn={now} units={state.system}>
            {(face, common) => <Drawing {...common} face={face} inputs={now.good.inputs as Inputs} />}
          </Views>
        )}
      />
      <RuleKept state={state} />
      <RuleSheet chosen={state.fields['ruleSet']?.text ?? ''} base={props.base} />
    </>
  );
}
