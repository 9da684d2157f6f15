import drawn from '#content/drawings/line-clearance.json';
import { lineClearance } from '#core/calculators/line-clearance.ts';
import { Drawing } from '#drawings/line-clearance/Drawing.tsx';
import type { Inputs } from '#drawings/line-clearance/geometry.ts';
import { Calculator } from '../kit/Calculator.tsx';
import { useCalculator } from '../kit/useCalculator.ts';
import { Views } from '../kit/Views.tsx';
import type { IslandProps } from '../kit/words.ts';

/** No line's height, place or distance is taken for granted. */
const own = ['lineHeight', 'lineOffset', 'requiredDistance'];

export default function LineClearanceIsland(props: IslandProps) {
  const state = useCalculator(lineClearance);
  return (
    <Calculator
      {...props}
      state={state}
      wire={false}
      own={own}
      drawing={(now) => (
        <Views of="line-clearance" faces={['side']} words={drawn} drawn={now} units={state.system}>
          {(face, common) => <Drawing {...common} face={face} inputs={now.good.inputs as Inputs} onMove={now.onInput} />}
        </Views>
      )}
    />
  );
}
