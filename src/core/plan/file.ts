/**
 * Plans as one JSON file: `{ format, version, edition, plans: [plan, …] }`. Its JSON Schema is made from the same names
 * (components/plan-schema.ts). Reading takes anything: it never throws, runs nothing, keeps nothing but what a plan holds.
 */
import type { Values } from '../kit/calculator.ts';
import { withEdition } from './edition.ts';
import type { Plan } from './facts.ts';
import { jsonFault } from './json-fault.ts';
import { type PlanProblem, readPlan } from './problems.ts';
import { upgraded } from './upgrades.ts';

export const fileFormat = 'standing-clear-plans';
export const fileVersion = 1;
/** Characters of a file that is read; bytes on a disk are the same or more. */
export const longestFile = 2_000_000;
export const mostPlans = 200;
/** What is said of one plan before it is enough. */
const mostSaid = 5;

/** `plan`: its place in the file from 0; null where the file itself is at fault. `name`: as it stands there. `more`: left unsaid. */
export type FileProblem = { readonly plan: number | null; readonly name: string | null; readonly problems: readonly PlanProblem[]; readonly more: number };
export type ReadFile = { readonly plans: readonly Plan[]; readonly faults: readonly FileProblem[] };

/** @param edition of the handbook that writes it, for whoever looks into the file */
export const writePlansFile = (plans: readonly Plan[], edition: string): string =>
  `${JSON.stringify({ format: fileFormat, version: fileVersion, edition, plans: plans.map(withEdition) }, null, 1)}\n`;

const fault = (problem: string, values: Values = {}): ReadFile => ({ plans: [], faults: [{ plan: null, name: null, problems: [{ at: '', problem, values }], more: 0 }] });

const nameOf = (data: unknown): string | null => {
  const name = typeof data === 'object' && data !== null && Object.hasOwn(data, 'name') ? (data as { name: unknown }).name : null;
  return typeof name === 'string' ? name.slice(0, 60) : null;
};

/** What can be read of a plan that comes from anywhere: a file, a link, the device. */
export const readAnyPlan = (data: unknown): ReturnType<typeof readPlan> => readPlan(upgraded(data));

/** Every plan in the file that is whole, and what is wrong with each of the others, or with the file. */
export const readPlansFile = (text: string): ReadFile => {
  if (text.length > longestFile) return fault('fileTooLarge', { most: longestFile / 1e6 });
  const bare = text.replace(/^\ufeff/, '');
  let data: unknown;
  try {
    data = JSON.parse(bare);
  } catch {
    const place = jsonFault(bare);
    // JSON, but nested deeper than this engine goes.
    if (!place) return fault('notPlansFile');
    return place.cut ? fault('fileCut', { line: place.line }) : fault('notJson', { line: place.line, column: place.column });
  }
  const { format, version, plans } = (typeof data === 'object' && data !== null ? data : {}) as { readonly [key: string]: unknown };
  if (format !== fileFormat || typeof version !== 'number') return fault('notPlansFile');
  if (version > fileVersion) return fault('newerFile');
  if (version !== fileVersion || !Array.isArray(plans)) return fault('notPlansFile');
  if (plans.length === 0) return fault('noPlans');
  if (plans.length > mostPlans) return fault('tooManyPlans', { most: mostPlans });
  const read = plans.map((plan: unknown, i) => ({ plan, i, found: readAnyPlan(plan) }));
  return {
    plans: read.flatMap(({ found }) => (found.kind === 'plan' ? [found.plan] : [])),
    faults: read.flatMap(({ plan, i, found }) =>
      found.kind === 'plan' ? [] : [{ plan: i, name: nameOf(plan), problems: found.problems.slice(0, mostSaid), more: Math.max(0, found.problems.length - mostSaid) }]),
  };
};
