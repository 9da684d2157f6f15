import drawn from '#content/drawings/weather.json';
import { weather } from '#core/calculators/weather.ts';
import { weatherBands } from '#core/facts/weather-bands.ts';
import { Drawing } from '#drawings/weather/Drawing.tsx';
import type { Inputs } from '#drawings/weather/geometry.ts';
import { Calculator } from '../kit/Calculator.tsx';
import { useCalculator } from '../kit/useCalculator.ts';
import { Views } from '../kit/Views.tsx';
import type { IslandProps } from '../kit/words.ts';

export default function WeatherIsland(props: IslandProps) {
  const state = useCalculator(weather);
  return (
    <Calculator
      {...props}
      state={state}
      wire={false}
      drawing={(now) => (
        <Views of="weather" faces={['wind', 'air']} words={drawn} drawn={now} units={state.system}>
          {(face, common) => <Drawing {...common} face={face} bands={weatherBands()} inputs={now.good.inputs as Inputs} onMove={now.onInput} />}
        </Views>
      )}
    />
  );
}
