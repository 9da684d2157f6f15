/** Bar against limb: the calculator's plan-on figures for a limb that was measured. */
import { barLength } from '#core/calculators/bar-length.ts';
import { type Answer, evaluate, type Quantity } from '#core/kit/outcome.ts';
import { show } from '#core/kit/show.ts';
import type { UnitSystem } from '#core/kit/units.ts';
import { factOf } from '../facts.ts';
import { type Cell, figure, grid, range, same, type Table } from './table.ts';

const inch = 25.4;
const margin = factOf('bar.margin').value as number;
const offSquares = [0, 15, 30, 45];
type Shown = 'barNeeded' | 'largestLimb' | 'weightPerMetre';

const crossing = (limbDiameter: number, bar: number, offSquare: number): Answer => {
  const outcome = evaluate(barLength, { limbDiameter, barLength: bar, offSquare, margin }, 'measured');
  if (outcome.kind !== 'answer') throw new Error(`no bar for a limb of ${limbDiameter} mm: ${JSON.stringify(outcome)}`);
  return outcome;
};
const cell = (answer: Answer, output: Shown): Cell => {
  const said = (system: UnitSystem) => show(barLength.outputs[output], answer.outputs[output] as Quantity, system);
  return { metric: said('metric'), imperial: said('imperial') };
};
const size = (value: number) => figure('mm', value);
const angle = (value: number) => figure('deg', value);

const tables = (only: UnitSystem, limbs: number[], bars: number[]): Table[] => {
  const needed = grid('needed', same(''), limbs, offSquares, { down: size, across: angle, cell: (limb, off) => cell(crossing(limb, 250, off), 'barNeeded') });
  return [
    { ...grid('largest', same(''), bars, offSquares, { down: size, across: angle, cell: (bar, off) => cell(crossing(100, bar, off), 'largestLimb') }), only },
    { ...needed, head: [...needed.head, same('')], rows: needed.rows.map((row, i) => [...row, cell(crossing(limbs[i]!, 250, 0), 'weightPerMetre')]), only },
  ];
};

export const barTables = (): Table[] => [
  ...tables('metric', range(40, 240, 20), [200, 250, 300, 350, 400]),
  ...tables('imperial', range(1.5, 9.5, 1).map((n) => n * inch), [8, 10, 12, 14].map((n) => n * inch)),
];
