import table from '#shared/tables/species.json' with { type: 'json' };
import { nearNames } from './door.ts';

/** One species of shared/tables/species.json; densities in kg/m³, null where none is on file. */
export type Species = {
  id: string; common: string; botanical: string;
  basic: number; green: number | null; heart: number | null; sap: number | null;
  source: string; status: string;
};

const rows = new Map<string, Species>(table.rows.map((row) => [row.id, {
  id: row.id, common: row.common, botanical: row.botanical, basic: row.basic,
  green: row.green ?? null, heart: row.heart ?? null, sap: row.sap ?? null, source: row.source, status: row.status,
}]));

/** All species, by their common name. */
export const allSpecies: readonly Species[] = [...rows.values()];

/** @throws an Error with near names where there is no such species */
export const species = (id: string): Species => {
  const found = rows.get(id);
  if (!found) throw new Error(`shared/tables/species.json has no "${id}"; near: ${nearNames(id, [...rows.keys()]).join(', ') || 'none'}`);
  return found;
};
