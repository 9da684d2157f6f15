import drawn from '#content/drawings/limb-weight.json';
import { limbWeight } from '#core/calculators/limb-weight.ts';
import { Drawing } from '#drawings/limb-weight/Drawing.tsx';
import type { Inputs } from '#drawings/limb-weight/geometry.ts';
import { Calculator } from '../kit/Calculator.tsx';
import { useCalculator } from '../kit/useCalculator.ts';
import { Views } from '../kit/Views.tsx';
import type { IslandProps } from '../kit/words.ts';

export default function LimbWeightIsland(props: IslandProps) {
  const state = useCalculator(limbWeight);
  return (
    <Calculator
      {...props}
      state={state}
      wire={false}
      drawing={(now) => (
        <Views of="limb-weight" faces={['side']} words={drawn} drawn={now} units={state.system}>
          {(face, common) => <Drawing {...common} face={face} inputs={now.good.inputs as Inputs} onMove={now.onInput} />}
        </Views>
      )}
    />
  );
}
