import { useState } from 'preact/hooks';
import drawn from '#content/drawings/stance.json';
import { stance } from '#core/calculators/stance.ts';
import { Drawing } from '#drawings/stance/Drawing.tsx';
import type { Inputs } from '#drawings/stance/geometry.ts';
import { Calculator } from '../kit/Calculator.tsx';
import { useCalculator } from '../kit/useCalculator.ts';
import { Views } from '../kit/Views.tsx';
import type { IslandProps } from '../kit/words.ts';

export default function StanceIsland(props: IslandProps) {
  const state = useCalculator(stance);
  const [standOff, setStandOff] = useState<number | null>(null);
  return (
    <Calculator
      {...props}
      state={state}
      drawing={({ good, quiet, description, onInput }) => (
        <Views faces={['side', 'plan']}>
          {(face, box) => (
            <Drawing
              id={`stance-${face}`}
              face={face}
              inputs={good.inputs as Inputs}
              outcome={good.outcome}
              box={box}
              words={{ title: drawn.title, description: `${description} ${drawn.views[face]}`, labels: drawn.labels }}
              quiet={quiet}
              standOff={standOff}
              units={state.system}
              onMove={(move) => ('cutHeight' in move ? onInput(move) : setStandOff(move.standOff))}
            />
          )}
        </Views>
      )}
    />
  );
}
