import { barLength } from '#core/calculators/bar-length.ts';
import { Calculator } from '../kit/Calculator.tsx';
import { useCalculator } from '../kit/useCalculator.ts';
import type { IslandProps } from '../kit/words.ts';

export default function BarLengthIsland(props: IslandProps) {
  const state = useCalculator(barLength);
  return <Calculator {...props} state={state} drawing={() => null} />;
}
