/**
 * How long a still hold lasts, s: b0·f^b1, f the share of the strongest hold (0.1 to 1). Frey Law and Avin 2010, Table 2
 * as quoted by two code repositories. A fit through many people: single ones lie far from it, and the data are thin
 * below a quarter of the strongest hold. It never says "without end".
 */
import { enduranceOf, type Region } from '../facts/endurance.ts';

export const holdSeconds = (region: Region, share: number): number => {
  const { b0, b1 } = enduranceOf(region);
  return b0 * share ** b1;
};
