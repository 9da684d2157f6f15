/** Apparent temperature in the shade, Bureau of Meteorology: air °C, humidity %, wind m/s at ten metres. */
/** Water vapour pressure, hPa. */
export const vapourPressure = (air: number, humidity: number): number => (humidity / 100) * 6.105 * Math.exp((17.27 * air) / (237.7 + air));

/** AT = Ta + 0.33·e − 0.70·ws − 4.00, °C. */
export const apparentTemperature = (air: number, humidity: number, wind: number): number =>
  air + 0.33 * vapourPressure(air, humidity) - 0.7 * wind - 4;
