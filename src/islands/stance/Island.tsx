import { useState } from 'preact/hooks';
import drawn from '#content/drawings/stance.json';
import { stance } from '#core/calculators/stance.ts';
import { Drawing } from '#drawings/stance/Drawing.tsx';
import type { Inputs, Move } from '#drawings/stance/geometry.ts';
import { Calculator } from '../kit/Calculator.tsx';
import { useCalculator } from '../kit/useCalculator.ts';
import { Views } from '../kit/Views.tsx';
import type { IslandProps } from '../kit/words.ts';

export default function StanceIsland(props: IslandProps) {
  const state = useCalculator(stance);
  const [standOff, setStandOff] = useState<number | null>(null);
  const move = (to: Move): void => ('cutHeight' in to ? state.setInputs(to) : setStandOff(to.standOff));
  return (
    <Calculator
      {...props}
      state={state}
      drawing={(now) => (
        <Views of="stance" faces={['side', 'plan']} words={drawn} drawn={now} units={state.system}>
          {(face, common) => <Drawing {...common} face={face} inputs={now.good.inputs as Inputs} standOff={standOff} onMove={move} />}
        </Views>
      )}
    />
  );
}
