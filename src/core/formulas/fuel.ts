/** Two-stroke mix and battery run time. Arithmetic; ratios are parts of petrol to one of oil, by volume. */
/** Oil, mL, for `fuel` litres of petrol. */
export const oilFor = (fuel: number, ratio: number): number => (fuel * 1000) / ratio;
/** Minutes a battery of `energy` Wh carries `load` W (over 0), `usable` % of it counted. */
export const runMinutes = (energy: number, usable: number, load: number): number => (energy * (usable / 100) * 60) / load;
