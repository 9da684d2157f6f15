import drawn from '#content/drawings/reduction.json';
import { reduction } from '#core/calculators/reduction.ts';
import { Drawing } from '#drawings/reduction/Drawing.tsx';
import type { Inputs } from '#drawings/reduction/geometry.ts';
import { Calculator } from '../kit/Calculator.tsx';
import { useCalculator } from '../kit/useCalculator.ts';
import { Views } from '../kit/Views.tsx';
import type { IslandProps } from '../kit/words.ts';

export default function ReductionIsland(props: IslandProps) {
  const state = useCalculator(reduction);
  return (
    <Calculator
      {...props}
      state={state}
      drawing={(now) => (
        <Views of="reduction" faces={['side']} words={drawn} drawn={now} units={state.system}>
          {(face, common) => <Drawing {...common} face={face} inputs={now.good.inputs as Inputs} onMove={now.onInput} />}
        </Views>
      )}
    />
  );
}
