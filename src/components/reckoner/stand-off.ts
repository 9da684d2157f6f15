/** Where to stand, by height of the cut, ground and pole: the calculator's plan-on figures for what was measured. */
import { stance } from '#core/calculators/stance.ts';
import { type Answer, evaluate, type Quantity } from '#core/kit/outcome.ts';
import { show } from '#core/kit/show.ts';
import type { UnitSystem } from '#core/kit/units.ts';
import { exampleOf } from '#core/registry.ts';
import { type Cell, dash, figure, grid, range, same, type Table } from './table.ts';

const foot = 0.3048;
type Given = { cutHeight: number; groundRise?: number; pole?: number };
type Shown = 'nearestStandOff' | 'furthestStandOff' | 'highestCut';

/** Measured, the grip at the example's height, nothing landing nearer than the angle allows. */
const standing = ({ cutHeight, groundRise = 0, pole = 6 }: Given): Answer => {
  const outcome = evaluate(stance, { ...exampleOf(stance), cutHeight, groundRise, poleShortest: 1.2, poleLongest: pole, landingReach: 0 }, 'measured');
  if (outcome.kind !== 'answer') throw new Error(`no stand-off for a cut at ${cutHeight} m: ${JSON.stringify(outcome)}`);
  return outcome;
};
const text = (answer: Answer, output: Shown, system: UnitSystem): string => show(stance.outputs[output], answer.outputs[output] as Quantity | null, system);
const cell = (answer: Answer, output: Shown): Cell => ({ metric: text(answer, output, 'metric'), imperial: text(answer, output, 'imperial') });
/** From the nearest to the furthest; none where the pole, at the limit angle, is too short or the two do not leave room. */
const between = (cutHeight: number, pole: number): Cell => {
  const answer = standing({ cutHeight, pole });
  const [near, far] = [answer.outputs['nearestStandOff'] as Quantity, answer.outputs['furthestStandOff'] as Quantity | null];
  if (far === null || far.low < near.high || answer.findings.some(({ id }) => id === 'poleTooShort')) return dash;
  const said = (system: UnitSystem) => `${text(answer, 'nearestStandOff', system)} to ${text(answer, 'furthestStandOff', system)}`;
  return { metric: said('metric'), imperial: said('imperial') };
};
const metres = (value: number) => figure('m', value);
const slopes = [-20, -10, 0, 10, 20];

const tables = (only: UnitSystem, heights: number[], poles: number[]): Table[] => [
  { ...grid('nearest', same(''), heights, slopes, { down: metres, across: (rise) => figure('deg', rise), cell: (cutHeight, groundRise) => cell(standing({ cutHeight, groundRise }), 'nearestStandOff') }), only },
  { ...grid('pole', same(''), heights, poles, { down: metres, across: metres, cell: between }), only },
  { ...grid('highest', same(''), poles, slopes, { down: metres, across: (rise) => figure('deg', rise), cell: (pole, groundRise) => cell(standing({ cutHeight: 2, groundRise, pole }), 'highestCut') }), only },
];

export const standOffTables = (): Table[] => [
  ...tables('metric', range(1.5, 5, 0.5), range(2, 5, 0.5)),
  ...tables('imperial', range(5, 17, 1.5).map((n) => n * foot), [6, 7, 8, 10, 12, 14, 16].map((n) => n * foot)),
];
