/** WBGT, °C, from the natural wet bulb, the globe and the air. ISO 7243. */
export const wbgtInSun = (wetBulb: number, globe: number, air: number): number => 0.7 * wetBulb + 0.2 * globe + 0.1 * air;
export const wbgtOutOfSun = (wetBulb: number, globe: number): number => 0.7 * wetBulb + 0.3 * globe;
