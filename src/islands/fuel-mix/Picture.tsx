import drawn from '#content/drawings/fuel-mix.json';
import { Drawing } from '#drawings/fuel-mix/Drawing.tsx';
import type { Inputs } from '#drawings/fuel-mix/geometry.ts';
import type { Drawn } from '../kit/picture.tsx';
import { Views } from '../kit/Views.tsx';

export default function FuelMixPicture({ now }: { now: Drawn }) {
  return (
    <Views of="fuel-mix" faces={['cans']} words={drawn} now={now}>
      {(face, common) => <Drawing {...common} face={face} inputs={now.good.inputs as Inputs} onMove={now.onInput} />}
    </Views>
  );
}
