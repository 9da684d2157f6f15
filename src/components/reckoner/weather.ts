import { beaufort } from '#core/facts/beaufort.ts';
import { weather as fact } from '#core/facts/weather.ts';
import { exampleOf } from '#core/registry.ts';
import { weather } from '#core/calculators/weather.ts';
import { evaluate, type Quantity } from '#core/kit/outcome.ts';
import { wbgtOutOfSun } from '#core/formulas/wbgt.ts';
import { windPressure } from '#core/formulas/wind.ts';
import clothing from '#shared/tables/heat-clothing.json';
import wbgt1989 from '#shared/tables/wbgt-1989.json';
import wbgt2017 from '#shared/tables/wbgt-2017.json';
import wbgtOld from '#shared/tables/wbgt-old-limits.json';
import { type Cell, dash, figure, grid, number, range, same, type Table } from './table.ts';

const celsius = (f: number): number => (f - 32) / 1.8;
const mph = (v: number): number => v * 0.44704;
/** The calculator itself, exact: outside a published range there is a dash. */
const index = (name: 'heatIndex' | 'windChill', air: number, humidity: number, wind: number): Cell => {
  const outcome = evaluate(weather, { ...exampleOf(weather), air, humidity, wind, gust: Math.max(wind, 0), basketHeight: 0 }, 'exact');
  const found = outcome.kind === 'answer' ? (outcome.outputs[name] as Quantity | null) : null;
  if (!found) return dash;
  const over = name === 'heatIndex' && found.value >= fact('heat-danger') ? 'limit' : name === 'heatIndex' && found.value >= fact('heat-extreme-caution') ? 'action' : null;
  return { ...figure('degC', found.value, name === 'heatIndex' ? 'up' : 'down'), ...(over ? { over } : {}) };
};
const degrees = (value: number) => figure('degC', value);
const humid = (value: number) => figure('%', value);
const heat = (only: 'metric' | 'imperial', airs: number[]): Table => ({
  ...grid('heat', same(''), airs, range(40, 100, 10), { down: degrees, across: humid, cell: (air, humidity) => index('heatIndex', air, humidity, 0) }), only,
});
const chill = (only: 'metric' | 'imperial', airs: number[], winds: number[]): Table => ({
  ...grid('chill', same(''), airs, winds, { down: degrees, across: (v) => figure('m/s', v, 'nearest', 1), cell: (air, wind) => index('windChill', air, 50, wind) }), only,
});
const words = (rows: (string | number)[][], source: string | undefined, status: 'second-hand' | 'memory', id: string, inF = false): Table => ({
  id, status, ...(source ? { source } : {}),
  head: (rows[0] ?? []).map(() => same('')),
  rows: rows.map((row) => row.map((cell) => (typeof cell === 'number' ? (inF ? figure('degC', celsius(cell), 'nearest', 0.1) : number(cell)) : same(cell)))),
});

export const weatherTables = (): Table[] => [
  heat('metric', range(27, 44, 1)),
  heat('imperial', range(80, 112, 4).map(celsius)),
  chill('metric', range(-40, 10, 5).reverse(), [2, 4, 6, 8, 10, 13, 16, 20, 25]),
  chill('imperial', range(-40, 40, 10).reverse().map(celsius), range(5, 60, 5).map(mph)),
  {
    id: 'beaufort',
    head: range(0, 3, 1).map(() => same('')),
    rows: beaufort.map(({ from, name }, force) => {
      const next = beaufort[force + 1];
      return [number(force), same(name), figure('m/s', from, 'down', 0.1), next ? figure('Pa', windPressure(next.from), 'up', 1) : dash];
    }),
    source: 'beaufort-table',
  },
  words(wbgt1989.rows, 'iso-7243-1989', 'second-hand', 'wbgt1989'),
  words(wbgt2017.rows, undefined, 'memory', 'wbgt2017'),
  words(wbgtOld.rows, 'old-tlv', 'second-hand', 'wbgtOld', true),
  words(clothing.rows, 'acgih-clothing', 'second-hand', 'clothing'),
  grid('wbgt', same(''), range(18, 30, 2), range(25, 50, 5), { down: degrees, across: degrees, cell: (wet, globe) => figure('degC', wbgtOutOfSun(wet, globe), 'up', 0.1) }),
];
