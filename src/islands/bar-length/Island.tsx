import drawn from '#content/drawings/bar-length.json';
import { barLength } from '#core/calculators/bar-length.ts';
import { Drawing } from '#drawings/bar-length/Drawing.tsx';
import type { Inputs } from '#drawings/bar-length/geometry.ts';
import { Calculator } from '../kit/Calculator.tsx';
import { useCalculator } from '../kit/useCalculator.ts';
import { Views } from '../kit/Views.tsx';
import type { IslandProps } from '../kit/words.ts';

export default function BarLengthIsland(props: IslandProps) {
  const state = useCalculator(barLength);
  return (
    <Calculator
      {...props}
      state={state}
      drawing={(now) => (
        <Views of="bar-length" faces={['section', 'above']} words={drawn} drawn={now} units={state.system}>
          {(face, common) => <Drawing {...common} face={face} inputs={now.good.inputs as Inputs} onMove={now.onInput} />}
        </Views>
      )}
    />
  );
}
