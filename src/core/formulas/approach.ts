/**
 * What a rule set asks for at a voltage, and what is kept: the strict side wins. Distances in m, voltages in kV.
 *
 * - From a platform the larger of the figures for persons and for plant leads.
 * - A figure not seen in its source never stands under the strictest published one at that voltage or a lower one.
 * - A three-phase voltage is between phases; a single wire's is to ground, and is counted between phases as the
 *   three-phase line it belongs to (South Australia's table prints such pairs in one row: 7.6-11 kV, 19-33 kV).
 */
import type { Band, BandTable, RuleSet } from '../facts/rule-sets.ts';
import { singleWires } from '../facts/voltages.ts';
import { bandAt, distanceAt } from './bands.ts';
import { groundFromPhases, phasesFromGround } from './voltage.ts';

export type Line = { kind: 'threePhase' | 'singleWire'; voltage: number };
export type From = 'ground' | 'platform';
export type Asked = { distance: number; voltage: number; band: Band; table: 'persons' | 'plant' };

/** The voltage as a table counts it. */
export const countedVoltage = ({ kind, voltage }: Line, { basis }: Pick<BandTable, 'basis'>): number => {
  if (kind === 'threePhase') return basis === 'to-ground' ? groundFromPhases(voltage) : voltage;
  if (basis === 'to-ground') return voltage;
  return singleWires.find((wire) => wire.toGround === voltage)?.betweenPhases ?? phasesFromGround(voltage);
};

const askedBy = (set: RuleSet, which: 'persons' | 'plant', line: Line): Asked | 'below' | 'above' | null => {
  const table = set[which];
  if (!table) return null;
  const voltage = countedVoltage(line, table);
  const band = bandAt(table, voltage);
  return typeof band === 'string' ? band : { distance: distanceAt(band, voltage), voltage, band, table: which };
};

/** What the set itself asks for, or on which side of its bands the voltage lies. */
export const asked = (set: RuleSet, line: Line, from: From): Asked | 'below' | 'above' => {
  const persons = askedBy(set, 'persons', line) as Asked | 'below' | 'above';
  const plant = from === 'platform' ? askedBy(set, 'plant', line) : null;
  if (plant === null || typeof persons === 'string') return persons;
  if (typeof plant === 'string') return plant;
  return plant.distance > persons.distance ? plant : persons;
};

/** The largest figure of a table at this voltage or any lower one, of the bands that count; null where there is none. */
const largestOf = (table: BandTable, line: Line, counts: (band: Band) => boolean): number | null => {
  const voltage = countedVoltage(line, table);
  const at = bandAt(table, voltage);
  if (at === 'below') return null;
  const last = at === 'above' ? table.bands.length - 1 : table.bands.indexOf(at);
  const figures = table.bands.slice(0, last + 1).filter(counts)
    .map((band) => distanceAt(band, Math.min(voltage, band.upTo ?? voltage)));
  return figures.length === 0 ? null : Math.max(...figures);
};

export const isPublished = (band: Band): boolean => band.status === 'published';

/**
 * The strictest figure of some sets at this voltage or any lower one, so that a higher voltage never asks for less, and
 * the set it is from; null where no band counts.
 */
export const strictest = (
  sets: readonly RuleSet[], line: Line, from: From, counts: (band: Band) => boolean = () => true,
): { set: RuleSet; distance: number } | null => {
  let best: { set: RuleSet; distance: number } | null = null;
  for (const set of sets) {
    const tables = from === 'platform' && set.plant ? [set.persons, set.plant] : [set.persons];
    for (const table of tables) {
      const distance = largestOf(table, line, counts);
      if (distance !== null && (best === null || distance > best.distance)) best = { set, distance };
    }
  }
  return best;
};
