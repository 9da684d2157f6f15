import drawn from '#content/drawings/final-cut.json';
import { finalCut } from '#core/calculators/final-cut.ts';
import { Drawing } from '#drawings/final-cut/Drawing.tsx';
import type { Inputs } from '#drawings/final-cut/geometry.ts';
import { Calculator } from '../kit/Calculator.tsx';
import { useCalculator } from '../kit/useCalculator.ts';
import { Views } from '../kit/Views.tsx';
import type { IslandProps } from '../kit/words.ts';

export default function FinalCutIsland(props: IslandProps) {
  const state = useCalculator(finalCut);
  return (
    <Calculator
      {...props}
      state={state}
      drawing={(now) => (
        <Views of="final-cut" faces={['side', 'section', 'plan']} words={drawn} drawn={now} units={state.system}>
          {(face, common) => <Drawing {...common} face={face} inputs={now.good.inputs as Inputs} onMove={now.onInput} />}
        </Views>
      )}
    />
  );
}
