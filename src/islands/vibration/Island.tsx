import drawn from '#content/drawings/vibration.json';
import { vibration } from '#core/calculators/vibration.ts';
import { vibrationLevels } from '#core/facts/vibration-levels.ts';
import { Drawing } from '#drawings/vibration/Drawing.tsx';
import type { Inputs } from '#drawings/vibration/geometry.ts';
import { Calculator } from '../kit/Calculator.tsx';
import { useCalculator } from '../kit/useCalculator.ts';
import { Views } from '../kit/Views.tsx';
import type { IslandProps } from '../kit/words.ts';

export default function VibrationIsland(props: IslandProps) {
  const state = useCalculator(vibration);
  return (
    <Calculator
      {...props}
      state={state}
      wire={false}
      drawing={(now) => (
        <Views of="vibration" faces={['day']} words={drawn} drawn={now} units={state.system}>
          {(face, common) => <Drawing {...common} face={face} levels={vibrationLevels()} inputs={now.good.inputs as Inputs} onMove={now.onInput} />}
        </Views>
      )}
    />
  );
}
