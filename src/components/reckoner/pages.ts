/** The pages of ready-reckoners: their words in content/tables/<id>.json, their figures from core. */
import { tablePage } from '../../schemas.ts';
import { barTables } from './bar-length.ts';
import { fuelTables } from './fuel-mix.ts';
import { weightTables } from './limb-weight.ts';
import { noiseTables } from './noise.ts';
import { poleTables } from './pole-load.ts';
import { lateralTables } from './reduction.ts';
import { standOffTables } from './stand-off.ts';
import type { Table } from './table.ts';
import { vibrationTables } from './vibration.ts';
import { weatherTables } from './weather.ts';

const made: Readonly<Record<string, () => Table[]>> = {
  'stand-off': standOffTables,
  'bar-and-limb': barTables,
  'green-weight': weightTables,
  'smallest-lateral': lateralTables,
  'pole-load': poleTables,
  vibration: vibrationTables,
  noise: noiseTables,
  'fuel-mix': fuelTables,
  weather: weatherTables,
};
const files = import.meta.glob<{ default: unknown }>('/content/tables/*.json', { eager: true });

/** In handbook order. A page without words, a table without words or words without a table stop the build. */
export const tablePages = Object.entries(made).map(([id, make]) => {
  const words = tablePage.parse(files[`/content/tables/${id}.json`]?.default);
  const tables = make().map((table) => {
    const said = words.tables[table.id];
    if (!said) throw new Error(`content/tables/${id}.json has no words for the table "${table.id}"`);
    if (said.head && said.head.length !== table.head.length) throw new Error(`content/tables/${id}.json: "${table.id}" heads ${said.head.length} columns of ${table.head.length}`);
    return { ...table, title: said.title, says: said.says, nameless: said.nameless ?? '', heads: table.head.map((head, i) => ({ ...head, word: said.head?.[i] ?? '' })) };
  });
  const unused = Object.keys(words.tables).filter((key) => !tables.some((t) => t.id === key));
  if (unused.length > 0) throw new Error(`content/tables/${id}.json has words for ${unused.join(', ')} and there is no such table`);
  return { id, ...words, tables };
});
