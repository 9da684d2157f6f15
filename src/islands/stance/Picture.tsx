import { useState } from 'preact/hooks';
import drawn from '#content/drawings/stance.json';
import { Drawing } from '#drawings/stance/Drawing.tsx';
import type { Inputs, Move } from '#drawings/stance/geometry.ts';
import type { Drawn } from '../kit/picture.tsx';
import { Views } from '../kit/Views.tsx';

export default function StancePicture({ now }: { now: Drawn }) {
  const [standOff, setStandOff] = useState<number | null>(null);
  const { onInput } = now;
  const move = onInput && ((to: Move): void => ('cutHeight' in to ? onInput(to) : setStandOff(to.standOff)));
  return (
    <Views of="stance" faces={['side', 'plan']} words={drawn} now={now}>
      {(face, common) => <Drawing {...common} face={face} inputs={now.good.inputs as Inputs} standOff={standOff} onMove={move} />}
    </Views>
  );
}
