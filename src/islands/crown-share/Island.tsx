import drawn from '#content/drawings/crown-share.json';
import { crownShare } from '#core/calculators/crown-share.ts';
import { Drawing } from '#drawings/crown-share/Drawing.tsx';
import type { Inputs } from '#drawings/crown-share/geometry.ts';
import { Calculator } from '../kit/Calculator.tsx';
import { useCalculator } from '../kit/useCalculator.ts';
import { Views } from '../kit/Views.tsx';
import type { IslandProps } from '../kit/words.ts';
import { Kept } from './Kept.tsx';

export default function CrownShareIsland(props: IslandProps) {
  const state = useCalculator(crownShare);
  return (
    <Calculator
      {...props}
      state={state}
      wire={false}
      after={<Kept state={state} />}
      drawing={(now) => (
        <Views of="crown-share" faces={['section']} words={drawn} drawn={now} units={state.system}>
          {(face, common) => <Drawing {...common} face={face} inputs={now.good.inputs as Inputs} onMove={now.onInput} />}
        </Views>
      )}
    />
  );
}
