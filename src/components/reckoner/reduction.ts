/** The smallest lateral to cut back to, and how thick a limb a lateral will do for: the calculator's plan-on figures, measured. */
import { reduction } from '#core/calculators/reduction.ts';
import { evaluate, type Quantity } from '#core/kit/outcome.ts';
import { show } from '#core/kit/show.ts';
import type { UnitSystem } from '#core/kit/units.ts';
import { exampleOf } from '#core/registry.ts';
import { type Cell, figure, grid, range, same, type Table } from './table.ts';

const inch = 25.4;
const rules = ['third', 'half'] as const;
type Shown = 'smallestLateral' | 'largestParent';

const cell = (output: Shown, given: { parentDiameter: number; lateralDiameter: number }, rule: number): Cell => {
  const outcome = evaluate(reduction, { ...exampleOf(reduction), ...given, rule: rules[rule]! }, 'measured');
  if (outcome.kind !== 'answer') throw new Error(`no lateral for ${JSON.stringify(given)}: ${JSON.stringify(outcome)}`);
  const said = (system: UnitSystem) => show(reduction.outputs[output], outcome.outputs[output] as Quantity, system);
  return { metric: said('metric'), imperial: said('imperial') };
};
const size = (value: number) => figure('mm', value);

const tables = (only: UnitSystem, limbs: number[], laterals: number[]): Table[] => [
  { ...grid('smallest', same(''), limbs, [0, 1], { down: size, across: () => same(''), cell: (parentDiameter, rule) => cell('smallestLateral', { parentDiameter, lateralDiameter: 5 }, rule) }), only },
  { ...grid('largest', same(''), laterals, [0, 1], { down: size, across: () => same(''), cell: (lateralDiameter, rule) => cell('largestParent', { parentDiameter: 300, lateralDiameter }, rule) }), only },
];

export const lateralTables = (): Table[] => [
  ...tables('metric', [20, 30, 40, 50, 60, 70, 80, 100, 120, 150, 200], [10, 15, 20, 25, 30, 40, 50, 60, 80]),
  ...tables('imperial', range(1, 8, 1).map((n) => n * inch), range(0.5, 4, 0.5).map((n) => n * inch)),
];
