import drawn from '#content/drawings/reduction.json';
import { Drawing } from '#drawings/reduction/Drawing.tsx';
import type { Inputs } from '#drawings/reduction/geometry.ts';
import type { Drawn } from '../kit/picture.tsx';
import { Views } from '../kit/Views.tsx';

export default function ReductionPicture({ now }: { now: Drawn }) {
  return (
    <Views of="reduction" faces={['side']} words={drawn} now={now}>
      {(face, common) => <Drawing {...common} face={face} inputs={now.good.inputs as Inputs} onMove={now.onInput} />}
    </Views>
  );
}
