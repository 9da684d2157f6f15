/** Green weight of a metre of limb by diameter and species: the densities and the formula of the calculator. */
import { allSpecies } from '#core/facts/species.ts';
import { massPerMetre, unknownDensity } from '#core/formulas/density.ts';
import { greenDensities } from '#core/formulas/green-wood.ts';
import type { UnitSystem } from '#core/kit/units.ts';
import { figure, grid, range, type Said, same, type Table } from './table.ts';

const inch = 25.4;
/** Species are put under the next heavier row: so many kg/m³ from one to the next. */
const step = 50;
const row = (density: number): number => Math.ceil(density / step - 1e-9) * step;

const species = allSpecies.map((tree) => ({ name: tree.common, row: row(greenDensities(tree).heavy) })).sort((a, b) => a.name.localeCompare(b.name, 'en'));
const unknown = row(unknownDensity());
const heights = [...species.map((tree) => tree.row), unknown];
const rows = range(Math.min(...heights), Math.max(...heights), step);
const said = (density: number) => figure('kg/m3', density, 'nearest', 1);

/** The row named without its unit, which its head gives. */
const bare = (density: number): Said => ({ metric: said(density).metric.replace(/\u00a0.*$/, ''), imperial: said(density).imperial.replace(/\u00a0.*$/, '') });

const weight = (only: UnitSystem, diameters: number[]): Table => ({
  ...grid('weight', same(''), rows, diameters, { down: said, across: (d) => figure('mm', d), cell: (density, d) => figure('kg/m', massPerMetre(d, density), 'up') }), only,
});

export const weightTables = (): Table[] => [
  weight('metric', [30, 50, 75, 100, 125, 150, 200, 250, 300]),
  weight('imperial', range(1, 12, 1).filter((n) => n < 7 || n % 2 === 0).map((n) => n * inch)),
  { id: 'species', head: [], rows: [], list: [{ name: null, ...bare(unknown) }, ...species.map((tree) => ({ name: tree.name, ...bare(tree.row) }))], status: 'derived', source: 'fpl-wood-handbook' },
];
