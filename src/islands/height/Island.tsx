import drawn from '#content/drawings/height.json';
import { height } from '#core/calculators/height.ts';
import { Drawing } from '#drawings/height/Drawing.tsx';
import type { Inputs } from '#drawings/height/geometry.ts';
import { Calculator } from '../kit/Calculator.tsx';
import { useCalculator } from '../kit/useCalculator.ts';
import { Views } from '../kit/Views.tsx';
import type { IslandProps } from '../kit/words.ts';
import { Tilt } from './Tilt.tsx';

const byPole = ['poleOut', 'standOff', 'gripHeight'];
const bySight = ['distance', 'along', 'scale', 'eyeHeight'];

/** Only what the way of measuring and the scale of the instrument ask for. */
const shows = (name: string, { method, scale }: { readonly [name: string]: unknown }): boolean => {
  if (byPole.includes(name)) return method === 'pole';
  if (bySight.includes(name)) return method === 'sight';
  if (name.startsWith('angleTo')) return method === 'sight' && scale === 'degrees';
  if (name.startsWith('percentTo')) return method === 'sight' && scale === 'percent';
  return true;
};

export default function HeightIsland(props: IslandProps) {
  const state = useCalculator(height);
  /** The tilt of a phone is no instrument: it has the wider tolerance. */
  const take = (name: string, angle: number): void => {
    state.setInputs({ [name]: angle });
    state.setGot(name, 'judged');
  };
  const aid = (name: string) =>
    name.startsWith('angleTo') ? <Tilt label={props.words.inputs[name]?.label ?? name} onAngle={(angle) => take(name, angle)} /> : null;
  return (
    <Calculator
      {...props}
      state={state}
      shows={shows}
      aid={aid}
      drawing={(now) => (
        <Views of="height" faces={['side']} words={drawn} drawn={now} units={state.system}>
          {(face, common) => <Drawing {...common} face={face} inputs={now.good.inputs as Inputs} onMove={now.onInput} />}
        </Views>
      )}
    />
  );
}
