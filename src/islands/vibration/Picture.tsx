import drawn from '#content/drawings/vibration.json';
import { vibrationLevels } from '#core/facts/vibration-levels.ts';
import { Drawing } from '#drawings/vibration/Drawing.tsx';
import type { Inputs } from '#drawings/vibration/geometry.ts';
import type { Drawn } from '../kit/picture.tsx';
import { Views } from '../kit/Views.tsx';

export default function VibrationPicture({ now }: { now: Drawn }) {
  return (
    <Views of="vibration" faces={['day']} words={drawn} now={now}>
      {(face, common) => <Drawing {...common} face={face} levels={vibrationLevels()} inputs={now.good.inputs as Inputs} onMove={now.onInput} />}
    </Views>
  );
}
