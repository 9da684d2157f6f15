import drawn from '#content/drawings/pole-load.json';
import { poleLoad } from '#core/calculators/pole-load.ts';
import { Drawing } from '#drawings/pole-load/Drawing.tsx';
import type { Inputs } from '#drawings/pole-load/geometry.ts';
import { Calculator } from '../kit/Calculator.tsx';
import { useCalculator } from '../kit/useCalculator.ts';
import { Views } from '../kit/Views.tsx';
import type { IslandProps } from '../kit/words.ts';

export default function PoleLoadIsland(props: IslandProps) {
  const state = useCalculator(poleLoad);
  return (
    <Calculator
      {...props}
      state={state}
      drawing={(now) => (
        <Views of="pole-load" faces={['side']} words={drawn} drawn={now} units={state.system}>
          {(face, common) => <Drawing {...common} face={face} inputs={now.good.inputs as Inputs} onMove={now.onInput} />}
        </Views>
      )}
    />
  );
}
