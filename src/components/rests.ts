/** What rests on each source: facts, tables, checks, calculators and chapters that name it. */
import { getCollection } from 'astro:content';
import { address } from './address.ts';
import { allChecks } from './checks.ts';
import { facts } from './facts.ts';
import { tablePages } from './reckoner/pages.ts';

export type Rest = { says: string; href: string | null };

const tables = import.meta.glob<{ default: { title?: string } }>('/shared/tables/**/*.json', { eager: true });

/** Every `source` and every item of `sources` anywhere in a table. */
const namedIn = (value: unknown): string[] => {
  if (Array.isArray(value)) return value.flatMap(namedIn);
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, inner]) => {
    if (key === 'source' && typeof inner === 'string') return [inner];
    if (key === 'sources' && Array.isArray(inner)) return inner.filter((id): id is string => typeof id === 'string');
    return namedIn(inner);
  });
};

/** By source id. Facts are not among them: they stand under their source by name. */
export const restsOn = async (): Promise<ReadonlyMap<string, Rest[]>> => {
  const all = new Map<string, Rest[]>();
  const add = (id: string, rest: Rest): void => {
    const list = all.get(id) ?? [];
    if (!list.some((r) => r.says === rest.says)) all.set(id, [...list, rest]);
  };
  const calculators = await getCollection('calculators');
  for (const { id, data } of calculators) {
    for (const source of data.sources) add(source, { says: data.title, href: address(`/calculators/${id}/`) });
  }
  for (const { calculator, rows } of allChecks) {
    const title = calculators.find((c) => c.id === calculator)?.data.title ?? calculator;
    for (const { source } of rows) if (source) add(source, { says: title, href: address(`/calculators/${calculator}/`) });
  }
  for (const { id, data } of await getCollection('chapters')) {
    for (const source of data.sources) add(source, { says: data.title, href: address(`/chapters/${id}/`) });
  }
  for (const page of tablePages) {
    const named = [...page.sources, ...page.tables.flatMap((table) => table.source ?? [])];
    for (const source of named) add(source, { says: page.title, href: address(`/tables/${page.id}/`) });
  }
  for (const [path, file] of Object.entries(tables)) {
    const says = file.default.title ?? path.replace(/^.*\/(.*)\.json$/, '$1');
    for (const source of namedIn(file.default)) add(source, { says, href: null });
  }
  return all;
};

/** Facts that name the source, in the order of their files. */
export const factsFrom = (source: string): string[] => [...facts].filter(([, fact]) => fact.source === source).map(([id]) => id);
