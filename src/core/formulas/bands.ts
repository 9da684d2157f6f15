/**
 * Reading a banded table of distances. Voltages in kV, distances in m. A band holds its upper edge unless it says
 * otherwise; nothing is read above the last band or below the first.
 */
import type { Band, BandTable } from '../facts/rule-sets.ts';

/** Binary arithmetic must not start a step that the voltage has only reached. */
const slack = 1e-9;

/** The band for a voltage counted as the table counts it; which side it lies on where there is none. */
export const bandAt = (table: BandTable, voltage: number): Band | 'below' | 'above' => {
  const over = table.over ?? 0;
  if (voltage < over || (voltage === over && over > 0 && !table.includingOver)) return 'below';
  return table.bands.find(({ upTo, including }) => upTo === null || voltage < upTo || (voltage === upTo && including !== false)) ?? 'above';
};

/** The distance of a band at a voltage: fixed, or growing with every started step. */
export const distanceAt = (band: Band, voltage: number): number => {
  if (!band.steps) return band.distance;
  const { from, every, add } = band.steps;
  return band.distance + Math.max(0, Math.ceil((voltage - from) / every - slack)) * add;
};
