import drawn from '#content/drawings/fuel-mix.json';
import { fuelMix } from '#core/calculators/fuel-mix.ts';
import { Drawing } from '#drawings/fuel-mix/Drawing.tsx';
import type { Inputs } from '#drawings/fuel-mix/geometry.ts';
import { Calculator } from '../kit/Calculator.tsx';
import { useCalculator } from '../kit/useCalculator.ts';
import { Views } from '../kit/Views.tsx';
import type { IslandProps } from '../kit/words.ts';

export default function FuelMixIsland(props: IslandProps) {
  const state = useCalculator(fuelMix);
  return (
    <Calculator
      {...props}
      state={state}
      wire={false}
      drawing={(now) => (
        <Views of="fuel-mix" faces={['cans']} words={drawn} drawn={now} units={state.system}>
          {(face, common) => <Drawing {...common} face={face} inputs={now.good.inputs as Inputs} onMove={now.onInput} />}
        </Views>
      )}
    />
  );
}
