import { beaufort } from './beaufort.ts';
import { weather } from './weather.ts';

/** Edges of the published bands that figures are drawn against: m/s and °C. */
export type WeatherBands = {
  /** Where each force begins. */
  forces: readonly number[];
  platform: number;
  /** Where the heat index's four steps begin. */
  heat: readonly number[];
  /** The warmest air that wind chill is given for. */
  chillFrom: number;
};
export const weatherBands = (): WeatherBands => ({
  forces: beaufort.map(({ from }) => from),
  platform: weather('platform-wind'),
  heat: (['heat-caution', 'heat-extreme-caution', 'heat-danger', 'heat-extreme-danger'] as const).map(weather),
  chillFrom: weather('chill-from'),
});
