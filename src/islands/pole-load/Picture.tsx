import drawn from '#content/drawings/pole-load.json';
import { Drawing } from '#drawings/pole-load/Drawing.tsx';
import type { Inputs } from '#drawings/pole-load/geometry.ts';
import type { Drawn } from '../kit/picture.tsx';
import { Views } from '../kit/Views.tsx';

export default function PoleLoadPicture({ now }: { now: Drawn }) {
  return (
    <Views of="pole-load" faces={['side']} words={drawn} now={now}>
      {(face, common) => <Drawing {...common} face={face} inputs={now.good.inputs as Inputs} onMove={now.onInput} />}
    </Views>
  );
}
