import drawn from '#content/drawings/noise.json';
import { Drawing } from '#drawings/noise/Drawing.tsx';
import type { Inputs } from '#drawings/noise/geometry.ts';
import type { Drawn } from '../kit/picture.tsx';
import { Views } from '../kit/Views.tsx';

export default function NoisePicture({ now }: { now: Drawn }) {
  return (
    <Views of="noise" faces={['day']} words={drawn} now={now}>
      {(face, common) => <Drawing {...common} face={face} inputs={now.good.inputs as Inputs} onMove={now.onInput} />}
    </Views>
  );
}
