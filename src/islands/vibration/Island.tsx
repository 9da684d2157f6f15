import { vibration } from '#core/calculators/vibration.ts';
import { Calculator } from '../kit/Calculator.tsx';
import { useCalculator } from '../kit/useCalculator.ts';
import type { IslandProps } from '../kit/words.ts';

const load = () => import('./Picture.tsx');
const picture = { load, still: import.meta.env.SSR ? (await load()).default : null };

export default function VibrationIsland(props: IslandProps) {
  return <Calculator {...props} state={useCalculator(vibration)} picture={picture} wire={false} />;
}
