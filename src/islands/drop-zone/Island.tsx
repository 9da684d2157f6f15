import { useState } from 'preact/hooks';
import drawn from '#content/drawings/drop-zone.json';
import { dropZone } from '#core/calculators/drop-zone.ts';
import { Drawing } from '#drawings/drop-zone/Drawing.tsx';
import type { Inputs, Moment } from '#drawings/drop-zone/geometry.ts';
import { Calculator } from '../kit/Calculator.tsx';
import { useCalculator } from '../kit/useCalculator.ts';
import { Views } from '../kit/Views.tsx';
import type { IslandProps } from '../kit/words.ts';
import { Player } from './Player.tsx';

export default function DropZoneIsland(props: IslandProps) {
  const state = useCalculator(dropZone);
  const [moment, setMoment] = useState<Moment | null>(null);
  return (
    <Calculator
      {...props}
      state={state}
      drawing={(now) => (
        <Views of="drop-zone" faces={['side', 'plan']} words={drawn} drawn={now} units={state.system}>
          {(face, common) => (
            <>
              <Drawing {...common} face={face} inputs={now.good.inputs as Inputs} moment={moment} onMove={now.onInput} />
              {face === 'side' && <Player words={drawn.player} moment={moment} onMoment={setMoment} />}
            </>
          )}
        </Views>
      )}
    />
  );
}
