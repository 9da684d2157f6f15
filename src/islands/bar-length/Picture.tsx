import drawn from '#content/drawings/bar-length.json';
import { Drawing } from '#drawings/bar-length/Drawing.tsx';
import type { Inputs } from '#drawings/bar-length/geometry.ts';
import type { Drawn } from '../kit/picture.tsx';
import { Views } from '../kit/Views.tsx';

export default function BarLengthPicture({ now }: { now: Drawn }) {
  return (
    <Views of="bar-length" faces={['section', 'above']} words={drawn} now={now}>
      {(face, common) => <Drawing {...common} face={face} inputs={now.good.inputs as Inputs} onMove={now.onInput} />}
    </Views>
  );
}
