import { poleLoad } from '#core/calculators/pole-load.ts';
import { Calculator } from '../kit/Calculator.tsx';
import { useCalculator } from '../kit/useCalculator.ts';
import type { IslandProps } from '../kit/words.ts';

const load = () => import('./Picture.tsx');
const picture = { load, still: import.meta.env.SSR ? (await load()).default : null };

export default function PoleLoadIsland(props: IslandProps) {
  return <Calculator {...props} state={useCalculator(poleLoad)} picture={picture} />;
}
