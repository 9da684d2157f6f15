import { oilFor, runMinutes } from '#core/formulas/fuel.ts';
import { figure, grid, range, same, type Table } from './table.ts';

const gallon = 3.785411784;
const ratios = [25, 32, 40, 50, 60, 100];
const oil = (only: 'metric' | 'imperial', amounts: number[]): Table => ({
  ...grid('oil', same(''), amounts, ratios, {
    down: (litres) => figure('L', litres, 'nearest', only === 'metric' ? 1 : 0.5),
    across: (ratio) => figure('to one', ratio),
    cell: (litres, ratio) => figure('mL', oilFor(litres, ratio), 'nearest', only === 'metric' ? 1 : 0.01),
  }), only,
});

export const fuelTables = (): Table[] => [
  oil('metric', [1, 2, 3, 4, 5, 10, 20]),
  oil('imperial', [0.5, 1, 1.5, 2, 2.5, 3, 4, 5].map((n) => n * gallon)),
  grid('run', same('Wh'), [72, 108, 150, 200, 250, 300, 400, 600, 800], range(300, 1500, 200), {
    down: (energy) => figure('Wh', energy), across: (load) => figure('W', load), cell: (energy, load) => figure('min', runMinutes(energy, 100, load), 'down'),
  }),
];
