/** A ready-reckoner as a page shows it: cells in both unit systems, worked out at build by core. */
import { showValue, type Direction } from '#core/kit/show.ts';
import type { Unit, UnitSystem } from '#core/kit/units.ts';
import type { Status } from '../../schemas.ts';

export type Said = { metric: string; imperial: string };
/** `over`: past an action value, or past a limit. */
export type Cell = Said & { over?: 'action' | 'limit' };
export type Table = {
  /** Its key in the words of the page. */
  id: string;
  head: Said[];
  /** The first cell of a row heads it. */
  rows: Cell[][];
  /** In place of rows: names, each with a figure, run in columns. A name of null is the one that the words of the table give. */
  list?: (Said & { name: string | null })[];
  /** How it is known, where it is not worked out by core. */
  status?: Status;
  source?: string;
  /** Shown in this unit system alone: its steps are that system's. */
  only?: UnitSystem;
};

export const same = (text: string): Said => ({ metric: text, imperial: text });
/** A figure in both unit systems, rounded once. */
export const figure = (unit: Unit, value: number, direction: Direction = 'nearest', step?: number): Said => {
  const shown = { unit, step, imperialStep: step };
  return { metric: showValue(shown, value, 'metric', direction), imperial: showValue(shown, value, 'imperial', direction) };
};
export const number = (value: number): Said => same(String(value).replace('-', '\u2212'));
/** What stands where there is no figure. */
export const dash = same('–');

/** First, first + step, … up to last. */
export const range = (first: number, last: number, step: number): number[] =>
  Array.from({ length: Math.floor((last - first) / step + 1e-9) + 1 }, (_, i) => Number((first + i * step).toFixed(6)));

/** A grid: a row for each of `down`, a column for each of `across`. */
export const grid = (
  id: string, corner: Said, down: readonly number[], across: readonly number[],
  of: { down: (value: number) => Said; across: (value: number) => Said; cell: (down: number, across: number) => Cell },
): Table => ({
  id,
  head: [corner, ...across.map(of.across)],
  rows: down.map((d) => [of.down(d), ...across.map((a) => of.cell(d, a))]),
});
