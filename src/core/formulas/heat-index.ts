/**
 * NWS heat index. Source: Weather Prediction Center, "The heat index equation". In °F and %, as the equation is fitted;
 * shade and light wind. Chart and this algorithm part above 85 % humidity in moderate heat: the algorithm reads higher.
 */
/** The bare regression, which the published chart prints. Air °F, humidity %. */
export const heatRegression = (t: number, r: number): number =>
  -42.379 + 2.04901523 * t + 10.14333127 * r - 0.22475541 * t * r - 0.00683783 * t * t - 0.05481717 * r * r
  + 0.00122874 * t * t * r + 0.00085282 * t * r * r - 0.00000199 * t * t * r * r;

/** The simple equation for the lower end, averaged with the air as the algorithm asks. */
const simpleIndex = (t: number, r: number): number => (0.5 * (t + 61 + (t - 68) * 1.2 + r * 0.094) + t) / 2;

const dry = (t: number, r: number): number =>
  r < 13 && t >= 80 && t <= 112 ? ((13 - r) / 4) * Math.sqrt((17 - Math.abs(t - 95)) / 17) : 0;
const damp = (t: number, r: number): number => (r > 85 && t >= 80 && t <= 87 ? ((r - 85) / 10) * ((87 - t) / 5) : 0);

/** Heat index, °F, by the whole algorithm. */
export const heatIndex = (t: number, r: number): number => {
  const simple = simpleIndex(t, r);
  return simple < 80 ? simple : heatRegression(t, r) - dry(t, r) + damp(t, r);
};
