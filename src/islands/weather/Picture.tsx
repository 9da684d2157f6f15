import drawn from '#content/drawings/weather.json';
import { weatherBands } from '#core/facts/weather-bands.ts';
import { Drawing } from '#drawings/weather/Drawing.tsx';
import type { Inputs } from '#drawings/weather/geometry.ts';
import type { Drawn } from '../kit/picture.tsx';
import { Views } from '../kit/Views.tsx';

export default function WeatherPicture({ now }: { now: Drawn }) {
  return (
    <Views of="weather" faces={['wind', 'air']} words={drawn} now={now}>
      {(face, common) => <Drawing {...common} face={face} bands={weatherBands()} inputs={now.good.inputs as Inputs} onMove={now.onInput} />}
    </Views>
  );
}
