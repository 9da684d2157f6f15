/**
 * What a cubic metre of a species weighs in the tree: between the lightest and the heaviest its published figures allow.
 * Branches are mostly sapwood (a judgement), and one figure for a stem is weighted to heartwood: so the heavier end is
 * planned on. Without a figure for sapwood that end is the wood full of water (Wood Handbook, maximum moisture content).
 */
import type { Species } from '../facts/species.ts';
import { wood } from '../facts/wood.ts';
import { saturatedDensity } from './density.ts';

export type Densities = { light: number; heavy: number };

const present = (values: (number | null)[]): number[] => values.filter((v) => v !== null);

/** Living or newly cut wood, kg/m³. Where only the basic density is on file, both ends are the wood full of water. */
export const greenDensities = ({ basic, green, heart, sap }: Species): Densities => {
  const known = present([green, heart, sap]);
  const full = saturatedDensity(basic);
  const heavy = sap === null ? full : Math.max(...known);
  return { light: known.length === 0 ? full : Math.min(...known), heavy };
};

/** Dead wood: dried to its cell walls, or rained on until it is full. kg/m³ over the green volume. */
export const deadDensities = ({ basic }: Species): Densities => ({
  light: basic * (1 + wood('fibre-saturation')),
  heavy: saturatedDensity(basic),
});
