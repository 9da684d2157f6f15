/**
 * Green density of wood, kg/m³. Moisture content is on oven-dry mass.
 * Source: USDA Forest Products Laboratory, Wood Handbook, chapters on moisture relations and physical properties.
 */
import { wood } from '../facts/wood.ts';

const water = 1000;

/**
 * The heaviest this wood can be, every hollow full of water. From the maximum moisture content,
 * (1.54 − G) / (1.54 G), it follows that density = 1000 (1 + G (1 − 1/1.54)), G the basic specific gravity.
 * @param basic basic density, kg/m³ (oven-dry mass over green volume)
 */
export const saturatedDensity = (basic: number): number =>
  water * (1 + (basic / water) * (1 - 1 / wood('cell-wall-gravity')));

/** What wood of unknown species is taken to weigh: the saturated bound of the densest on file. */
export const unknownDensity = (): number => saturatedDensity(wood('heaviest-basic-density'));

/** Mass of one metre of a round limb, kg/m; diameter in mm, density in kg/m³. */
export const massPerMetre = (diameter: number, density: number): number => (Math.PI / 4) * (diameter / 1000) ** 2 * density;
