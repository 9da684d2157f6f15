import drawn from '#content/drawings/noise.json';
import { noise } from '#core/calculators/noise.ts';
import { Drawing } from '#drawings/noise/Drawing.tsx';
import type { Inputs } from '#drawings/noise/geometry.ts';
import { Calculator } from '../kit/Calculator.tsx';
import { useCalculator } from '../kit/useCalculator.ts';
import { Views } from '../kit/Views.tsx';
import type { IslandProps } from '../kit/words.ts';

export default function NoiseIsland(props: IslandProps) {
  const state = useCalculator(noise);
  return (
    <Calculator
      {...props}
      state={state}
      wire={false}
      drawing={(now) => (
        <Views of="noise" faces={['day']} words={drawn} drawn={now} units={state.system}>
          {(face, common) => <Drawing {...common} face={face} inputs={now.good.inputs as Inputs} onMove={now.onInput} />}
        </Views>
      )}
    />
  );
}
