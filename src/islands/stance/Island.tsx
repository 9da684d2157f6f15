import { stance } from '#core/calculators/stance.ts';
import { Calculator } from '../kit/Calculator.tsx';
import { useCalculator } from '../kit/useCalculator.ts';
import type { IslandProps } from '../kit/words.ts';

export default function StanceIsland(props: IslandProps) {
  const state = useCalculator(stance);
  return <Calculator {...props} state={state} drawing={() => null} />;
}
