import { reduction } from '#core/calculators/reduction.ts';
import { Calculator } from '../kit/Calculator.tsx';
import { useCalculator } from '../kit/useCalculator.ts';
import type { IslandProps } from '../kit/words.ts';

export default function ReductionIsland(props: IslandProps) {
  const state = useCalculator(reduction);
  return <Calculator {...props} state={state} drawing={() => null} />;
}
