/** Wind: at another height, as pressure, on the Beaufort scale. Speeds m/s, heights m. */
import { beaufort } from '../facts/beaufort.ts';
import { weather } from '../facts/weather.ts';

/** Over open ground: v·log(h ÷ 0.01) ÷ log(10 ÷ 0.01), v at ten metres. Log profile as in a weather centre's library. */
export const windAt = (height: number, wind: number): number => {
  const z = weather('roughness');
  return (wind * Math.log(height / z)) / Math.log(weather('wind-standard-height') / z);
};

/** Pressure, Pa: ½·ρ·v². */
export const windPressure = (wind: number, density: number = weather('air-density')): number => 0.5 * density * wind * wind;

/** The Beaufort force by the table's classes, which are printed to a tenth. */
export const beaufortForce = (wind: number): number => beaufort.filter(({ from }) => wind >= from - 0.05).length - 1;
