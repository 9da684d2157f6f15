import drawn from '#content/drawings/cut-order.json';
import { cutOrder } from '#core/calculators/cut-order.ts';
import { Drawing } from '#drawings/cut-order/Drawing.tsx';
import type { Inputs } from '#drawings/cut-order/geometry.ts';
import { Calculator } from '../kit/Calculator.tsx';
import { useCalculator } from '../kit/useCalculator.ts';
import { Views } from '../kit/Views.tsx';
import type { IslandProps } from '../kit/words.ts';
import { Order } from './Order.tsx';

export default function CutOrderIsland(props: IslandProps) {
  const state = useCalculator(cutOrder);
  return (
    <Calculator
      {...props}
      state={state}
      quietOutside={false}
      after={<Order words={drawn.order} speaker={{ calculator: cutOrder, words: props.words, base: props.base }} state={state} />}
      drawing={(now) => (
        <Views of="cut-order" faces={['side']} words={drawn} drawn={now} units={state.system}>
          {(face, common) => <Drawing {...common} face={face} inputs={now.good.inputs as Inputs} onMove={now.onInput} />}
        </Views>
      )}
    />
  );
}
