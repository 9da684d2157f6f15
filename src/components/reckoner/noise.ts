import { noise as fact } from '#core/facts/noise.ts';
import { hml, nrrDerated, nrrInField, nrrOnA, snr } from '#core/formulas/hearing-protection.ts';
import { criteria, ruleOf } from '#core/formulas/noise-criteria.ts';
import { minutesByEnergy, noisePoints } from '#core/formulas/noise.ts';
import canada from '#shared/tables/canada-noise-times.json';
import classes from '#shared/tables/hearing-classes.json';
import shifts from '#shared/tables/shift-additions.json';
import usTimes from '#shared/tables/us-noise-times.json';
import { type Cell, dash, figure, number, range, same, type Table } from './table.ts';

const levels = [80, 82, 84, 85, 86, 87, 88, 90, 92, 94, 95, 96, 97, 98, 100, 102, 105, 106, 108, 110, 115];
const day = 24 * 60;
/** Longer than a day is no time to plan with; past a rule's ceiling there is none. */
const time = (minutes: number, level: number, ceiling: number | null): Cell => {
  if (ceiling !== null && level > ceiling) return dash;
  return minutes > day ? figure('h', 24, 'down', 1) : minutes < 60 ? figure('min', minutes, 'down', minutes < 10 ? 0.1 : 1) : figure('h', minutes / 60, 'down');
};
/** A figure that stands in a published table is shown as it is printed there. */
const printed: Readonly<Record<string, readonly (readonly number[])[]>> = { usLaw: usTimes.rows, canada: canada.rows };
const asPrinted = (criterion: string, level: number): Cell | null => {
  const hours = printed[criterion]?.find(([at]) => at === level)?.[1];
  return hours === undefined || hours > 24 ? null : same(`${hours}\u00a0h`);
};
const off = (value: number): Cell => (value >= 1 ? figure('dB plain', value, 'down') : dash);

export const noiseTables = (): Table[] => [
  {
    id: 'times',
    head: ['level', ...criteria].map(() => same('')).concat([same(''), same('')]),
    rows: levels.map((level) => [
      figure('dB', level, 'nearest', 1),
      ...criteria.map((criterion) => {
        const rule = ruleOf(criterion, fact('reference-day'));
        return asPrinted(criterion, level) ?? time(rule.allowed(level), level, rule.ceiling);
      }),
      time(minutesByEnergy(level, fact('lower-action')), level, null),
      time(minutesByEnergy(level, fact('ear-limit')), level, null),
    ]),
  },
  {
    id: 'points',
    head: [same(''), same('')],
    rows: range(78, 95, 1).reverse().map((level) => [figure('dB', level, 'nearest', 1), number(Math.round(noisePoints(level)))]),
    source: 'hse-noise-week',
  },
  {
    id: 'protectors',
    head: range(0, 6, 1).map(() => same('')),
    rows: range(15, 37, 2).map((rating) => [
      figure('dB plain', rating), off(nrrOnA(rating)), off(nrrInField(rating)), off(nrrDerated(rating, fact('niosh-muffs'))),
      off(nrrDerated(rating, fact('niosh-formable'))), off(nrrDerated(rating, fact('niosh-plugs'))), off(snr(rating, 1)),
    ]),
  },
  {
    id: 'hml',
    head: [same('C − A'), same('H 25, M 19, L 13')],
    rows: [-2, 0, 1, 2, 4, 6, 8, 10].map((cMinusA) => [figure('dB plain', cMinusA), figure('dB plain', hml(25, 19, 13, cMinusA), 'down', 0.1)]),
    source: 'hml-example',
  },
  {
    id: 'classes',
    head: range(0, 2, 1).map(() => same('')),
    rows: classes.rows.map(([grade, from, under, slc]) => [
      number(grade as number), number(slc as number),
      same(from === null ? `< ${String(under)} dB(A)` : `${String(from)} ≤ dB(A) < ${String(under)}`),
    ]),
    status: 'second-hand', source: 'as-nzs-1269',
  },
  {
    id: 'shifts',
    head: [same(''), same('')],
    rows: shifts.rows.map(([from, add]) => [same(`≥ ${String(from)} h`), figure('dB plain', add as number)]),
    status: 'second-hand', source: 'shift-noise',
  },
];
