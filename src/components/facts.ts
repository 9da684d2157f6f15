/** Facts of the trade for pages, at build: found by id, shown in both unit systems, with how each is known. */
import words from '#content/interface.json';
import { nearNames } from '#core/facts/door.ts';
import { showValue } from '#core/kit/show.ts';
import { units, type Unit, type UnitSystem } from '#core/kit/units.ts';
import type { Fact, Status } from '../schemas.ts';

type File<T> = { default: Record<string, T> };
const files = import.meta.glob<File<Fact>>('/shared/values/*.json', { eager: true });

/** Every fact, by its full id `<topic>.<key>`. */
export const facts: ReadonlyMap<string, Fact> = new Map(
  Object.entries(files).flatMap(([path, file]) => {
    const topic = path.replace(/^.*\/(.*)\.json$/, '$1');
    return Object.entries(file.default).map(([key, fact]) => [`${topic}.${key}`, fact] as const);
  }),
);

/** Throws with near names for an id that is not there. */
export const factOf = (id: string): Fact => {
  const found = facts.get(id);
  if (!found) throw new Error(`no fact "${id}" in shared/values; near: ${nearNames(id, [...facts.keys()]).join(', ') || 'none'}`);
  return found;
};

/** The address of a fact's entry on the page of sources. */
export const factAnchor = (id: string): string => `fact-${id}`;
export const sourceAnchor = (id: string): string => `source-${id}`;

export const statusWords = (status: Status): { mark: string; says: string } => words.status[status];

const minus = (n: number): string => String(n).replace('-', '\u2212');
const one = (value: number, unit: string): string => {
  if (unit === 'share') return words.shares[shareKey(value)];
  const symbol = units[unit as Unit]?.metric.symbol ?? (unit === 'degF' ? '°F' : unit);
  if (symbol === '') return minus(value);
  return /^[°%]$/.test(symbol) ? `${minus(value)}${symbol}` : `${minus(value)}\u00a0${symbol}`;
};

type ShareKey = keyof typeof words.shares;
const shareKey = (value: number): ShareKey => {
  const found = Object.keys(words.shares).find((key) => {
    const [over, under] = key.split('/').map(Number) as [number, number];
    return Math.abs(over / under - value) < 1e-3;
  });
  if (!found) throw new Error(`no word for the share ${value}; add it to "shares" in content/interface.json`);
  return found as ShareKey;
};

const known = (unit: string): unit is Unit => unit in units;
const withRange = (value: Fact['value'], shown: (n: number) => string): string =>
  typeof value === 'number' ? shown(value) : `${shown(value[0])} ${words.range} ${shown(value[1])}`;

/** A converted figure on the side that protects; of one published in feet they stand beside it, for there it is exact. */
const rounded = ({ value, unit, as, protects }: Fact): string => {
  const metric = withRange(value, (n) => showValue({ unit: unit as Unit }, n, 'metric', protects));
  return as?.unit === 'ft' ? `${metric} (${withRange(as.value, (n) => one(n, as.unit))})` : metric;
};

/** Metric as published, or rounded where it had to be converted; imperial as published where the source prints it so, else converted. */
export const factText = (fact: Fact, system: UnitSystem): string => {
  if (system === 'metric') return fact.protects ? rounded(fact) : withRange(fact.value, (n) => one(n, fact.unit));
  if (fact.as) {
    const { unit, value } = fact.as;
    return withRange(value, (n) => one(n, unit));
  }
  const unit = fact.unit;
  return withRange(fact.value, (n) => (known(unit) && units[unit].metric !== units[unit].imperial && units[unit].metric.symbol !== units[unit].imperial.symbol ? showValue({ unit }, n, system) : one(n, unit)));
};
